// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.physics.trial.Hardware;
import boughwright.physics.trial.HardwareFinding;
import boughwright.physics.trial.HardwareFinding.Level;
import boughwright.physics.trial.HardwareFinding.Topic;
import boughwright.physics.trial.LineHardware;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** What is said of tackle and container, for the person at the bench. */
final class HardwareText {
  private HardwareText() {}

  /**
   * Writes it; nothing where there are no lines and nothing stands in question.
   *
   * @param details whether what is fine is told in full too
   */
  static void write(TextPage page, Hardware hardware, boolean details) {
    if (hardware.lines().isEmpty() && hardware.standing().isEmpty()) {
      return;
    }
    page.heading(hardware.lines().isEmpty() ? "Does it stand?" : "Tackle");
    for (LineHardware line : hardware.lines()) {
      List<HardwareFinding> said = new ArrayList<>(line.findings());
      if (line.turns().isEmpty()) {
        said.removeIf(HardwareText::isInTheTable);
      }
      part(page, line.line(), said, details);
    }
    if (!hardware.standing().isEmpty()) {
      part(page, "standing", hardware.standing(), details);
    }
  }

  /** How much shorter a line without turns comes stands in the table of lines. */
  private static boolean isInTheTable(HardwareFinding finding) {
    return finding.topic() == Topic.TIGHTENING && finding.level() == Level.FINE;
  }

  /** What it is about and what of it is fine in one line, then the rest, the worst first. */
  private static void part(
      TextPage page, String about, List<HardwareFinding> findings, boolean details) {
    List<HardwareFinding> sorted = new ArrayList<>(findings);
    sorted.sort(Comparator.comparing(HardwareFinding::level).reversed());
    Set<String> fine = new LinkedHashSet<>();
    List<String> points = new ArrayList<>();
    for (HardwareFinding finding : sorted) {
      if (finding.level() != Level.FINE) {
        points.add(word(finding.level()) + finding.sentence());
      } else if (details || finding.topic() == Topic.TIGHTENING) {
        points.add(finding.sentence());
      } else {
        fine.add(finding.topic().name().toLowerCase(Locale.ROOT));
      }
    }
    page.inner(about + ":" + fine(about, fine));
    points.forEach(page::point);
  }

  private static String fine(String about, Set<String> topics) {
    if (topics.isEmpty()) {
      return "";
    }
    boolean same = topics.equals(Set.of(about));
    return same ? " fine." : " " + String.join(" and ", topics) + " fine.";
  }

  private static String word(Level level) {
    return level == Level.NO ? "No. " : "Look: ";
  }
}
