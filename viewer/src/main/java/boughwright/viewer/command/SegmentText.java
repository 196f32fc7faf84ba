// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.physics.trial.SegmentTrial;
import java.util.Comparator;
import java.util.List;

/** The segments that are bent hardest. */
final class SegmentText {
  private static final int MOST = 8;

  /** Less than this is shown as nothing anyway [1]. */
  private static final double NOTHING = 5e-5;

  private SegmentText() {}

  static void write(TextPage page, List<SegmentTrial> segments) {
    List<SegmentTrial> bent =
        segments.stream()
            .filter(segment -> segment.bendingStrain() >= NOTHING)
            .sorted(Comparator.comparingDouble(SegmentTrial::bendingStrain).reversed())
            .toList();
    if (bent.isEmpty()) {
      return;
    }
    page.heading(
        bent.size() > MOST
            ? "The " + MOST + " most strained segments of " + bent.size() + " that bend"
            : "Segments that bend");
    TextTable table =
        new TextTable(1).row("segment", "bending strain", "moment", "torsion", "along the axis");
    for (SegmentTrial segment : bent.subList(0, Math.min(MOST, bent.size()))) {
      table.row(
          segment.segment(),
          Shown.percent(segment.bendingStrain()),
          Shown.newtonMetres(segment.moment()),
          Shown.newtonMetres(segment.torsion()),
          Shown.newtons(segment.axial()));
    }
    page.table(table);
  }
}
