// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.physics.wood.WarmDay;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.OptionalDouble;

/** What the temperature of the wood does to a bend. */
final class WarmthText {
  /** Less than this is no difference to a hand [1]. */
  private static final double NOTHING = 0.005;

  private WarmthText() {}

  /** Writes it; nothing where nobody gave a temperature. */
  static void write(TextPage page, OptionalDouble celsius) {
    if (celsius.isPresent()) {
      page.heading("Temperature of the wood");
      page.inner(words(celsius.getAsDouble()));
    }
  }

  private static String words(double celsius) {
    String degrees = Shown.fixed(celsius, 0) + " °C";
    if (WarmDay.isTooCold(celsius)) {
      return "At " + degrees + " wood is frozen or nearly so: do not bend it.";
    }
    double change = WarmDay.stiffness(celsius) - 1;
    if (Math.abs(change) < NOTHING) {
      return "At " + degrees + " green wood is as stiff as in the tables.";
    }
    return "At "
        + degrees
        + " green wood is "
        + Shown.fixed(100 * Math.abs(change), 1)
        + " % "
        + (change < 0 ? "less" : "more")
        + " stiff than in the tables (Wood Handbook, Table 5-16), and the same bend takes so much "
        + (change < 0 ? "less" : "more")
        + " pull; the pulls shown here leave that out. The strain at which it cracks is taken as"
        + " unchanged (assumption)."
        + (change < 0
            ? " The price of a warm day: a tree in dry heat loses water, so shade and water it"
                + " (common practice, no source)."
            : "");
  }

  static void putInto(ObjectNode trial, OptionalDouble celsius) {
    if (celsius.isPresent()) {
      ObjectNode node = trial.putObject("temperature");
      node.put("celsius", JsonAnswer.number(celsius.getAsDouble()));
      node.put("stiffness", JsonAnswer.number(WarmDay.stiffness(celsius.getAsDouble())));
      node.put("too_cold", WarmDay.isTooCold(celsius.getAsDouble()));
    }
  }
}
