// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.stage;

import boughwright.physics.trial.LineTrial;
import boughwright.physics.trial.Range;
import boughwright.physics.trial.TrialResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The sentences of a course. */
final class CourseWords {
  private static final double DAY = 86_400;

  /** When to stop, at any step. */
  static final String STOP =
      "Stop, whatever the numbers say, at the first tick or crack, when the bark on the outside"
          + " opens or bark tears at the union, when sharp folds show on the inside, or when a line"
          + " pulls half as hard again as said here: then the wood is stiffer than believed, and a"
          + " pull test comes first (these rules: common practice, no source). Let out a third of"
          + " the last step, wait, and do not go further that season.";

  private CourseWords() {}

  /** What is drawn in to. */
  static String bend(TrialResult pose, double part, boolean byHand) {
    String how = byHand ? "Bend it by hand, slowly; " : "Draw the lines in, slowly; ";
    String lines = lines(pose, Map.of());
    return how
        + (part < 1 ? format("%.0f %% of the whole bend", 100 * part) : "the whole bend")
        + (lines.isEmpty() ? "." : ": " + lines + ".");
  }

  static String letGo() {
    return "Take the hands off, slowly: coils and lines hold it now.";
  }

  static String tighten(TrialResult pose, double part, Map<String, Range> before) {
    return format("Draw in further, to %.0f %% of the whole bend: ", 100 * part)
        + lines(pose, before)
        + ". A line that hangs loose is drawn taut first.";
  }

  private static String lines(TrialResult pose, Map<String, Range> before) {
    List<String> said = new ArrayList<>();
    for (LineTrial line : pose.lines()) {
      Range left = before.get(line.id());
      String was = left == null ? "" : format(" (by now about %s N are left of it)", band(left));
      said.add(
          format(
              "%s to %.1f mm shorter than as measured, %.1f N%s",
              line.id(), 1000 * line.shortening(), line.tension(), was));
    }
    return String.join("; ", said);
  }

  private static String band(Range left) {
    return format("%.1f (%.1f to %.1f)", left.middle(), left.low(), left.high());
  }

  static String look(Course.Span bites, boolean wired) {
    String what = wired ? "every coil, pad and loop" : "every pad and loop";
    String latest =
        bites.latest().isPresent()
            ? " at the latest after about " + weeks(bites.latest().getAsDouble())
            : "";
    String likely =
        bites.likely().isPresent()
            ? ", most likely after about " + weeks(bites.likely().getAsDouble())
            : "";
    return format("From now on look under %s once a week while the tree grows", what)
        + format(
            ": it can begin to bite after %s%s%s. Where bark begins to swell beside it, %s, and"
                + " tie or wind again a finger's breadth further; never wait for the day planned.",
            weeks(bites.earliest().orElseThrow()),
            likely,
            latest.isEmpty() ? "" : "," + latest,
            wired ? "cut the wire off or loosen the line" : "loosen the line");
  }

  static String release(Range springback, boolean wired) {
    return format(
        "Mark where the tip stands. Untie the lines%s. About %.0f %% of the bend (%.0f to %.0f %%)"
            + " is lost, a part of it over the weeks after. If more is lost, %s again.",
        wired ? " and cut the wire off in pieces, never unwind it" : "",
        100 * springback.middle(),
        100 * springback.low(),
        100 * springback.high(),
        wired ? "wire" : "tie");
  }

  static String weeks(double seconds) {
    double weeks = seconds / DAY / 7;
    return weeks < 1.5 ? format("%.0f days", seconds / DAY) : format("%.0f weeks", weeks);
  }

  static String format(String pattern, Object... values) {
    return String.format(Locale.ROOT, pattern, values);
  }
}
