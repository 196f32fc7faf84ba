// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.physics.stage.Course;
import boughwright.viewer.scene.Wording;
import java.util.List;

/** Says when something comes about that may lie beyond the times looked at. */
final class SpanWords {
  private SpanWords() {}

  /**
   * When a bend stays by itself, in one line or two.
   *
   * @param end the last time looked at [s]
   */
  static List<String> stays(Course.Span stays, double end) {
    String whole = Wording.time(end);
    if (stays.earliest().isEmpty()) {
      return List.of("does not stay by itself within " + whole);
    }
    String low = Wording.time(stays.earliest().getAsDouble());
    String likely =
        stays.likely().isPresent()
            ? Wording.time(stays.likely().getAsDouble())
            : "more than " + whole;
    if (stays.latest().isPresent() && low.equals(Wording.time(stays.latest().getAsDouble()))) {
      return List.of("stays by itself after " + likely);
    }
    String range =
        stays.latest().isPresent()
            ? between(low, Wording.time(stays.latest().getAsDouble()))
            : low + " at the earliest";
    return List.of("stays by itself after " + likely, "(" + range + ")");
  }

  /** Such as "6 to 16 months", the unit said once where it is the same. */
  private static String between(String low, String high) {
    String unit = high.substring(high.indexOf(' '));
    return (low.endsWith(unit) ? low.substring(0, low.length() - unit.length()) : low)
        + " to "
        + high;
  }
}
