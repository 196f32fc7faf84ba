// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import java.util.Optional;

/** What a bend risks when only a part of it is made, without drawing again. */
public final class PartRisk {
  private PartRisk() {}

  /**
   * The odds of any crack, split, shear or tear, all ways taken as if each drew its own luck. A
   * crack is judged on strain, whatever of the stress has crept away; shear and tearing on the
   * moments there are.
   *
   * @param full the whole bend
   * @param part a pose of the same plan that bends less
   * @return empty where the whole bend has no risk to go by
   */
  public static Optional<Probability> breaking(TrialResult full, TrialResult part) {
    return full.risk()
        .filter(risk -> full.outcome().holds())
        .map(risk -> new LighterRisk(full, risk).in(part).probability());
  }
}
