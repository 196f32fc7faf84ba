// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Vector3;

/**
 * The place of a limb that is nearest to failing in one way.
 *
 * @param margin ln of demand over limit, above 0 where it fails [1]
 * @param span index of the span
 * @param s distance along it [m]
 * @param side from the axis toward where it would show, at rest, any length [tree frame]
 * @param demand how hard the wood works there
 * @param limit what it bears, as a median
 */
record Nearest(double margin, int span, double s, Vector3 side, double demand, double limit) {
  /** Nothing of the limb works in that way. */
  static final Nearest NONE = new Nearest(Double.NEGATIVE_INFINITY, -1, 0, Vector3.ZERO, 0, 1);

  static Nearest of(double demand, double limit, int span, double s, Vector3 side) {
    return demand > 0 ? new Nearest(Math.log(demand / limit), span, s, side, demand, limit) : NONE;
  }

  Nearest or(Nearest other) {
    return other.margin > margin ? other : this;
  }

  boolean exists() {
    return span >= 0;
  }
}
