// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.edit.PlanEdits;
import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.problem.InputException;
import boughwright.physics.stage.Course;
import boughwright.physics.trial.TrialResult;
import boughwright.viewer.command.PictureOptions.Wanted;
import boughwright.viewer.picture.PrintedPicture;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Where the choice of a search is kept.
 *
 * @param file the tree file
 * @param picture the picture of it before and after
 * @param planId the id of the plan it goes into
 */
record Keeping(Path file, Optional<Wanted> picture, Optional<String> planId) {

  /**
   * A choice.
   *
   * @param document the tree it is for
   * @param plan the choice as a plan
   * @param trial what the wood does
   * @param course its stages, where they were asked for
   */
  record Chosen(Document document, Plan plan, TrialResult trial, Optional<Course> course) {}

  /**
   * What was written.
   *
   * @param picture the name of the picture
   * @param plan the plan as it stands in the file
   */
  record Kept(Optional<String> picture, Optional<Plan> plan) {}

  /**
   * Draws the choice and puts it into the file, as far as that was asked for.
   *
   * @throws InputException if this machine cannot draw, or the file cannot be written
   */
  Kept keep(Chosen chosen, Progress progress) throws InputException {
    if (picture.isPresent()) {
      progress.now("Drawing the picture");
      PrintedPicture.beforeAfter(
              chosen.document, chosen.plan, chosen.trial, chosen.course, picture.get().pixels())
          .write(picture.get().file());
    }
    Optional<Plan> plan = planId.map(chosen.plan::under);
    if (plan.isPresent()) {
      TreeFiles.write(PlanEdits.put(plan.get()).of(chosen.document), file);
    }
    return new Kept(picture.map(Wanted::name), plan);
  }
}
