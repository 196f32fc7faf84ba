// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.TreeRules;
import java.util.Optional;

/** Makes a document of a draft, or says why it is none. */
final class Finish {
  private final Draft draft;

  Finish(Draft draft) {
    this.draft = draft;
  }

  Document document() throws InputException {
    Tree old = draft.before.tree();
    Judging.require("", TreeRules.findings(draft.built(), draft.wounds, old.bark()));
    Judging.require("", TreeRules.woodFindings(draft.ids(), draft.overrides));
    Skeleton skeleton = new Skeleton(tree());
    if (keepJoints(skeleton)) {
      skeleton = new Skeleton(tree());
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

  private Tree tree() {
    TreeDraft tree = new TreeDraft(draft.before.tree());
    tree.segments = draft.built();
    tree.wounds = draft.wounds;
    tree.overrides = draft.overrides;
    tree.pullTests = draft.pullTests;
    tree.foliage = tree.foliage.withPads(draft.pads);
    return tree.build();
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
