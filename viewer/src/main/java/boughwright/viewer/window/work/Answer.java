// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.work;

import boughwright.modeller.plan.Plan;
import boughwright.modeller.tree.Tree;
import boughwright.physics.stage.Course;
import boughwright.physics.trial.TrialResult;
import java.util.Objects;
import java.util.Optional;

/**
 * What is known of a plan so far.
 *
 * @param tree the tree it was tried on
 * @param plan the plan that was tried, with all its proposals
 * @param trial what the wood does; with its risk once that is drawn
 * @param course what becomes of it over time, once that is computed
 */
public record Answer(Tree tree, Plan plan, TrialResult trial, Optional<Course> course) {
  public Answer {
    Objects.requireNonNull(tree, "tree");
    Objects.requireNonNull(plan, "plan");
    Objects.requireNonNull(trial, "trial");
    Objects.requireNonNull(course, "course");
  }

  /** Whether the risk is drawn, or there is none to draw. */
  public boolean isJudged() {
    return trial.risk().isPresent() || !trial.outcome().holds();
  }
}
