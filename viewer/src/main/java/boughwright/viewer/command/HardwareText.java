// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.physics.trial.Hardware;
import boughwright.physics.trial.HardwareFinding;
import boughwright.physics.trial.HardwareFinding.Level;
import boughwright.physics.trial.HardwareFinding.Topic;
import boughwright.physics.trial.LineHardware;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** What is said of tackle and container, for the person at the bench. */
final class HardwareText {
  private HardwareText() {}

  /**
   * Writes it; nothing where there are no lines and nothing stands in question.
   *
   * @param details whether what is fine is told in full too
   */
  static void write(TextPage page, Hardware hardware, boolean details) {
    for (LineHardware line : hardware.lines()) {
      page.heading("Tackle of " + line.line());
      part(page, line.findings(), details);
    }
    if (!hardware.standing().isEmpty()) {
      page.heading("Does it stand?");
      part(page, hardware.standing(), details);
    }
  }

  /** The worst first; how far to tighten is always told. */
  private static void part(TextPage page, List<HardwareFinding> findings, boolean details) {
    List<HardwareFinding> sorted = new ArrayList<>(findings);
    sorted.sort(Comparator.comparing(HardwareFinding::level).reversed());
    List<String> fine = new ArrayList<>();
    for (HardwareFinding finding : sorted) {
      if (finding.level() != Level.FINE) {
        page.point(word(finding.level()) + finding.sentence());
      } else if (details || finding.topic() == Topic.TIGHTENING) {
        page.point(finding.sentence());
      } else {
        fine.add(finding.topic().name().toLowerCase(Locale.ROOT));
      }
    }
    if (!fine.isEmpty()) {
      page.point("Fine: " + String.join(", ", fine.stream().distinct().toList()) + ".");
    }
  }

  private static String word(Level level) {
    return level == Level.NO ? "No. " : "Look: ";
  }
}
