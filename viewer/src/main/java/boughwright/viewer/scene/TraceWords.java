// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.physics.choice.Trace;
import boughwright.physics.trial.Odds;
import java.util.Locale;

/** Words for what a plan does to a tree. */
public final class TraceWords {
  private TraceWords() {}

  /** One thing, as part of a sentence: {@code 2 lines, untied}. */
  public static String of(Trace trace) {
    int count = (int) Math.round(trace.amount());
    return switch (trace.kind()) {
      case LINES -> counted(count, "line") + ", untied";
      case COILS -> counted(count, "coil") + ", cut off";
      case WEIGHTS -> counted(count, "weight") + ", taken off";
      case WRAPS -> counted(count, "wrap") + ", unwound";
      case CUTS -> counted(count, "cut");
      case CUT_WOOD -> counted(count, "place") + " where wood is sawn, routed or nicked";
      case PLANTING ->
          String.format(
              Locale.ROOT,
              "the planting angle of %.0f degrees, once the roots have followed it",
              Math.toDegrees(trace.amount()));
      case SET ->
          String.format(
              Locale.ROOT,
              "%.0f %% of the bend stays in the wood even if it is let go at once",
              100 * trace.amount());
      case BREAK -> "a break, should it come: " + Odds.words(trace.amount());
    };
  }

  private static String counted(int count, String thing) {
    return count + " " + thing + (count == 1 ? "" : "s");
  }
}
