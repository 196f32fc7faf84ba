// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Spot;
import java.util.Objects;

/** Where a place of the tree is wanted, or which way it is to point. */
public sealed interface Target {
  /** The place that is brought there. */
  Spot spot();

  /**
   * What is missing, as lengths that are all 0 at the target [m].
   *
   * @param place where the place is [m, tree frame]
   * @param direction which way the axis runs there
   */
  double[] missing(Point3 place, Direction3 direction);

  /** How far from the target a pose is: the length of what is missing [m]. */
  default double miss(Point3 place, Direction3 direction) {
    double sum = 0;
    for (double part : missing(place, direction)) {
      sum += part * part;
    }
    return Math.sqrt(sum);
  }

  /**
   * A place comes to a point.
   *
   * @param spot the place
   * @param point where it is wanted [m, tree frame as measured]
   */
  record Point(Spot spot, Point3 point) implements Target {
    public Point {
      Objects.requireNonNull(spot, "spot");
      Objects.requireNonNull(point, "point");
    }

    @Override
    public double[] missing(Point3 place, Direction3 direction) {
      Vector3 off = place.minus(point);
      return new double[] {off.x(), off.y(), off.z()};
    }
  }

  /**
   * The axis runs in a direction at a place. The miss is the angle times an arm, so that it is a
   * length like the others.
   *
   * @param spot the place
   * @param direction the direction wanted, from the segment's start to its end
   * @param arm length that a radian counts as, more than 0 [m]
   */
  record Heading(Spot spot, Direction3 direction, double arm) implements Target {
    public Heading {
      Objects.requireNonNull(spot, "spot");
      Objects.requireNonNull(direction, "direction");
      requireArm(arm);
    }

    @Override
    public double[] missing(Point3 place, Direction3 heading) {
      Vector3 turn = turn(direction, heading).times(arm);
      return new double[] {turn.x(), turn.y(), turn.z()};
    }
  }

  /**
   * A tip stands over a point, seen along the vertical, and points up. The miss is the square root
   * of the sum of two squares: how far it is beside, and its lean times an arm.
   *
   * @param spot the tip
   * @param base what it is to stand over [m, tree frame as measured]
   * @param up the vertical in the tree frame as measured, once the tree is planted
   * @param arm length that a radian of lean counts as, more than 0 [m]
   */
  record Upright(Spot spot, Point3 base, Direction3 up, double arm) implements Target {
    public Upright {
      Objects.requireNonNull(spot, "spot");
      Objects.requireNonNull(base, "base");
      Objects.requireNonNull(up, "up");
      requireArm(arm);
    }

    @Override
    public double[] missing(Point3 place, Direction3 heading) {
      Vector3 off = beside(place);
      Vector3 turn = turn(up, heading).times(arm);
      return new double[] {off.x(), off.y(), off.z(), turn.x(), turn.y(), turn.z()};
    }

    /** From the vertical over the base to a point, square to it [m]. */
    public Vector3 beside(Point3 place) {
      Vector3 off = place.minus(base);
      return off.minus(up.times(off.dot(up.vector())));
    }
  }

  private static void requireArm(double arm) {
    if (!(arm > 0) || Double.isInfinite(arm)) {
      throw new IllegalArgumentException("an arm has a length, not " + arm);
    }
  }

  /** The shortest turn from one direction to another: its axis times its angle [rad]. */
  private static Vector3 turn(Direction3 from, Direction3 to) {
    Vector3 cross = from.vector().cross(to.vector());
    double angle = from.angleTo(to);
    if (cross.norm() > 0) {
      return cross.times(angle / cross.norm());
    }
    return angle > 1 ? from.anySquare().times(angle) : Vector3.ZERO;
  }
}
