// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.apex;

import boughwright.modeller.design.shape.Frustum;
import boughwright.modeller.design.shape.Limb;
import boughwright.modeller.design.shape.WoodLeft;
import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.plan.Standing;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Skeleton;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds the shoots of a tree that could become its top, by shape alone. All measures are parts of
 * the tree's own, so the size of the tree changes nothing. Immutable.
 */
public final class Leaders {
  /** A leader could stand at least this part of the present height (a choice) [1]. */
  private static final double TALL = 0.5;

  /** A shoot shorter than this part of the present height is a twig (a choice) [1]. */
  private static final double LONG = 0.1;

  /** A shoot thinner than this part of the wood below is a twig (a choice) [1]. */
  private static final double STOUT = 0.125;

  /** A branch as thick as this part of the wood below is thick (a choice) [1]. */
  private static final double THICK = 0.25;

  /** A shoot that rises at least so much goes upward (a choice) [rad]. */
  private static final double UPWARD = Math.toRadians(45);

  private final WoodLeft wood;
  private final Skeleton skeleton;
  private final Cutting cutting;
  private final Vector3 up;
  private final double height;
  private final List<Leader> all;

  private Leaders(WoodLeft wood, Direction3 up) {
    this.wood = wood;
    skeleton = wood.skeleton();
    cutting = wood.cutting();
    this.up = up.vector();
    height = wood.pieces().stream().mapToDouble(this::top).max().orElse(0);
    all =
        wood.limbs().stream()
            .flatMap(limb -> leader(limb).stream())
            .sorted(Comparator.comparingDouble(Leader::caliper).reversed())
            .toList();
  }

  /** The leaders of a tree as the cuts of a plan leave it, at its planting angle. */
  public static Leaders of(Skeleton skeleton, Plan plan) {
    return new Leaders(new WoodLeft(new Cutting(skeleton, plan.cuts())), up(plan));
  }

  /** The vertical in the tree frame as measured, once the tree is at a plan's planting angle. */
  static Direction3 up(Plan plan) {
    return plan.planting()
        .map(planting -> Standing.turn(planting).inverse().turn(Direction3.UP))
        .orElse(Direction3.UP);
  }

  /** All of them, the thickest first. */
  public List<Leader> all() {
    return all;
  }

  /** How high the highest end of the wood is over the soil [m]. */
  public double height() {
    return height;
  }

  /** How high a point is over the soil, at the planting angle [m]. */
  double heightOf(Point3 point) {
    return point.minus(skeleton.start(skeleton.outward(0))).dot(up);
  }

  private double top(Frustum piece) {
    return Math.max(heightOf(piece.start()), heightOf(piece.end()));
  }

  private Optional<Leader> leader(Limb limb) {
    List<Integer> way = way(limb.last());
    boolean wanted = way.stream().allMatch(i -> isLeading(i)) && !isCutOff(limb.last());
    Point3 start = skeleton.start(limb.first());
    Point3 end = skeleton.end(limb.last());
    double length = limb.segments().stream().mapToDouble(skeleton::length).sum();
    double couldStand = heightOf(start) + length;
    if (!wanted || couldStand < TALL * height) {
      return Optional.empty();
    }
    Optional<Takeover> takeover = Takeover.largest(wood, way);
    if (takeover.isPresent()) {
      double part = skeleton.segment(limb.first()).caliperStart() / below(limb.first());
      boolean upward = end.minus(start).dot(up) >= Math.sin(UPWARD) * end.minus(start).norm();
      if (part < STOUT || length < LONG * height || !(upward || part >= THICK)) {
        return Optional.empty();
      }
    }
    return Optional.of(
        new Leader(
            new Spot(skeleton.segment(limb.last()).id(), 1),
            skeleton.segment(limb.first()).id(),
            skeleton.segment(limb.first()).caliperStart(),
            takeover,
            new TopCuts(cutting).above(way),
            couldStand));
  }

  private boolean isLeading(int i) {
    Kind kind = skeleton.segment(i).kind();
    return (kind == Kind.TRUNK || kind == Kind.BRANCH) && skeleton.segment(i).live().orElse(true);
  }

  /** Whether the end of a limb is a cut: its own tip is gone. */
  private boolean isCutOff(int last) {
    return cutting.left(last) < 1
        || skeleton.children(last).stream()
            .anyMatch(
                child ->
                    cutting.isGone(child)
                        && skeleton.segment(child).along() == 1
                        && skeleton.segment(child).kind() == skeleton.segment(last).kind());
  }

  private List<Integer> way(int tip) {
    List<Integer> way = new ArrayList<>();
    for (int i = tip; i != Skeleton.NONE; i = skeleton.parent(i)) {
      way.add(i);
    }
    Collections.reverse(way);
    return way;
  }

  /** Caliper of the wood that a segment starts on, there [m]. */
  private double below(int i) {
    return skeleton.caliper(skeleton.parent(i), skeleton.segment(i).along());
  }
}
