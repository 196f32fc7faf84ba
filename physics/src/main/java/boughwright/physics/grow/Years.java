// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.grow;

/**
 * How many growing seasons something takes; infinite where it never comes at that growth.
 *
 * @param low where everything goes fast [years]
 * @param likely best guess [years]
 * @param high where everything goes slowly [years]
 */
public record Years(double low, double likely, double high) {
  /** No time at all. */
  public static final Years NONE = new Years(0, 0, 0);

  public Years {
    if (!(0 <= low && low <= likely && likely <= high)) {
      throw new IllegalArgumentException("not years: " + low + ", " + likely + ", " + high);
    }
  }

  /** The later of two, end by end: what takes until both are done. */
  public static Years later(Years one, Years other) {
    return new Years(
        Math.max(one.low, other.low),
        Math.max(one.likely, other.likely),
        Math.max(one.high, other.high));
  }
}
