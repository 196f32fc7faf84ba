// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.physics.wood.Doubt;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;

/**
 * The probability of one way of failing from the margins of all draws.
 *
 * <p>Limits do not change the pose, so their doubt is not drawn but integrated: what varies from
 * limb to limb in closed form, what is not known of species and tree at the middles of strata of
 * equal weight. Each pair of a guess of the wood and a stratum is one state of what is not known;
 * the probability is the mean over all states, its interval holds the middle nine tenths of them.
 */
final class FailureOdds {
  private static final int STRATA = 40;
  private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

  /** Margins further than this many standard deviations from failing count as none [1]. */
  private static final double FAR = 8;

  private final FailureMode mode;
  private final Doubt doubt;

  FailureOdds(FailureMode mode, Doubt doubt) {
    this.mode = mode;
    this.doubt = doubt;
  }

  /** The probability over all draws. */
  Probability of(List<Draws> all) {
    List<double[]> states = new ArrayList<>();
    for (Draws draws : all) {
      if (mode == FailureMode.CRACK || draws.margins().length > 0) {
        states.add(ofStates(draws));
      }
    }
    double[] flat = states.stream().flatMapToDouble(Arrays::stream).toArray();
    if (flat.length == 0) {
      return new Probability(0, 0, 0);
    }
    double mean = Arrays.stream(flat).sum() / flat.length;
    Percentile percentile = new Percentile().withEstimationType(Percentile.EstimationType.R_5);
    percentile.setData(flat);
    double low = percentile.evaluate(5);
    double high = percentile.evaluate(95);
    return new Probability(mean, Math.min(low, high), high);
  }

  private double[] ofStates(Draws draws) {
    double[] states = new double[STRATA];
    for (int k = 0; k < STRATA; k++) {
      double shift = doubt.unknown() * NORMAL.inverseCumulativeProbability((k + 0.5) / STRATA);
      double sum = 0;
      for (double[][] draw : draws.margins()) {
        sum += anyLimb(draw[mode.ordinal()], shift);
      }
      states[k] =
          mode == FailureMode.CRACK
              ? (sum + draws.fallen()) / draws.count()
              : sum / draws.margins().length;
    }
    return states;
  }

  /** Probability that some limb fails, limbs being independent once the shift is known. */
  private double anyLimb(double[] margins, double shift) {
    double whole = 1;
    for (double margin : margins) {
      if (margin > Double.NEGATIVE_INFINITY) {
        whole *= 1 - fails((margin - shift) / doubt.varies());
      }
    }
    return 1 - whole;
  }

  private static double fails(double deviations) {
    if (deviations < -FAR) {
      return 0;
    }
    return deviations > FAR ? 1 : NORMAL.cumulativeProbability(deviations);
  }
}
