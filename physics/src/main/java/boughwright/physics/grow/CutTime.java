// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.grow;

import boughwright.modeller.tree.Hemisphere;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Optional;

/**
 * When in the year a wound is made. Callus starts fastest in spring; after midsummer it waits for a
 * good part of the season (the order of seasons: Neely in Perry and Hickman 1987; the size of the
 * delay is taken from it, not measured).
 */
public enum CutTime {
  /** From the winter solstice to the summer solstice. */
  BEFORE_MIDSUMMER(0, 0, 0),
  /** From the summer solstice to the winter solstice. */
  AFTER_MIDSUMMER(0.3, 0.4, 0.5),
  /** Nobody said: best without delay, at worst with it. */
  UNSAID(0, 0, 0.5);

  /** The solstices to the day, as calendars of temperate gardens have them. */
  private static final MonthDay JUNE = MonthDay.of(6, 21);

  private static final MonthDay DECEMBER = MonthDay.of(12, 21);

  private final Years delay;

  CutTime(double low, double likely, double high) {
    delay = new Years(low, likely, high);
  }

  /** By the day and the half of the earth, where both are said. */
  public static CutTime of(Optional<LocalDate> day, Optional<Hemisphere> half) {
    if (day.isEmpty() || half.isEmpty()) {
      return UNSAID;
    }
    MonthDay at = MonthDay.from(day.get());
    boolean secondHalf = !at.isBefore(JUNE) && at.isBefore(DECEMBER);
    return secondHalf == (half.get() == Hemisphere.NORTH) ? AFTER_MIDSUMMER : BEFORE_MIDSUMMER;
  }

  /** What it adds to the time to close [years]. */
  public Years delay() {
    return delay;
  }
}
