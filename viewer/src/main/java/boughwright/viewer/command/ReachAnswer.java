// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.file.TreeFile;
import boughwright.modeller.plan.Plan;
import boughwright.physics.reach.Choice;
import boughwright.physics.reach.Reached;
import boughwright.physics.reach.Target;
import boughwright.physics.stage.Course;
import boughwright.physics.trial.CoilHold;
import boughwright.physics.trial.Hardware;
import boughwright.physics.trial.LineTrial;
import boughwright.physics.trial.TrialResult;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What a search for lines gave.
 *
 * @param file the tree
 * @param target what was wanted
 * @param mostRisk the risk allowed [1]
 * @param start the day of the first pull
 * @param reached what was found
 * @param drawn the choices with their risk drawn, in the same order
 * @param kept what was done with one of them
 */
record ReachAnswer(
    TreeFile file,
    Target target,
    double mostRisk,
    LocalDate start,
    Reached reached,
    List<Drawn> drawn,
    Kept kept) {
  ReachAnswer {
    drawn = List.copyOf(drawn);
  }

  /**
   * A choice and its trial.
   *
   * @param choice the choice
   * @param trial its trial; with risk and verdict only of the choice that is told in full
   * @param hardware how the tackle bears it
   * @param coils what its coil holds; of the choice that is told in full
   * @param course its stages; of the choice that is told in full, where they were asked for
   */
  record Drawn(
      Choice choice,
      TrialResult trial,
      Hardware hardware,
      List<CoilHold> coils,
      Optional<Course> course) {
    Drawn {
      coils = List.copyOf(coils);
    }

    static Drawn of(Choice choice, TrialResult trial, Hardware hardware) {
      return new Drawn(choice, trial, hardware, List.of(), Optional.empty());
    }

    Drawn with(List<CoilHold> holds, Optional<Course> over) {
      return new Drawn(choice, trial, hardware, holds, over);
    }

    /** What the lines do in the end: with a coil, once the hand has let go. */
    TrialResult borne() {
      return choice.bend().map(Choice.Bend::held).orElse(trial);
    }

    /** The hardest pull of a line or a hand [N]. */
    double pull() {
      double lines = borne().lines().stream().mapToDouble(LineTrial::tension).max().orElse(0);
      return Math.max(lines, choice.bend().map(Choice.Bend::force).orElse(0.0));
    }
  }

  /**
   * What was done with a choice.
   *
   * @param choice its number, counted from 1
   * @param picture the picture that was written
   * @param plan the plan it was written into
   */
  record Kept(int choice, Optional<String> picture, Optional<Plan> plan) {}
}
