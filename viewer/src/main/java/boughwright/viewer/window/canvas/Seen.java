// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.modeller.plan.Anchor;
import boughwright.modeller.plan.Coil;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.PlanDraft;
import boughwright.modeller.plan.Proposal;
import boughwright.viewer.scene.Visibility;

/** What of a plan is drawn while some segments are not. */
final class Seen {
  private Seen() {}

  /** The plan without what is put on segments that are not shown in full; only to be drawn. */
  static Plan of(Plan plan, Visibility visibility) {
    if (visibility.isAll()) {
      return plan;
    }
    return new PlanDraft(plan)
        .cuts(plan.cuts().stream().filter(cut -> isSeen(cut.segment(), visibility)).toList())
        .apex(plan.apex().filter(apex -> isSeen(apex, visibility)))
        .proposals(plan.proposals().stream().map(proposal -> of(proposal, visibility)).toList())
        .build();
  }

  private static Proposal of(Proposal all, Visibility visibility) {
    return new Proposal(
        all.id(),
        all.about(),
        all.guyLines().stream().filter(g -> isSeen(g, visibility)).toList(),
        all.hungWeights().stream().filter(w -> isSeen(w.at().segment(), visibility)).toList(),
        all.coils().stream().filter(c -> isSeen(c, visibility)).toList(),
        all.handBends().stream().filter(h -> isSeen(h.at().segment(), visibility)).toList(),
        all.aids().stream().filter(a -> isSeen(a.segment(), visibility)).toList(),
        all.extras());
  }

  private static boolean isSeen(GuyLine line, Visibility visibility) {
    boolean held =
        !(line.anchor() instanceof Anchor.OnTree tie) || isSeen(tie.spot().segment(), visibility);
    return held && isSeen(line.at().segment(), visibility);
  }

  private static boolean isSeen(Coil coil, Visibility visibility) {
    return isSeen(coil.from().segment(), visibility) && isSeen(coil.to().segment(), visibility);
  }

  private static boolean isSeen(String segment, Visibility visibility) {
    return visibility.of(segment) == Visibility.Way.SHOWN;
  }
}
