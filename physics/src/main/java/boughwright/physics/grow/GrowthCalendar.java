// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.grow;

import boughwright.modeller.tree.Hemisphere;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * How much of its yearly ring a tree has laid so long after a day.
 *
 * @param start the day that times are counted from; empty when nobody said
 * @param half where the tree grows; empty when nobody said
 * @param season when its kind grows
 */
public record GrowthCalendar(
    Optional<LocalDate> start, Optional<Hemisphere> half, GrowingSeason season) {
  /** Seconds in a day and in a year [s]. */
  public static final double DAY = 86_400;

  public static final double YEAR = 365.25 * DAY;

  public GrowthCalendar {
    Objects.requireNonNull(start, "start");
    Objects.requireNonNull(half, "half");
    Objects.requireNonNull(season, "season");
  }

  /** True if the seasons count; else growth is spread evenly over the year. */
  public boolean isSeasonal() {
    return start.isPresent() && half.isPresent();
  }

  /** Yearly rings laid from the start to a time since [1]. */
  public double laidBy(double seconds) {
    if (!isSeasonal()) {
      return seconds / YEAR;
    }
    double first = start.get().toEpochDay();
    return season.rings(first + seconds / DAY, half.get()) - season.rings(first, half.get());
  }

  /** True if new wood is laid at a time since the start. */
  public boolean growsAt(double seconds) {
    return !isSeasonal() || laidBy(seconds + DAY) > laidBy(seconds);
  }
}
