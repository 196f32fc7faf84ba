// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.file.TreeFile;
import boughwright.modeller.plan.Document;
import boughwright.physics.stage.Course;
import boughwright.physics.trial.HeldBy;
import boughwright.physics.trial.LetGo;
import boughwright.physics.trial.Said;
import boughwright.physics.trial.TrialResult;
import boughwright.viewer.scene.Mark;
import boughwright.viewer.scene.Scene;
import java.util.List;
import java.util.Optional;

/**
 * What a bend gave.
 *
 * @param file the tree it was tried on
 * @param tried plans in the order they were tried
 * @param picture the picture that was written
 * @param said the day of the first pull, and what was said of it
 * @param details whether the person wants to read everything
 */
record BendAnswer(
    TreeFile file, List<Tried> tried, Optional<String> picture, Said said, boolean details) {
  BendAnswer {
    tried = List.copyOf(tried);
  }

  /**
   * One plan that was tried.
   *
   * @param choice the plan and its proposals
   * @param trial what the wood does
   * @param apex where the apex comes to stand, if the plan names one and the pose holds
   * @param letGo what stays of the bend when it is let go at once, if that was looked at
   * @param means by what it is made and held
   * @param course what becomes of it over time, where that was asked for
   */
  record Tried(
      PlanChoice choice,
      TrialResult trial,
      Optional<Mark.Apex> apex,
      Optional<LetGo> letGo,
      HeldBy means,
      Optional<Course> course) {
    static Tried of(Document document, PlanChoice choice, TrialResult trial) {
      boolean asked = choice.plan().apex().isPresent() && trial.outcome().holds();
      Optional<Mark.Apex> apex =
          asked
              ? Mark.apex(
                  Scene.of(document, Optional.of(choice.plan()), Optional.of(trial)).marks())
              : Optional.empty();
      return new Tried(choice, trial, apex, Optional.empty(), HeldBy.NOTHING, Optional.empty());
    }

    Tried with(Optional<LetGo> looked, HeldBy by, Optional<Course> over) {
      return new Tried(choice, trial, apex, looked, by, over);
    }
  }
}
