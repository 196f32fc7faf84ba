// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.plan.Coil;
import boughwright.modeller.plan.Hand;
import boughwright.physics.reach.Choice;

/** How a coil is wound and a hand bends it, for the person at the bench. */
final class ReachCoilText {
  private ReachCoilText() {}

  static void write(TextPage page, Choice.Bend bend, Choice choice) {
    Coil coil = bend.coil();
    page.inner(
        "Wind "
            + coil.strands()
            + (coil.strands() == 1 ? " strand of " : " strands of ")
            + coil.metal().word()
            + " wire, "
            + Shown.fixed(1000 * coil.gauge(), 2)
            + " mm, "
            + (coil.hand() == Hand.RIGHT ? "right" : "left")
            + "-handed, from "
            + coil.from().segment()
            + " at "
            + Shown.plain(Math.rint(1000 * coil.from().along()) / 1000)
            + " to "
            + coil.to().segment()
            + " at "
            + Shown.plain(Math.rint(1000 * coil.to().along()) / 1000)
            + "; cut "
            + Shown.millimetres(bend.work().cut())
            + " for each.");
    page.further("Start: " + bend.work().anchorage() + ".");
    page.further(
        "Take hold of "
            + bend.place().spot().segment()
            + ", "
            + Shown.fixed(1000 * bend.place().fromUnion(), 0)
            + " mm from the union of its limb, bend it "
            + Shown.millimetres(bend.hand().move())
            + " toward "
            + way(bend.hand().direction())
            + " (right, back, up; "
            + Shown.newtons(bend.force())
            + "), then let go"
            + (choice.lines().isEmpty() ? "" : " into the line")
            + ".");
    page.further("Breaking is that of the hardest bend, before you let go.");
  }

  private static String way(Direction3 way) {
    return Shown.fixed(way.x(), 2) + "," + Shown.fixed(way.y(), 2) + "," + Shown.fixed(way.z(), 2);
  }
}
