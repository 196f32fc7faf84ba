// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.physics.rod.RodOptions;
import boughwright.physics.trial.RiskOptions;
import boughwright.physics.trial.RiskTrial;
import boughwright.physics.trial.TrialRequest;
import boughwright.physics.trial.TrialResult;
import java.util.Optional;

/** Eases a bend with a coil until its drawn risk is allowed. */
final class HeldWithin implements DrawnChoice.Drawing<TrialResult> {
  /** Draws for one look, as many as reaching makes when nothing is said. */
  private static final RiskOptions DRAWS = new RiskOptions(500, 1, part -> {});

  private final ReachRequest request;

  HeldWithin(ReachRequest request) {
    this.request = request;
  }

  /** The choice, eased as far as the risk asks; empty where it cannot be eased so far. */
  Optional<Choice> allowed(Choice choice) {
    DrawnChoice<TrialResult> eased = DrawnChoice.eased(request, choice, this);
    return eased.risk() <= request.wishes().mostRisk()
        ? Optional.of(eased.choice())
        : Optional.empty();
  }

  @Override
  public TrialResult draw(Choice one, int easing) {
    return RiskTrial.run(trial(one), DRAWS);
  }

  @Override
  public double risk(TrialResult drawn) {
    return drawn.risk().map(risk -> risk.breaking().p()).orElse(0.0);
  }

  private TrialRequest trial(Choice one) {
    return new TrialRequest(
        request.tree(), one.plan(), one.plan().proposals(), request.species(), RodOptions.DEFAULT);
  }
}
