// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.grow;

import boughwright.modeller.tree.Growing;
import boughwright.modeller.tree.Setting;

/**
 * Length that a shoot left to run grows in a year.
 *
 * @param low where this tree grows slowly [m]
 * @param high where it grows fast [m]
 */
public record ShootGrowth(double low, double high) {
  public ShootGrowth {
    if (!(low > 0 && low <= high) || Double.isInfinite(high)) {
      throw new IllegalArgumentException("no shoots of " + low + " to " + high);
    }
  }

  /**
   * By what the roots grow in (growers' general experience: common practice, no source). Where only
   * a container is known, a pot; where nothing is said, pot or training box.
   */
  public static ShootGrowth of(Setting setting) {
    if (setting.growing().where().isEmpty() && setting.container().isEmpty()) {
      return new ShootGrowth(0.05, 0.6);
    }
    return switch (setting.growing().where().orElse(Growing.Where.POT)) {
      case GROUND -> new ShootGrowth(0.4, 1.2);
      case BOX -> new ShootGrowth(0.2, 0.6);
      case POT -> new ShootGrowth(0.05, 0.2);
    };
  }

  /** Years to grow so long; the middle is the root of both ends' product. */
  public Years toGrow(double length) {
    return length <= 0
        ? Years.NONE
        : new Years(length / high, length / Math.sqrt(low * high), length / low);
  }
}
