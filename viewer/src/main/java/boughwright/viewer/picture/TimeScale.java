// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.viewer.scene.Wording;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * A scale of time by its cube root, so that the first hours and the years after them both read:
 * most of what creeps away goes early.
 *
 * @param end the last time shown, more than 0 [s]
 * @param from where time 0 is on the page [pixels]
 * @param to where the end is [pixels]
 */
record TimeScale(double end, double from, double to) {
  private static final double HOUR = 3600;
  private static final double MONTH = Wording.YEAR_DAYS / 12 * Wording.DAY;
  private static final double YEAR = Wording.YEAR_DAYS * Wording.DAY;

  /** Times that may be written, the most wanted first. */
  private static final List<Tick> WANTED =
      List.of(
          new Tick("0", 0),
          new Tick("1 year", YEAR),
          new Tick("1 month", MONTH),
          new Tick("1 week", 7 * Wording.DAY),
          new Tick("1 day", Wording.DAY),
          new Tick("6 months", 6 * MONTH),
          new Tick("2 years", 2 * YEAR),
          new Tick("5 years", 5 * YEAR),
          new Tick("10 years", 10 * YEAR),
          new Tick("1 h", HOUR),
          new Tick("3 months", 3 * MONTH),
          new Tick("3 years", 3 * YEAR),
          new Tick("2 weeks", 14 * Wording.DAY),
          new Tick("6 h", 6 * HOUR),
          new Tick("3 days", 3 * Wording.DAY),
          new Tick("10 min", HOUR / 6));

  /**
   * A time with its words.
   *
   * @param words as people say it
   * @param time since the first bend [s]
   */
  record Tick(String words, double time) {}

  TimeScale {
    if (!(end > 0) || Double.isInfinite(end)) {
      throw new IllegalArgumentException("a time to show is more than 0, not " + end);
    }
  }

  double at(double time) {
    return from + Math.cbrt(Math.max(0, time) / end) * (to - from);
  }

  /**
   * As many times as find room, in order.
   *
   * @param width width of their words [pixels]
   * @param gap least room between words [pixels]
   */
  List<Tick> ticks(ToDoubleFunction<String> width, double gap) {
    List<Tick> ticks = new ArrayList<>();
    for (Tick tick : WANTED) {
      double half = width.applyAsDouble(tick.words()) / 2 + gap / 2;
      boolean free =
          tick.time() <= end * (1 + 1e-9)
              && ticks.stream()
                  .allMatch(
                      other ->
                          Math.abs(at(other.time()) - at(tick.time()))
                              >= half + width.applyAsDouble(other.words()) / 2 + gap / 2);
      if (free) {
        ticks.add(tick);
      }
    }
    ticks.sort(Comparator.comparingDouble(Tick::time));
    return ticks;
  }
}
