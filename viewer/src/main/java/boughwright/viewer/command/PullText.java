// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.physics.trial.LineTrial;
import boughwright.physics.trial.Range;
import boughwright.physics.trial.Risk;
import boughwright.viewer.scene.RangeWords;
import java.util.List;

/** The pull of guy-lines as ranges, which come before any single number. */
final class PullText {
  private PullText() {}

  static void write(TextPage page, List<LineTrial> lines, Risk risk) {
    for (LineTrial line : lines) {
      Range range = risk.tensions().get(line.id());
      if (range != null) {
        page.inner(line.id() + ": " + words(range) + ".");
      }
    }
    page.inner("At the best guess:");
  }

  private static String words(Range range) {
    return RangeWords.isOneNumber(range)
        ? "pull " + RangeWords.newtons(range) + ", as you hold it; how far the wood comes is open"
        : "pull " + RangeWords.newtons(range);
  }
}
