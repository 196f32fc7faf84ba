// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.grow;

import java.util.OptionalDouble;

/**
 * When wire, a pad or a loop begins to bite: once radial growth has used up the gap beneath it and
 * what bark gives. Times are since it was put on; an empty one lies beyond the years looked at.
 *
 * @param earliest fast growth, little give [s]
 * @param likely best guess [s]
 * @param latest slow growth, much give [s]
 */
public record WireBite(OptionalDouble earliest, OptionalDouble likely, OptionalDouble latest) {
  /**
   * What bark gives before it is marked, 0.1 to 0.2 mm (from the geometry of a loop that cannot
   * stretch; the amount is an assumption) [m].
   */
  private static final double LITTLE_GIVE = 0.1e-3;

  private static final double MUCH_GIVE = 0.2e-3;

  private static final double YEARS = 6;

  /**
   * For something put on at the calendar's start.
   *
   * @param gap between it and the bark, one side, 0 where it lies snug [m]
   */
  public static WireBite of(YearlyRing ring, GrowthCalendar calendar, double gap) {
    double middle = (LITTLE_GIVE + MUCH_GIVE) / 2;
    return new WireBite(
        time(ring.high(), gap + LITTLE_GIVE, calendar),
        time(ring.middle(), gap + middle, calendar),
        time(ring.low(), gap + MUCH_GIVE, calendar));
  }

  private static OptionalDouble time(double ring, double allowed, GrowthCalendar calendar) {
    for (int day = 1; day < YEARS * 366; day++) {
      if (ring * calendar.laidBy(day * GrowthCalendar.DAY) >= allowed) {
        return OptionalDouble.of(day * GrowthCalendar.DAY);
      }
    }
    return OptionalDouble.empty();
  }

  /**
   * When to look for the first time: a week before the earliest, or half-way to it where that is
   * later [s].
   */
  public OptionalDouble look() {
    return earliest.isPresent()
        ? OptionalDouble.of(
            Math.max(earliest.getAsDouble() / 2, earliest.getAsDouble() - 7 * GrowthCalendar.DAY))
        : OptionalDouble.empty();
  }
}
