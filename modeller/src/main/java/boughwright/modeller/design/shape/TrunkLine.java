// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.shape;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Skeleton;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The line from the trunk base to the apex, over every union on the way. Immutable.
 *
 * @param segments indices in the skeleton from the base to the apex, at least one
 * @param points where the line runs: the start of the base, then the place where each next segment
 *     starts, then the tip [m, tree frame]; shape: one more than segments
 * @param calipers diameters over bark at the points, of the inner segment where two meet [m]
 */
public record TrunkLine(List<Integer> segments, List<Point3> points, List<Double> calipers) {
  public TrunkLine {
    segments = List.copyOf(segments);
    points = List.copyOf(points);
    calipers = List.copyOf(calipers);
    if (segments.isEmpty()
        || points.size() != segments.size() + 1
        || calipers.size() != points.size()) {
      throw new IllegalArgumentException("a trunk line has a point at both ends of each piece");
    }
  }

  /**
   * The line to the apex of a plan, as far as the cuts leave it, or, where no apex is named, along
   * the trunk: what goes on, else the thickest piece of trunk that starts at its end.
   *
   * @throws IllegalArgumentException if the apex is unknown or cut away, or the base is cut away
   */
  public static TrunkLine of(WoodLeft wood, Optional<String> apex) {
    Skeleton skeleton = wood.skeleton();
    List<Integer> way = new ArrayList<>();
    int from = skeleton.outward(0);
    if (apex.isPresent()) {
      for (int i = skeleton.indexOf(apex.get()); i != Skeleton.NONE; i = skeleton.parent(i)) {
        way.add(i);
      }
      Collections.reverse(way);
    } else {
      way.add(from);
    }
    if (way.stream().anyMatch(wood.cutting()::isGone)) {
      throw new IllegalArgumentException("the apex, or the trunk base, is cut away");
    }
    for (int i = next(wood.cutting(), last(way));
        i != Skeleton.NONE;
        i = next(wood.cutting(), last(way))) {
      way.add(i);
    }
    return along(wood.cutting(), way);
  }

  private static int last(List<Integer> way) {
    return way.get(way.size() - 1);
  }

  private static int next(Cutting cutting, int i) {
    Skeleton skeleton = cutting.skeleton();
    List<Integer> left =
        skeleton.children(i).stream()
            .filter(child -> skeleton.segment(child).along() == 1 && !cutting.isGone(child))
            .toList();
    Optional<Integer> goesOn =
        left.stream().filter(child -> skeleton.joint(child) == Joint.CONTINUES).findFirst();
    return goesOn.orElseGet(
        () ->
            left.stream()
                .filter(child -> skeleton.segment(child).kind() == Kind.TRUNK)
                .max(Comparator.comparingDouble(child -> skeleton.segment(child).caliperStart()))
                .orElse(Skeleton.NONE));
  }

  private static TrunkLine along(Cutting cutting, List<Integer> way) {
    Skeleton skeleton = cutting.skeleton();
    List<Point3> points = new ArrayList<>();
    List<Double> calipers = new ArrayList<>();
    points.add(skeleton.start(way.get(0)));
    calipers.add(skeleton.caliper(way.get(0), 0));
    for (int n = 0; n < way.size(); n++) {
      int i = way.get(n);
      double to = n + 1 < way.size() ? skeleton.segment(way.get(n + 1)).along() : cutting.left(i);
      points.add(skeleton.point(i, to));
      calipers.add(skeleton.caliper(i, to));
    }
    return new TrunkLine(way, points, calipers);
  }

  /** The tip [m, tree frame]. */
  public Point3 apex() {
    return points.get(points.size() - 1);
  }

  /** Length along the line [m]. */
  public double length() {
    double sum = 0;
    for (int i = 1; i < points.size(); i++) {
      sum += points.get(i).minus(points.get(i - 1)).norm();
    }
    return sum;
  }
}
