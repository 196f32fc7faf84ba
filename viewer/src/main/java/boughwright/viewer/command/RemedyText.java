// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.design.review.Fault;
import boughwright.modeller.design.review.Remedy;
import boughwright.physics.grow.CutTime;
import boughwright.viewer.scene.RemedyWords;
import boughwright.viewer.scene.WoundWords;

/** What can be done about a fault, and what that leaves, on the page. */
final class RemedyText {
  private final RemedyWords words;

  RemedyText(ReviewAnswer answer) {
    words =
        new RemedyWords(
            new WoundWords(
                answer.front(),
                answer.review().rules(),
                new WoundWords.Growth(answer.ring(), CutTime.UNSAID)));
  }

  void write(TextPage page, Fault fault, Remedy remedy) {
    page.point(RemedyWords.action(remedy.action()) + ": " + words.first(fault, remedy));
    if (remedy.action() != Remedy.Action.SACRIFICE) {
      remedy
          .aftermath()
          .ifPresent(
              aftermath -> {
                words.after(aftermath).forEach(page::further);
                page.further(RemedyWords.shape(aftermath));
              });
    }
  }
}
