// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.ground;

import boughwright.modeller.geometry.Point3;
import java.util.Objects;

/**
 * The roots in the soil at a planting angle: how deep, how one-sided, what they lose.
 *
 * @param depth how deep they go
 * @param centre middle of their volume, uncut [m, viewer's frame]
 * @param loss what they lose
 * @param steps in how many repottings
 */
public record RootMass(Depth depth, Point3 centre, RootLoss loss, TiltSteps steps) {

  /**
   * Depth of the lowest underside below the soil line at the trunk.
   *
   * @param now as measured [m]
   * @param then at the planting angle, uncut [m]
   * @param left at the planting angle, after the cuts [m]
   */
  public record Depth(double now, double then, double left) {
    public Depth {
      if (!(now >= 0 && then >= left && left >= 0)) {
        throw new IllegalArgumentException("roots are " + now + ", " + then + ", " + left);
      }
    }
  }

  public RootMass {
    Objects.requireNonNull(depth, "depth");
    Objects.requireNonNull(centre, "centre");
    Objects.requireNonNull(loss, "loss");
    Objects.requireNonNull(steps, "steps");
  }

  /** How far their middle is from that of the trunk base, seen from above [m]. */
  public double offset() {
    return Math.hypot(centre.x(), centre.y());
  }
}
