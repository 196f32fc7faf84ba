// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;

/** How a planting angle turns the tree, what its wood weighs, and gravity seen from the tree. */
public final class Standing {
  /** Standard gravity (BIPM, The International System of Units, 9th edition) [m/s2]. */
  public static final double GRAVITY = 9.80665;

  /**
   * Density of living wood with its water, bark included [kg/m3]. Sapwood near saturation weighs
   * about as much as water; from memory.
   */
  public static final double GREEN_DENSITY = 1000;

  private Standing() {}

  /** The turn about the trunk base from the pose as measured to the pose as planted. */
  public static Rotation turn(Planting planting) {
    Direction3 toward = Direction3.ofAzimuth(planting.towardAzimuth());
    Vector3 axis = Direction3.UP.vector().cross(toward.vector());
    return Rotation.about(axis.direction(), planting.tilt());
  }

  /** Gravity in the tree frame as measured while a plan's bends are made [m/s2]. */
  public static Vector3 gravity(Plan plan) {
    Vector3 down = new Vector3(0, 0, -GRAVITY);
    if (plan.stance() == Plan.Stance.PLANTED && plan.planting().isPresent()) {
      return turn(plan.planting().get()).inverse().turn(down);
    }
    return down;
  }
}
