// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.TreeDraft;
import boughwright.modeller.tree.TreeRules;
import java.util.Optional;

/** Makes a document of a draft, or says why it is none. */
final class Finish {
  private final Draft draft;

  Finish(Draft draft) {
    this.draft = draft;
  }

  Document document() throws InputException {
    Judging.require("", tree().findings());
    Judging.require("", TreeRules.woodFindings(draft.ids(), draft.overrides));
    Skeleton skeleton = new Skeleton(tree().build());
    if (keepJoints(skeleton)) {
      skeleton = new Skeleton(tree().build());
    }
    Document document =
        RoundPlaces.kept(
            draft.before, draft.before.withTree(skeleton.tree()).withPlans(draft.plans));
    if (document.equals(draft.before)) {
      return draft.before;
    }
    Skeleton last = new Skeleton(document.tree());
    for (Plan plan : document.plans()) {
      Judging.require(last, plan);
    }
    return document;
  }

  private TreeDraft tree() {
    Tree old = draft.before.tree();
    return new TreeDraft(old)
        .segments(draft.built())
        .wounds(draft.wounds)
        .overrides(draft.overrides)
        .pullTests(draft.pullTests)
        .foliage(old.foliage().withPads(draft.pads));
  }

  /** Writes down how a segment joins where the order of the file would now say otherwise. */
  private boolean keepJoints(Skeleton skeleton) {
    boolean changed = false;
    for (int i = 0; i < skeleton.size(); i++) {
      SegmentDraft segment = draft.segments.get(i);
      Joint wanted = segment.joint;
      if (wanted != null && skeleton.parent(i) != Skeleton.NONE && skeleton.joint(i) != wanted) {
        segment.joins = Optional.of(wanted);
        changed = true;
      }
    }
    return changed;
  }
}
