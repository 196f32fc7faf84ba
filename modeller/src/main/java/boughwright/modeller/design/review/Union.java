// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Vector3;

/**
 * Where a shoot leaves another.
 *
 * @param on number of the shoot it leaves
 * @param at how far along that shoot [m]
 * @param parentCaliper caliper of that shoot there [m]
 * @param caliper caliper of the leaving shoot just outside its collar [m]
 * @param parent which way that shoot goes there
 * @param heading which way the leaving shoot goes at first
 */
record Union(
    int on,
    double at,
    double parentCaliper,
    double caliper,
    Direction3 parent,
    Direction3 heading) {
  Union {
    if (!(parentCaliper > 0 && caliper > 0 && at >= 0)) {
      throw new IllegalArgumentException("calipers " + parentCaliper + ", " + caliper);
    }
  }

  /** Caliper over that of what it sits on [1]. */
  double aspect() {
    return caliper / parentCaliper;
  }

  /** Between the two shoots [rad]. */
  double angle() {
    return parent.angleTo(heading);
  }

  /** The part of the heading square to the parent; short where the shoot runs along it. */
  Vector3 side() {
    return heading.vector().minus(parent.times(heading.dot(parent)));
  }

  /** Angle round the parent between two shoots that leave it [rad]. */
  double roundTo(Union other) {
    Vector3 own = side();
    Vector3 theirs = other.side();
    return Math.atan2(own.cross(theirs).norm(), own.dot(theirs));
  }
}
