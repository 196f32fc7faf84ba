// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.physics.rod.RodOptions;
import boughwright.physics.trial.CoilHold;
import boughwright.physics.trial.RiskOptions;
import boughwright.physics.trial.RiskTrial;
import boughwright.physics.trial.TrialRequest;
import java.util.Optional;

/**
 * Eases a bend with a coil until its drawn risk is allowed, and asks whether its wire stands it.
 */
final class HeldWithin {
  /** Draws for one look, as many as reaching makes when nothing is said. */
  private static final RiskOptions DRAWS = new RiskOptions(500, 1, part -> {});

  /** Eased to this part of what is allowed, so that few looks are needed [1] (a choice). */
  private static final double EASED_TO = 0.95;

  private static final int EASINGS = 3;

  private final ReachRequest request;

  HeldWithin(ReachRequest request) {
    this.request = request;
  }

  /**
   * The choice, eased as far as the risk asks; empty where its wire does not stand what is left.
   */
  Optional<Choice> soundly(Choice choice) {
    Choice one = choice;
    for (int n = 0; n <= EASINGS; n++) {
      double risk = risk(one);
      if (risk <= request.wishes().mostRisk()) {
        return isHeld(one) ? Optional.of(one) : Optional.empty();
      }
      double part = EASED_TO * request.wishes().mostRisk() / risk;
      Optional<Choice> eased = Reach.eased(request, one, part * one.risk().breaking());
      if (eased.isEmpty()) {
        return Optional.empty();
      }
      one = eased.get();
    }
    return Optional.empty();
  }

  private double risk(Choice one) {
    return RiskTrial.run(trial(one), DRAWS).risk().map(risk -> risk.breaking().p()).orElse(0.0);
  }

  private boolean isHeld(Choice one) {
    return CoilHold.of(trial(one)).stream()
        .filter(hold -> hold.proposal().equals(one.proposal().id()))
        .anyMatch(CoilHold::holds);
  }

  private TrialRequest trial(Choice one) {
    return new TrialRequest(
        request.tree(), one.plan(), one.plan().proposals(), request.species(), RodOptions.DEFAULT);
  }
}
