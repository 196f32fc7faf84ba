// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.tree.Skeleton;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;

/**
 * What a pose risks, from its margins alone: for comparing many poses of one tree, each held by
 * lengths, whose strains hardly change with the wood. The chance that the worst place of a limb
 * fails in one way is that of a normal variable: ln (demand over limit), less what the evidence
 * says of the limit, over the spread of the limit. Limbs and ways of breaking are joined as if each
 * drew its own luck, which is never too low. {@link RiskTrial} has the risk that is told.
 */
final class QuickRisk {
  /** Draws of the beliefs, without any trial, for the middle and the spread of limits. */
  private static final int DRAWS = 400;

  private static final long SEED = 1;

  private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

  private final WoodState state;

  /** Standard deviation of a caliper reading [m]. */
  private final double readings;

  /** Of each limb: change of ln (limit over modulus), and of ln yield strain, from the median. */
  private final SummaryStatistics[] limit;

  private final SummaryStatistics[] yield;

  /** For all trials on the tree of a request, whatever its proposals. */
  QuickRisk(TrialRequest request, TreeRods rods) {
    Skeleton skeleton = rods.timber().skeleton();
    List<PullObservation> tests =
        PullObservations.agreed(
            request.tree(), request.species(), TrialWood.best(skeleton, request.species()));
    Beliefs beliefs = new Beliefs(request, skeleton, tests);
    state = new WoodState(skeleton, beliefs.limbs(), beliefs.prior());
    readings = beliefs.readings().deviation();
    limit = new SummaryStatistics[beliefs.limbs().count()];
    yield = new SummaryStatistics[beliefs.limbs().count()];
    Arrays.setAll(limit, limb -> new SummaryStatistics());
    Arrays.setAll(yield, limb -> new SummaryStatistics());
    draw(beliefs);
  }

  private void draw(Beliefs beliefs) {
    RandomGenerator random = new Well19937c(SEED);
    int seen = beliefs.evidence().count();
    for (int n = 0; n < DRAWS; n++) {
      double[] shared = normals(random, Beliefs.SHARED);
      beliefs
          .evidence()
          .correctShared(shared, normals(random, beliefs.ownCount()), normals(random, seen));
      double[] own = normals(random, beliefs.ownCount());
      beliefs.evidence().correctOwn(own, shared, normals(random, seen));
      double[] shift = beliefs.limitShift(shared, own);
      for (int limb = 0; limb < shift.length; limb++) {
        limit[limb].addValue(shift[limb]);
        yield[limb].addValue(beliefs.limbDeviation(shared, own, limb)[1]);
      }
    }
  }

  private static double[] normals(RandomGenerator random, int count) {
    double[] values = new double[count];
    Arrays.setAll(values, k -> random.nextGaussian());
    return values;
  }

  /** The guess for a pose that holds. */
  RiskGuess of(Attempt attempt) {
    Nearest[][] nearest = FailureScan.of(attempt.rods(), attempt.solution().pose(), state);
    double spared = 1;
    double kink = 0;
    for (FailureMode mode : FailureMode.values()) {
      double unharmed = 1;
      for (int limb = 0; limb < nearest[mode.ordinal()].length; limb++) {
        Nearest near = nearest[mode.ordinal()][limb];
        unharmed *= near.exists() ? 1 - fails(mode, limb, near, attempt.rods()) : 1;
      }
      if (mode == FailureMode.KINK) {
        kink = 1 - unharmed;
      } else {
        spared *= unharmed;
      }
    }
    return new RiskGuess(1 - spared, kink);
  }

  /**
   * Spread of ln strain from calipers misread there: under one moment the strain goes with the
   * third power of the diameter, and readings at both ends of a segment share in it.
   */
  private double misread(TreeRods of, Nearest near) {
    TreeRods.Run run = of.run(near.span());
    double diameter = 2 * of.timber().woodRadius(run.piece().segment(), run.toSegment(near.s()));
    return 3 * readings / Math.sqrt(2) / diameter;
  }

  private double fails(FailureMode mode, int limb, Nearest near, TreeRods rods) {
    FailureDoubts doubts = new FailureDoubts(rods, state);
    SummaryStatistics shift = mode == FailureMode.KINK ? yield[limb] : limit[limb];
    double spread =
        Math.hypot(
            Math.hypot(doubts.of(mode, near).total(), shift.getStandardDeviation()),
            misread(rods, near));
    return NORMAL.cumulativeProbability((near.margin() - shift.getMean()) / spread);
  }
}
