// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.file.TreeFile;
import boughwright.modeller.plan.Plan;
import boughwright.physics.apex.ApexOption;
import boughwright.physics.apex.ApexRequest;
import boughwright.physics.apex.Apexes;
import boughwright.physics.stage.Course;
import boughwright.physics.trial.Hardware;
import boughwright.physics.trial.TrialResult;
import java.util.Optional;

/**
 * What could become the top.
 *
 * @param file the tree
 * @param request what was asked
 * @param apexes what was found
 * @param told the choice that is told in full, where one was asked for
 * @param picture the picture that was written
 * @param kept the plan it was written into
 */
record ApexAnswer(
    TreeFile file,
    ApexRequest request,
    Apexes apexes,
    Optional<Told> told,
    Optional<String> picture,
    Optional<Plan> kept) {

  /**
   * A choice told in full.
   *
   * @param number its number, counted from 1
   * @param option the leader, its bend drawn as often as asked
   * @param trial what the wood does under its plan
   * @param hardware how the tackle bears it
   * @param course its stages, where it is bent and they were asked for
   */
  record Told(
      int number,
      ApexOption option,
      TrialResult trial,
      Hardware hardware,
      Optional<Course> course) {}

  ApexAnswer kept(Optional<String> written, Optional<Plan> plan) {
    return new ApexAnswer(file, request, apexes, told, written, plan);
  }
}
