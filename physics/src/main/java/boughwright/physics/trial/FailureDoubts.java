// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.physics.wood.Doubt;
import boughwright.physics.wood.WoodPrior;

/** How well each limit is known when the wood is. */
final class FailureDoubts {
  /** Step of the crack strain over which the change of the breaking moment is taken [1]. */
  private static final double STEP = 1.1;

  private final TreeRods rods;
  private final WoodState state;

  FailureDoubts(TreeRods rods, WoodState state) {
    this.rods = rods;
    this.state = state;
  }

  /**
   * The doubt about a limit.
   *
   * @param mode the way of failing
   * @param near the place that is nearest to it, or none
   */
  Doubt of(FailureMode mode, Nearest near) {
    WoodPrior prior = state.prior();
    return switch (mode) {
      case CRACK -> prior.crack();
      case KINK -> prior.kink();
      case SPLIT -> prior.across();
      case SHEAR -> prior.shear();
      case TEAR -> tear(near);
    };
  }

  /** A union's own doubt, and the limb's crack strain as far as it decides the limb's moment. */
  private Doubt tear(Nearest near) {
    boolean included =
        near.exists() && state.features(rods.run(near.span()).piece().segment()).includedBark();
    double power = near.exists() ? momentPower(near) : 1;
    Doubt crack = state.prior().crack();
    return WoodPrior.unionDoubt(included)
        .with(new Doubt(power * crack.unknown(), power * crack.varies()));
  }

  /** Change of ln of the limb's breaking moment with ln of its crack strain [1]. */
  private double momentPower(Nearest near) {
    TreeRods.Run run = rods.run(near.span());
    int i = run.piece().segment();
    Timber timber = rods.timber();
    double radius = timber.woodRadius(i, run.toSegment(near.s()));
    double strain = state.prior().crackStrain(2 * radius);
    return Math.log(
            WoodState.momentAtTension(timber.wood(i), radius, STEP * strain)
                / WoodState.momentAtTension(timber.wood(i), radius, strain))
        / Math.log(STEP);
  }
}
