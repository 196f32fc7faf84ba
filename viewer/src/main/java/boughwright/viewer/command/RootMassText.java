// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.design.ground.GroundAnswer;
import boughwright.modeller.design.ground.RootCare;
import boughwright.modeller.design.ground.RootCut;
import boughwright.modeller.design.ground.RootLoss;
import boughwright.modeller.design.ground.RootMass;
import boughwright.modeller.design.ground.TiltSteps;
import boughwright.viewer.scene.GroundWords;
import boughwright.viewer.scene.Wording;

/** How deep the roots go, what is cut, and in how many repottings. */
final class RootMassText {
  private final TextPage page;
  private final GroundAnswer answer;
  private final RootCare care;

  RootMassText(TextPage page, GroundAnswer answer, RootCare care) {
    this.page = page;
    this.answer = answer;
    this.care = care;
  }

  private static String mm(double length) {
    return Shown.fixed(1000 * length, 0) + " mm";
  }

  void write(RootMass roots) {
    depth(roots);
    cuts(roots.loss());
    String lifted = GroundWords.lifted(roots.loss());
    if (!lifted.isEmpty()) {
      page.inner(lifted);
    }
    if (roots.loss().share() > 0) {
      share(roots.loss());
    }
    steps(roots.steps());
  }

  private void depth(RootMass roots) {
    RootMass.Depth depth = roots.depth();
    String cut =
        depth.left() < depth.then() - 5e-4 ? ", " + mm(depth.left()) + " after the cuts" : "";
    page.inner(
        "The roots go "
            + mm(depth.then())
            + " deep at this angle"
            + cut
            + "; as measured "
            + mm(depth.now())
            + "."
            + answer
                .fit()
                .map(fit -> " " + Wording.capital(GroundWords.room(fit)) + ".")
                .orElse(""));
    page.inner(
        "The middle of the root wood is "
            + Wording.beside(roots.centre().x(), roots.centre().y())
                .replace("root base", "middle of the trunk base")
            + ".");
  }

  private void cuts(RootLoss loss) {
    if (loss.cuts().isEmpty()) {
      if (answer.fit().isPresent() && answer.fit().get().holdsTrunk()) {
        page.inner("All roots fit: nothing must be cut for the container.");
      }
      return;
    }
    TextTable table = new TextTable(2).row("cut", "where", "caliper", "off", "share");
    for (RootCut cut : loss.cuts()) {
      table.row(
          cut.segment(),
          cut.takesAll() ? "at the trunk" : mm(cut.fromTrunk()) + " from the trunk",
          mm(cut.caliper()),
          mm(cut.length()),
          GroundWords.share(cut.volume() / loss.whole()));
    }
    page.table(table);
    page.inner(
        "Off: length that goes, with the roots on it; share: of all root wood in the file. Fine"
            + " roots and soil are not counted.");
  }

  private void share(RootLoss loss) {
    page.inner(
        "In all "
            + GroundWords.share(loss.share())
            + " of the root wood is lost; at one repotting "
            + GroundWords.share(care.careful())
            + " may go, "
            + GroundWords.share(care.most())
            + " at most from a strong tree, and no big branch in the same season"
            + GroundWords.PRACTICE
            + ".");
  }

  private void steps(TiltSteps steps) {
    // nothing is asked of the roots where nothing is tilted
    if (answer.pose().tilt() > 0 || !steps.atOnce()) {
      page.inner(GroundWords.steps(steps, care));
    }
    steps.follow().ifPresent(this::follow);
  }

  private void follow(TiltSteps.Follow follow) {
    String bend =
        "To keep all of it in the soil "
            + follow.root().id()
            + " ("
            + mm(follow.root().caliper())
            + ") would have to bend by "
            + GroundText.degrees(follow.angle())
            + ", a strain of "
            + Shown.fixed(100 * follow.strain(), 1)
            + " % at its thick end";
    if (follow.hopeless()) {
      page.inner(bend + ": more than wood bears, however slowly.");
    } else if (follow.tooThick()) {
      page.inner(bend + "; it is too thick for fingers (25 mm" + GroundWords.PRACTICE + ").");
    } else if (follow.steps() == 1) {
      page.inner(bend + ", which it may bear at once (1 %" + GroundWords.PRACTICE + ").");
    } else {
      page.inner(
          bend
              + ": "
              + follow.steps()
              + " repottings, at 1 % a time"
              + GroundWords.PRACTICE
              + ", unless it is cut.");
    }
  }
}
