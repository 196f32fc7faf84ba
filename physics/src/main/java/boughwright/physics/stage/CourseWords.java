// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.stage;

import boughwright.physics.trial.LineTrial;
import boughwright.physics.trial.Range;
import boughwright.physics.trial.TrialResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** The sentences of a course. */
final class CourseWords {
  private static final double DAY = 86_400;

  /** When to stop, at any step. */
  static final String STOP =
      "Stop, whatever the numbers say, at the first tick or crack, when bark opens on the outside or"
          + " tears at the union, when sharp folds show on the inside, or when a line pulls half as"
          + " hard again as said here. Let out a third of the last step and go no further that"
          + " season (common practice, no source).";

  private CourseWords() {}

  /**
   * What a step comes to.
   *
   * @param part part of the plan's bends [1]
   * @param byHand whether hands help
   * @param means what the plan bends and holds with
   * @param turns turns of a line's tightener by its id, in words
   */
  record Now(double part, boolean byHand, Means means, Function<String, Optional<String>> turns) {
    private String far() {
      return part < 1 ? format("%.0f %% of the whole bend", 100 * part) : "the whole bend";
    }
  }

  /** What is bent to at first. */
  static String bend(TrialResult pose, Now now) {
    String lines = lines(pose, now, Map.of());
    String how = now.means().lines() ? "Draw the lines in, slowly" : "Hang the weights, gently";
    return (now.byHand() ? "Bend it by hand, slowly" : how) + ", to " + now.far() + "." + lines;
  }

  /** After the hands are off [1]. */
  static String letGo(double kept, boolean holds) {
    return holds
        ? format(
            "Take the hands off, slowly; about %.0f %% of this bend stays, held by what is on it.",
            100 * kept)
        : format(
            "Take the hands off: nothing holds it. It springs back at once, and about %.0f %% of"
                + " this bend stays.",
            100 * kept);
  }

  static String tighten(TrialResult pose, Now now, Map<String, Range> before) {
    String lines = lines(pose, now, before);
    String how = now.means().lines() ? "Draw in further" : "Add weight";
    return (now.byHand() ? "Bend further by hand" : how)
        + ", to "
        + now.far()
        + "."
        + lines
        + (lines.isEmpty() ? "" : " Draw a loose line taut first.");
  }

  private static String lines(TrialResult pose, Now now, Map<String, Range> before) {
    StringBuilder said = new StringBuilder();
    for (LineTrial line : pose.lines()) {
      Range left = before.get(line.id());
      String from =
          left == null
              ? ""
              : format("from %.1f N (%.1f to %.1f) ", left.middle(), left.low(), left.high());
      String turns = now.turns().apply(line.id()).map(words -> ", " + words).orElse("");
      said.append(
          format(
              " %s: %.1f mm shorter than as measured%s, %sto %.1f N.",
              line.id(), 1000 * line.shortening(), turns, from, line.tension()));
    }
    return said.toString();
  }

  static String look(Course.Span bites, Means means) {
    String likely =
        bites.likely().isPresent()
            ? ", most likely after " + weeks(bites.likely().getAsDouble())
            : "";
    return format(
        "From now on look under every %s once a week while the tree grows: it can begin to bite"
            + " after %s%s. Where bark swells beside it, %s a finger's breadth further; do not"
            + " wait for the day planned.",
        means.coils() ? "coil, pad and loop" : "pad and loop",
        weeks(bites.earliest().orElseThrow()),
        likely,
        means.coils()
            ? "cut the wire off or loosen the line, and wind or tie again"
            : "loosen the line and tie again");
  }

  static String release(Range springback, Means means) {
    return format(
        "Mark where the tip stands. %s. About %.0f %% of the bend (%.0f to %.0f %%) is lost, part of"
            + " it over the weeks after. If more is lost, put it on again.",
        off(means), 100 * springback.middle(), 100 * springback.low(), 100 * springback.high());
  }

  private static String off(Means means) {
    List<String> acts = new ArrayList<>();
    if (means.lines()) {
      acts.add("untie the lines");
    }
    if (means.weights()) {
      acts.add("take the weights down");
    }
    if (means.coils()) {
      acts.add("cut the wire off in pieces, never unwind it (eye protection: its ends fly)");
    }
    String all = String.join("; ", acts);
    return Character.toUpperCase(all.charAt(0)) + all.substring(1);
  }

  static String weeks(double seconds) {
    double weeks = seconds / DAY / 7;
    return weeks < 1.5 ? format("%.0f days", seconds / DAY) : format("%.0f weeks", weeks);
  }

  static String format(String pattern, Object... values) {
    return String.format(Locale.ROOT, pattern, values);
  }
}
