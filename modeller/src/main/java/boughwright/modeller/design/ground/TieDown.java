// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.ground;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Standing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.apache.commons.math3.geometry.euclidean.twod.hull.MonotoneChain;

/**
 * What keeps a freshly planted tree from rocking in its container: its own weight, and ties that
 * pull its root base straight down.
 *
 * <p>The case: the tree stands on what its roots reach in the soil, pushed level from the worst
 * side. It would rock over an edge of that. Soil on the roots and round the trunk is left out, as
 * fresh soil holds little.
 *
 * @param tree the tree with what is left of its roots
 * @param edge places that bear it, seen from above, going round counterclockwise [m, viewer's
 *     frame]
 * @param level height of the edge: that of the deepest place that bears [m]
 * @param push how it is pushed
 */
public record TieDown(Balance.Body tree, List<Point3> edge, double level, Push push) {
  /**
   * Most that a tie is asked to hold [N]: about what a double loop of soft aluminium of 2 mm bears.
   * Our choice.
   */
  public static final double MOST = 200;

  /** Points nearer than this are one [m]; rounding. */
  private static final double SAME = 1e-9;

  /**
   * A level push from any side.
   *
   * @param force the push [N]
   * @param height how high above the soil it acts [m]
   */
  public record Push(double force, double height) {
    /** What a brush past a branch or a lift by the trunk gives [N]: common practice, no source. */
    public static final double USUAL = 20;

    /** Part of the height of the tree at which it is pushed [1]: common practice, no source. */
    public static final double AT = 2.0 / 3;

    public Push {
      if (!(force >= 0 && height >= 0) || Double.isInfinite(force + height)) {
        throw new IllegalArgumentException("a push of " + force + " at " + height);
      }
    }

    /** The usual push on a tree of a height [m]. */
    public static Push usual(double height) {
      return new Push(USUAL, AT * height);
    }
  }

  public TieDown {
    Objects.requireNonNull(tree, "tree");
    edge = List.copyOf(edge);
    Objects.requireNonNull(push, "push");
    if (edge.size() < 3) {
      throw new IllegalArgumentException("an edge to rock over needs three places");
    }
  }

  /** For the places that bear a tree; empty if they have no room between them. */
  static Optional<TieDown> of(Balance.Body tree, List<Point3> bearing, Push push) {
    List<Vector2D> flat =
        bearing.stream().map(point -> new Vector2D(point.x(), point.y())).distinct().toList();
    if (flat.size() < 3) {
      return Optional.empty();
    }
    List<Point3> edge = new ArrayList<>();
    double level = bearing.stream().mapToDouble(Point3::z).min().orElseThrow();
    for (Vector2D at : new MonotoneChain(false, SAME).findHullVertices(flat)) {
      edge.add(new Point3(at.getX(), at.getY(), level));
    }
    return edge.size() < 3 ? Optional.empty() : Optional.of(new TieDown(tree, edge, level, push));
  }

  /** How far inside a side a place is, seen from above [m]. */
  private double inside(int side, Point3 place) {
    Point3 from = edge.get(side);
    Point3 to = edge.get((side + 1) % edge.size());
    double x = to.x() - from.x();
    double y = to.y() - from.y();
    return (x * (place.y() - from.y()) - y * (place.x() - from.x())) / Math.hypot(x, y);
  }

  private double holding(int side) {
    return tree.mass() * Standing.GRAVITY * inside(side, tree.centre());
  }

  private double lever() {
    return push.height() - level;
  }

  /**
   * The push at that height which rocks the tree untied, from the side where it takes least [N];
   * less than 0 if the tree falls over by itself.
   */
  public double rocksAt() {
    double least = Double.POSITIVE_INFINITY;
    for (int side = 0; side < edge.size(); side++) {
      least = Math.min(least, holding(side) / lever());
    }
    return least;
  }

  /**
   * The tension that each of some ties must have so that no push of this size rocks the tree.
   *
   * @param places where they pull down, beyond an edge they hold nothing there [m, viewer's frame]
   * @return the tension, 0 if none is needed [N]; empty if it would be more than {@link #MOST}, so
   *     that these places cannot hold it
   */
  public OptionalDouble tension(List<Point3> places) {
    double most = 0;
    for (int side = 0; side < edge.size(); side++) {
      double need = push.force() * lever() - holding(side);
      if (need <= 0) {
        continue;
      }
      double arms = 0;
      for (Point3 place : places) {
        arms += Math.max(0, inside(side, place));
      }
      if (!(arms > SAME)) {
        return OptionalDouble.empty();
      }
      most = Math.max(most, need / arms);
    }
    return most > MOST ? OptionalDouble.empty() : OptionalDouble.of(most);
  }

  /**
   * Places evenly round the trunk, the first to the viewer's right and front.
   *
   * @param count how many
   * @param distance from the middle of the trunk base [m]
   */
  public static List<Point3> round(int count, double distance) {
    List<Point3> places = new ArrayList<>();
    for (int n = 0; n < count; n++) {
      double angle = -Math.PI / (count == 2 ? 1 : count) + 2 * Math.PI * n / count;
      places.add(new Point3(distance * Math.cos(angle), distance * Math.sin(angle), 0));
    }
    places.sort(Comparator.comparingDouble(Point3::x));
    return places;
  }
}
