// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.units.ForceUnit;
import boughwright.physics.trial.LineTrial;
import java.util.List;

/** The guy-lines of a trial, for the person who tightens them. */
final class LineText {
  private LineText() {}

  static TextTable table(PlanChoice choice, List<LineTrial> lines) {
    TextTable table =
        new TextTable(2).row("line", "on", "tension", "on a balance", "tighten by", "length");
    List<GuyLine> planned =
        choice.proposals().stream().flatMap(proposal -> proposal.guyLines().stream()).toList();
    for (int i = 0; i < lines.size(); i++) {
      LineTrial line = lines.get(i);
      table.row(
          line.id(),
          planned.get(i).at().segment(),
          line.slack() ? "slack" : Shown.newtons(line.tension()),
          line.slack() ? "-" : Shown.kilograms(kilograms(line)),
          Shown.millimetres(line.shortening()),
          Shown.millimetres(line.length()));
    }
    return table;
  }

  private static double kilograms(LineTrial line) {
    return ForceUnit.KILOGRAM_FORCE.fromNewtons(line.tension());
  }
}
