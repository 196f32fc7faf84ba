// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.plan.Proposal;
import boughwright.physics.rod.RodOptions;
import boughwright.physics.rod.RodSolution;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.apache.commons.math3.util.MathArrays;

/**
 * Draws what is not known again and again, and tries the plan under every draw. In groups: the
 * draws of a group share one guess of species and tree, so that what is not known can be told from
 * what varies. The guesses are spread evenly over each variable (a Latin hypercube).
 */
final class RiskSampler {
  /** Errors a draw may have: far below what is not known of the wood. */
  private static final double POSITION_ERROR = 1e-4;

  private static final double STRAIN_ERROR = 3e-3;

  /**
   * Draws in a group over the root of all draws: small, since what is not known scatters a
   * probability more than what varies does [1].
   */
  private static final double GROUPING = 0.2;

  private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

  private final RiskCase tried;
  private final Inputs inputs;
  private final RiskOptions options;
  private final RodOptions solving;
  private final int groups;
  private final int perGroup;
  private final double[][] guesses;
  private final double wireSpread;

  RiskSampler(RiskCase tried, Inputs inputs, RiskOptions options) {
    this.tried = tried;
    this.inputs = inputs;
    this.options = options;
    RodOptions usual = tried.request().options();
    solving =
        new RodOptions(
            usual.route(),
            Math.max(POSITION_ERROR, usual.positionError()),
            Math.max(STRAIN_ERROR, usual.tensionError()),
            Math.max(STRAIN_ERROR, usual.strainError()),
            usual.mostHalvings(),
            RodOptions.Doubt.QUICK);
    perGroup = (int) Math.max(1, Math.round(GROUPING * Math.sqrt(options.samples())));
    groups = (options.samples() + perGroup - 1) / perGroup;
    guesses = hypercube();
    wireSpread = CoilDoubt.wireSpread(tried.request().proposals());
  }

  /** Standard normals whose strata are each met once, shape (groups, shared variables). */
  private double[][] hypercube() {
    RandomGenerator random = generator(-1);
    double[][] guesses = new double[groups][Beliefs.SHARED];
    for (int k = 0; k < Beliefs.SHARED; k++) {
      int[] order = MathArrays.natural(groups);
      MathArrays.shuffle(order, random);
      for (int g = 0; g < groups; g++) {
        guesses[g][k] =
            NORMAL.inverseCumulativeProbability((order[g] + random.nextDouble()) / groups);
      }
    }
    return guesses;
  }

  private RandomGenerator generator(int group) {
    return new Well19937c(new int[] {(int) options.seed(), (int) (options.seed() >>> 32), group});
  }

  /** All draws, group by group. */
  List<Draws> run() {
    AtomicInteger done = new AtomicInteger();
    return IntStream.range(0, groups)
        .parallel()
        .mapToObj(
            group -> {
              Draws draws = group(group);
              options.progress().accept((double) done.incrementAndGet() / groups);
              return draws;
            })
        .toList();
  }

  private Draws group(int group) {
    TrialRequest request = tried.request();
    Beliefs beliefs = tried.beliefs();
    RandomGenerator random = generator(group);
    int own = beliefs.ownCount();
    int seen = beliefs.evidence().count();
    double[] shared = guesses[group].clone();
    beliefs.evidence().correctShared(shared, normals(random, own), normals(random, seen));
    List<double[][]> margins = new ArrayList<>();
    List<double[]> tensions = new ArrayList<>();
    DrawTally tally = new DrawTally(inputs.count());
    int fallen = 0;
    int wanted = Math.min(perGroup, options.samples() - group * perGroup);
    for (int n = 0; n < wanted; n++) {
      double[] drawn = normals(random, own);
      beliefs.evidence().correctOwn(drawn, shared, normals(random, seen));
      double[] placement = normals(random, inputs.placements());
      List<Proposal> moved =
          Placement.moved(request.proposals(), tried.rods().timber().cutting(), placement, 0);
      double wire = wireSpread == 0 ? 1 : Math.exp(wireSpread * random.nextGaussian());
      Windings.Made made =
          new Windings.Made(beliefs.wood(shared, drawn), new Windings.Wire(wire, false));
      Attempt attempt = Attempt.of(request.plan(), tried.rods().of(made), moved, solving);
      if (attempt.holds()) {
        double[][] found = margins(attempt, beliefs.limitShift(shared, drawn));
        margins.add(found);
        tensions.add(tensions(attempt.solution()));
        tally.note(worst(found), inputs.values(beliefs, shared, drawn, placement));
      } else {
        fallen++;
      }
    }
    return new Draws(
        margins.toArray(double[][][]::new), fallen, tensions.toArray(double[][]::new), tally);
  }

  private static double[] normals(RandomGenerator random, int count) {
    double[] values = new double[count];
    for (int k = 0; k < count; k++) {
      values[k] = random.nextGaussian();
    }
    return values;
  }

  private double[][] margins(Attempt attempt, double[] limitShift) {
    Nearest[][] found = FailureScan.of(attempt.rods(), attempt.solution().pose(), tried.state());
    double[][] margins = new double[found.length][];
    for (FailureMode mode : FailureMode.values()) {
      Nearest[] limbs = found[mode.ordinal()];
      double[] row = new double[limbs.length];
      for (int limb = 0; limb < limbs.length; limb++) {
        row[limb] = limbs[limb].margin() - (mode == FailureMode.KINK ? 0 : limitShift[limb]);
      }
      margins[mode.ordinal()] = row;
    }
    return margins;
  }

  private static double worst(double[][] margins) {
    double worst = -1e3;
    for (double margin : margins[FailureMode.CRACK.ordinal()]) {
      worst = Math.max(worst, margin);
    }
    return worst;
  }

  private static double[] tensions(RodSolution solution) {
    return solution.lines().stream().mapToDouble(RodSolution.LineState::tension).toArray();
  }
}
