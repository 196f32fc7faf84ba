// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.species.Species;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.wood.SegmentWood;
import boughwright.physics.wood.WoodPrior;
import java.util.Comparator;
import java.util.Optional;

/**
 * How hard a pull test worked the wood, at the stiffness it gave.
 *
 * @param peak the place bent hardest under the greatest pull
 * @param yieldStrain compression strain from which fibres flow there; infinite for wood without
 *     limits [1]
 * @param crackStrain tension strain that one branch in twenty does not bear there; infinite
 *     likewise [1]
 * @param gentlest pull up to which the wood stays springy, straight from the test [N]
 */
public record PullStrain(Peak peak, double yieldStrain, double crackStrain, double gentlest) {
  /** What a test should use of the yield strain: yield strains vary by a quarter [1]. */
  private static final double SAFE_PART = 0.7;

  static PullStrain of(Skeleton skeleton, Species species, PullUpdate update, int n) {
    PullPoint point = update.points().get(n);
    double force =
        point.test().readings().stream().mapToDouble(read -> read.force()).max().orElseThrow();
    Peak peak =
        point.readings().stream()
            .map(PullPoint.Reading::peak)
            .max(Comparator.comparingDouble(Peak::bendingStrain))
            .orElseThrow();
    int i = skeleton.indexOf(peak.segment());
    SegmentWood wood = update.wood().segments().get(i);
    if (wood.isElastic()) {
      double none = Double.POSITIVE_INFINITY;
      return new PullStrain(peak, none, none, none);
    }
    WoodPrior prior = WoodPrior.of(species);
    WoodState state = new WoodState(skeleton, new Limbs(skeleton), prior);
    double bark = skeleton.segment(i).bark().orElse(skeleton.tree().bark().orElse(0));
    double crack = state.crackStrain(i, wood, skeleton.caliper(i, peak.along()) / 2 - bark);
    return new PullStrain(
        peak,
        wood.yieldStrain(),
        LimitSampler.range(crack, prior.crack()).low(),
        SAFE_PART * force * wood.yieldStrain() / peak.compressionStrain());
  }

  /** True if fibres on the inside flowed. */
  public boolean flowed() {
    return peak.compressionStrain() > yieldStrain;
  }

  /** True if one branch in twenty, or more, would have cracked. */
  public boolean endangered() {
    return peak.tensionStrain() > crackStrain;
  }

  /** The pull up to which the wood stays springy; empty for wood without limits [N]. */
  public Optional<Double> gentle() {
    return Double.isInfinite(gentlest) ? Optional.empty() : Optional.of(gentlest);
  }
}
