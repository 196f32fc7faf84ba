// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.design.review.AdvisedCut;
import boughwright.modeller.design.review.Review;
import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.file.TreeFile;
import boughwright.modeller.plan.Plan;
import boughwright.physics.grow.CutTime;
import boughwright.physics.grow.WoundClosure;
import boughwright.physics.grow.YearlyRing;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What a review found, with what only physics knows of it.
 *
 * @param file the tree
 * @param plan the plan that was judged; empty for the tree as measured
 * @param front how the tree stands before the viewer; empty where no front is chosen
 * @param review what was found
 * @param ring how fast the tree thickens
 * @param kept what was written
 */
record ReviewAnswer(
    TreeFile file,
    Optional<Plan> plan,
    Optional<FrontPose> front,
    Review review,
    YearlyRing ring,
    Kept kept) {
  ReviewAnswer {
    Objects.requireNonNull(file, "file");
    Objects.requireNonNull(plan, "plan");
    Objects.requireNonNull(front, "front");
    Objects.requireNonNull(review, "review");
    Objects.requireNonNull(ring, "ring");
    Objects.requireNonNull(kept, "kept");
  }

  /**
   * What was written.
   *
   * @param picture the file of the picture
   * @param plan the plan the cuts went into
   * @param removed numbers of the faults whose cuts those are
   */
  record Kept(Optional<String> picture, Optional<Plan> plan, List<Integer> removed) {
    Kept {
      removed = List.copyOf(removed);
    }
  }

  /** How long the wound of a cut takes to close, whenever in the year it is made. */
  WoundClosure closure(AdvisedCut cut) {
    return WoundClosure.of(cut.width(), ring, CutTime.UNSAID);
  }
}
