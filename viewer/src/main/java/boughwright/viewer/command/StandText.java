// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.design.ground.Balance;
import boughwright.modeller.design.ground.GroundAnswer;
import boughwright.modeller.design.ground.TieDown;
import boughwright.modeller.design.ground.Unsaid;
import boughwright.modeller.plan.Standing;
import boughwright.viewer.scene.GroundWords;
import java.util.EnumSet;
import java.util.OptionalDouble;

/** Where the mass stands and what keeps the tree from rocking. */
final class StandText {
  private final TextPage page;
  private final GroundAnswer answer;

  StandText(TextPage page, GroundAnswer answer) {
    this.page = page;
    this.answer = answer;
  }

  private static String mm(double length) {
    return Shown.fixed(1000 * length, 0) + " mm";
  }

  void write() {
    page.heading("How it stands");
    balance(answer.balance());
    for (Unsaid what : EnumSet.of(Unsaid.NO_MASS, Unsaid.MASS_TOO_SMALL, Unsaid.NOTHING_BEARS)) {
      if (answer.unsaid().contains(what)) {
        page.inner(GroundText.unsaid(what));
      }
    }
    answer.ties().ifPresent(this::ties);
  }

  private void balance(Balance balance) {
    Balance.Body above = balance.above();
    page.inner(
        "The wood above the roots weighs "
            + Shown.kilograms(above.mass())
            + " (1 kg a litre with its water, from memory; leaves left out). Its centre of mass is "
            + mm(above.centre().z())
            + " up, "
            + GroundWords.place(above)
            + ".");
    balance
        .whole()
        .ifPresent(
            whole ->
                page.inner(
                    "Tree, soil and container weigh "
                        + Shown.kilograms(whole.mass())
                        + " together, "
                        + GroundWords.place(whole)
                        + " (soil and container taken in their middle)."));
    String margin = GroundWords.margin(balance);
    if (!margin.isEmpty()) {
      page.inner(margin);
    }
  }

  private void ties(TieDown down) {
    page.inner(
        "Freshly planted it stands on its roots, its own weight of "
            + Shown.newtons(Standing.GRAVITY * down.tree().mass())
            + " holds it, and a push of "
            + Shown.newtons(down.push().force())
            + " at "
            + mm(down.push().height())
            + ", two thirds of its height, comes from the worst side"
            + GroundWords.PRACTICE
            + ". Soil on the roots is not counted.");
    page.inner(GroundWords.untied(down));
    double distance = answer.trunk();
    TextTable table = new TextTable(1).row("ties", "tension of each");
    for (int count = 2; count <= 4; count++) {
      OptionalDouble tension = down.tension(TieDown.round(count, distance));
      table.row(
          String.valueOf(count),
          tension.isEmpty() ? "cannot hold it" : Shown.fixed(tension.getAsDouble(), 0) + " N");
    }
    page.table(table);
    page.inner(
        "Ties straight down over the root base, "
            + mm(distance)
            + " from the middle of the trunk, evenly round; two of them to the right and left."
            + " Above "
            + Shown.fixed(TieDown.MOST, 0)
            + " N a tie of soft wire and the bark under it give way (our choice of limit).");
  }
}
