// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import java.util.Objects;

/** Where a hand wants a place [m, tree frame as measured]. */
public sealed interface Aim {
  /** The place of it that is nearest to a point. */
  Point3 nearest(Point3 to);

  /** The part of a movement that leads toward it or away from it. */
  Vector3 across(Vector3 movement);

  /** How far a point is off [m]. */
  default double miss(Point3 at) {
    return at.distance(nearest(at));
  }

  /** From a point to the nearest place of it. */
  default Vector3 way(Point3 from) {
    return nearest(from).minus(from);
  }

  /** Exactly there. */
  record At(Point3 point) implements Aim {
    public At {
      Objects.requireNonNull(point, "point");
    }

    @Override
    public Point3 nearest(Point3 to) {
      return point;
    }

    @Override
    public Vector3 across(Vector3 movement) {
      return movement;
    }
  }

  /**
   * Anywhere on a line of sight, however deep: what a hand on a screen says.
   *
   * @param from a point of it
   * @param along away from the viewer
   */
  record Sight(Point3 from, Direction3 along) implements Aim {
    public Sight {
      Objects.requireNonNull(from, "from");
      Objects.requireNonNull(along, "along");
    }

    @Override
    public Point3 nearest(Point3 to) {
      return from.plus(along.times(to.minus(from).dot(along.vector())));
    }

    @Override
    public Vector3 across(Vector3 movement) {
      return movement.minus(along.times(movement.dot(along.vector())));
    }
  }
}
