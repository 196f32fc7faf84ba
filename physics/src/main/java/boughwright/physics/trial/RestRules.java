// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Whether the tree has rooted in and rested since it was last dug, repotted or worked hard.
 *
 * <p>That a tree bears one hard operation a year is common practice, no source; so is every span
 * here.
 *
 * @param occasion the day and the tree
 * @param hard whether the bend is hard work itself
 */
record RestRules(Occasion occasion, boolean hard) {
  /** Roots cut at digging are replaced in one full season at the least [months]. */
  private static final int COLLECTED_NO = 12;

  /** A collected tree is treated with care for a second one [months]. */
  private static final int COLLECTED_CARE = 24;

  /** Until new roots hold the tree in its container, a line levers it out [months]. */
  private static final int REPOTTED_NO = 3;

  /** Repotting is the one hard operation of its year [months]. */
  private static final int REPOTTED_CARE = 12;

  /** Hard work upon hard work [months]. */
  private static final int WORKED_NO = 3;

  /** Hard work is the one hard operation of its year [months]. */
  private static final int WORKED_CARE = 12;

  private static final String PRACTICE = " (common practice, no source)";

  /**
   * Something that was done to the tree and the rest it asks for.
   *
   * @param what what was done
   * @param on when
   * @param none months of the strict span
   * @param strict best verdict within it
   * @param care months of the wider span
   * @param wide best verdict within that
   */
  private record Past(
      String what,
      Optional<LocalDate> on,
      int none,
      Verdict.Level strict,
      int care,
      Verdict.Level wide) {}

  List<SeasonFinding> findings() {
    List<SeasonFinding> out = new ArrayList<>();
    List<String> unsaid = new ArrayList<>();
    for (Past past : pasts()) {
      if (past.on.isEmpty()) {
        unsaid.add(past.what);
      } else {
        judge(past, past.on.get()).ifPresent(out::add);
      }
    }
    if (!unsaid.isEmpty()) {
      out.add(
          SeasonFinding.note(
              "Not said: when it was last "
                  + String.join(", ", unsaid)
                  + "; a hard bend waits for a year after any of them"
                  + PRACTICE
                  + "."));
    }
    return out;
  }

  private List<Past> pasts() {
    return List.of(
        new Past(
            "collected",
            occasion.condition().collectedOn(),
            COLLECTED_NO,
            Verdict.Level.NO,
            COLLECTED_CARE,
            hard ? Verdict.Level.WITH_PROTECTION : Verdict.Level.IN_STAGES),
        new Past(
            "repotted",
            occasion.condition().repottedOn(),
            REPOTTED_NO,
            hard ? Verdict.Level.NO : Verdict.Level.WITH_PROTECTION,
            REPOTTED_CARE,
            hard ? Verdict.Level.IN_STAGES : Verdict.Level.TAKES_IT),
        new Past(
            "worked hard",
            occasion.condition().workedOn(),
            WORKED_NO,
            hard ? Verdict.Level.NO : Verdict.Level.IN_STAGES,
            WORKED_CARE,
            hard ? Verdict.Level.WITH_PROTECTION : Verdict.Level.TAKES_IT));
  }

  private Optional<SeasonFinding> judge(Past past, LocalDate since) {
    String when = "It was " + past.what + " on " + since;
    if (occasion.on().isEmpty()) {
      return Optional.of(
          SeasonFinding.note(
              when + "; no hard bend before " + since.plusMonths(past.care) + PRACTICE + "."));
    }
    LocalDate day = occasion.on().get();
    if (since.isAfter(day)) {
      return Optional.of(
          SeasonFinding.note(when + ", which lies after the bend and is not counted."));
    }
    boolean strict = day.isBefore(since.plusMonths(past.none));
    if (!strict && !day.isBefore(since.plusMonths(past.care))) {
      return Optional.empty();
    }
    LocalDate until = since.plusMonths(strict ? past.none : past.care);
    return Optional.of(
        new SeasonFinding(
            strict ? past.strict : past.wide,
            when
                + (strict ? ", and has not rooted in or rested" : ", less than a rest ago")
                + PRACTICE
                + ".",
            "Wait until " + until + PRACTICE + "."));
  }
}
