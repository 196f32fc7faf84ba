// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.grow;

import boughwright.modeller.tree.Growing;
import boughwright.modeller.tree.Setting;
import java.util.Locale;
import java.util.Objects;

/**
 * New wood laid on in a year, one side.
 *
 * @param low where this tree grows slowly [m]
 * @param middle best guess [m]
 * @param high where it grows fast [m]
 * @param basis where that is from, in words
 */
public record YearlyRing(double low, double middle, double high, String basis) {
  private static final double MM = 1e-3;

  /** Part by which a measured ring differs from year to year, nine in ten (assumption) [1]. */
  private static final double YEAR_TO_YEAR = 0.3;

  public YearlyRing {
    if (!(low >= 0 && low <= middle && middle <= high) || Double.isInfinite(high)) {
      throw new IllegalArgumentException("no rings of " + low + ", " + middle + ", " + high);
    }
    Objects.requireNonNull(basis, "basis");
  }

  /**
   * Of a tree by what was said of it: the ring measured, else by what its roots grow in (growers'
   * general experience: common practice, no source; the middle is the root of both ends' product).
   * Where only a container is known, a pot.
   */
  public static YearlyRing of(Setting setting) {
    Growing growing = setting.growing();
    if (growing.ring().isPresent()) {
      double ring = growing.ring().getAsDouble();
      return new YearlyRing(
          (1 - YEAR_TO_YEAR) * ring,
          ring,
          (1 + YEAR_TO_YEAR) * ring,
          format("a ring of %.2f mm a year as measured, give or take a third", ring / MM));
    }
    if (growing.where().isEmpty() && setting.container().isEmpty()) {
      return between(0.1, 2, "nobody said what the tree grows in (pot or training box taken)");
    }
    return switch (growing.where().orElse(Growing.Where.POT)) {
      case GROUND -> between(2, 8, "in the ground");
      case BOX -> between(0.5, 2, "in a training box");
      case POT -> between(0.1, 0.5, "in a pot");
    };
  }

  private static YearlyRing between(double low, double high, String where) {
    return new YearlyRing(
        low * MM,
        Math.sqrt(low * high) * MM,
        high * MM,
        format(
            "%s: a ring of %s to %s mm a year (common practice, no source; measure yours)",
            where, plain(low), plain(high)));
  }

  private static String plain(double mm) {
    return mm == Math.rint(mm) ? format("%.0f", mm) : format("%.1f", mm);
  }

  private static String format(String pattern, Object... values) {
    return String.format(Locale.ROOT, pattern, values);
  }
}
