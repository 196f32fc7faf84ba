// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.species.Species;
import boughwright.physics.trial.Range;
import boughwright.physics.trial.Risk;
import boughwright.physics.trial.TipPull;
import boughwright.physics.trial.TrialResult;
import boughwright.physics.trial.Verdict;
import boughwright.physics.trial.WireChoice;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a plain branch gave.
 *
 * @param pull the pull at its tip, the best guess
 * @param species the wood the numbers come from
 * @param held the same movement held, with its risk; empty where none was asked for or no pose
 *     holds
 * @param wire wire that would hold it; empty where no pose holds
 * @param celsius temperature of the wood, if said [°C]
 */
record BranchAnswer(
    TipPull pull,
    Species species,
    Optional<TrialResult> held,
    Optional<WireChoice> wire,
    OptionalDouble celsius) {

  static BranchAnswer of(TipPull pull, Species species, TrialRun run) {
    boolean judged = run.trying().draws().isPresent() && pull.trial().outcome().holds();
    return new BranchAnswer(
        pull,
        species,
        judged ? Optional.of(run.of(pull.held(species), "the branch")) : Optional.empty(),
        pull.trial().outcome().holds()
            ? WireChoice.of(pull.byHand(species)).stream().findFirst()
            : Optional.empty(),
        run.said().celsius());
  }

  Optional<Risk> risk() {
    return held.flatMap(TrialResult::risk);
  }

  Optional<Verdict> verdict() {
    return held.flatMap(TrialResult::verdict);
  }

  /** The pull as far as it is known [N]. */
  Optional<Range> force() {
    return risk().flatMap(risk -> Optional.ofNullable(risk.tensions().get(TipPull.LINE)));
  }
}
