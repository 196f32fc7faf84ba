// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.species.Species;
import boughwright.modeller.tree.PullTest;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.math3.analysis.solvers.BisectionSolver;

/**
 * What the pull tests of a tree say of its wood together (Bayes): the most likely point is sought
 * by Gauss-Newton steps, and what is known there is taken as normal (Laplace; Gelman et al.,
 * Bayesian Data Analysis, chapter on modal approximations; from memory).
 */
final class PullUpdate {
  private static final int MOST_STEPS = 12;

  /** After a step this small what is left is well under a hundredth of the modulus [1]. */
  private static final double SMALL_STEP = 0.05;

  /** Longest step, so that a far start in a steep bend does not overshoot [1]. */
  private static final double LONGEST_STEP = 4;

  private static final int NOBODY = -1;

  /** A test that lies farther than this from the others is not one of them [1 sd]. */
  static final double OUTLIER = 2.6;

  private final Skeleton skeleton;
  private final PullUnknowns unknowns;
  private final List<PullTest> tests;
  private double[] z;
  private List<PullPoint> points;
  private double[][] rows;
  private double[] seen;
  private double[] noise;
  private final double[] apart;
  private final double[] overExpected;
  private double widening;

  /**
   * @param tree the tree before its tests told anything, with its tests, of which those that can
   *     tell something count
   * @param species values for its wood
   */
  PullUpdate(Tree tree, Species species) {
    skeleton = new Skeleton(tree);
    unknowns = new PullUnknowns(skeleton, species);
    z = new double[unknowns.size()];
    tests = PullObservations.telling(skeleton, unknowns.at(z));
    apart = new double[tests.size()];
    overExpected = new double[tests.size()];
    look();
    System.arraycopy(seen, 0, overExpected, 0, seen.length);
    for (int step = 0; step < MOST_STEPS; step++) {
      double[] next = all().means(unknowns.size());
      double length = stepTo(next);
      if (length < SMALL_STEP) {
        break;
      }
      look();
    }
    widen();
  }

  /** Goes towards a point, and tells how far it was in the unknown that moved most. */
  private double stepTo(double[] next) {
    double most = 0;
    for (int k = 0; k < z.length; k++) {
      most = Math.max(most, Math.abs(next[k] - z[k]));
    }
    double part = Math.min(1, LONGEST_STEP / most);
    for (int k = 0; k < z.length; k++) {
      z[k] += part * (next[k] - z[k]);
    }
    return most;
  }

  private void look() {
    TrialWood wood = unknowns.at(z);
    points = tests.stream().map(test -> new PullPoint(skeleton, test, wood)).toList();
    int count = tests.size();
    rows = new double[count][];
    seen = new double[count];
    noise = new double[count];
    for (int n = 0; n < count; n++) {
      PullObservation one = points.get(n).observation();
      rows[n] = unknowns.row(one);
      seen[n] = one.residual() + PullUnknowns.sum(rows[n], z);
      noise[n] = one.noiseVariance();
    }
  }

  /** Tests that do not agree are each believed less, until nine in ten would lie as far apart. */
  private void widen() {
    for (int n = 0; n < tests.size() && tests.size() > 1; n++) {
      apart[n] = againstOthers(n, 0);
    }
    if (worst(0) <= OUTLIER) {
      return;
    }
    double high = 1;
    while (worst(high) > Readings.NINE_IN_TEN) {
      high *= 2;
    }
    widening =
        new BisectionSolver()
            .solve(100, extra -> worst(extra) - Readings.NINE_IN_TEN, 0, high, high / 2);
  }

  private double worst(double extra) {
    double worst = 0;
    for (int n = 0; n < tests.size() && tests.size() > 1; n++) {
      worst = Math.max(worst, Math.abs(againstOthers(n, extra)));
    }
    return worst;
  }

  private double againstOthers(int n, double extra) {
    return misfit(n, without(n, extra), extra).deviations();
  }

  private PullAnswer.Misfit misfit(int n, NormalUpdate others, double extra) {
    double slope = 0;
    for (double one : points.get(n).observation().byLnMoe()) {
      slope -= one;
    }
    double over = seen[n] - others.mean(rows[n]);
    double own = points.get(n).noiseVariance(over) + extra;
    return new PullAnswer.Misfit(over / slope, Math.sqrt(others.variance(rows[n]) + own) / slope);
  }

  private NormalUpdate all() {
    return without(NOBODY, widening);
  }

  private NormalUpdate without(int one, double extra) {
    int[] kept = IntStream.range(0, tests.size()).filter(n -> n != one).toArray();
    return new NormalUpdate(
        IntStream.of(kept).mapToObj(n -> rows[n]).toArray(double[][]::new),
        IntStream.of(kept).mapToDouble(n -> seen[n]).toArray(),
        IntStream.of(kept).mapToDouble(n -> noise[n] + extra).toArray());
  }

  /**
   * Which of the tests that count one is.
   *
   * @throws IllegalArgumentException if it can tell nothing where it is
   */
  int indexOf(PullTest test) {
    int n = tests.indexOf(test);
    if (n < 0) {
      throw new IllegalArgumentException("pull test " + test.id() + " can tell nothing");
    }
    return n;
  }

  /** The tests that count, in file order. */
  List<PullTest> tests() {
    return tests;
  }

  /** The tests that can tell nothing, in file order. */
  List<PullTest> leftOut() {
    return skeleton.tree().pullTests().stream().filter(test -> !tests.contains(test)).toList();
  }

  /** Variance that every test's noise is raised by, because the tests do not agree [1]. */
  double widening() {
    return widening;
  }

  /** ln of the movement seen over the one expected before any test [1]. */
  double lnSeenOverExpected(int n) {
    return overExpected[n];
  }

  /** How a test lies to what was believed before any test. */
  PullAnswer.Misfit misfitToBelief(int n) {
    return misfit(n, new NormalUpdate(new double[0][], new double[0], new double[0]), 0);
  }

  /** How a test lies to what the other tests lead to expect; empty where there is no other. */
  Optional<PullAnswer.Misfit> misfitToOthers(int n) {
    return tests.size() > 1 ? Optional.of(misfit(n, without(n, 0), 0)) : Optional.empty();
  }

  /** How far a test lies from the others, in standard deviations; 0 where there is no other [1]. */
  double apart(int n) {
    return apart[n];
  }

  /** The tests at the most likely point. */
  List<PullPoint> points() {
    return points;
  }

  /** The most likely point. */
  TrialWood wood() {
    return unknowns.at(z);
  }

  /** Modulus of a segment before any test. */
  MoeBelief before(int segment) {
    double[] weights = unknowns.lnMoe(segment);
    return new MoeBelief(unknowns.bestMoe(segment), Math.sqrt(PullUnknowns.sum(weights, weights)));
  }

  /** Modulus of a segment after all tests. */
  MoeBelief after(int segment) {
    double[] weights = unknowns.lnMoe(segment);
    NormalUpdate all = all();
    return new MoeBelief(
        unknowns.bestMoe(segment) * Math.exp(all.mean(weights)), Math.sqrt(all.variance(weights)));
  }

  /** Spread of ln of the force for a given movement where a test pulled, before any test [1]. */
  double forceBefore(int n) {
    return Math.sqrt(PullUnknowns.sum(rows[n], rows[n]));
  }

  /** The same after all tests [1]. */
  double forceAfter(int n) {
    return Math.sqrt(all().variance(rows[n]));
  }
}
