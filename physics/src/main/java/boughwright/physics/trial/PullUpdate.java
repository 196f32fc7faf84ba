// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.species.Species;
import boughwright.modeller.tree.PullTest;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;
import java.util.ArrayList;
import java.util.List;

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
  private double widening;

  /**
   * @param tree the tree before its tests told anything, with its tests
   * @param species values for its wood
   * @throws IllegalArgumentException if a test pulls where the tree is held, or along the branch
   */
  PullUpdate(Tree tree, Species species) {
    skeleton = new Skeleton(tree);
    unknowns = new PullUnknowns(skeleton, species);
    tests = tree.pullTests();
    z = new double[unknowns.size()];
    look();
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
    double low = 0;
    if (worst() <= OUTLIER) {
      return;
    }
    double high = 1;
    while (worstWith(high) > Readings.NINE_IN_TEN) {
      high *= 2;
    }
    for (int n = 0; n < 40; n++) {
      double middle = (low + high) / 2;
      if (worstWith(middle) > Readings.NINE_IN_TEN) {
        low = middle;
      } else {
        high = middle;
      }
    }
    widening = high;
  }

  private double worstWith(double extra) {
    widening = extra;
    double worst = worst();
    widening = 0;
    return worst;
  }

  private double worst() {
    double worst = 0;
    for (int n = 0; n < tests.size() && tests.size() > 1; n++) {
      worst = Math.max(worst, Math.abs(againstOthers(n)));
    }
    return worst;
  }

  private NormalUpdate all() {
    return only(n -> true);
  }

  private NormalUpdate only(java.util.function.IntPredicate chosen) {
    List<Integer> kept = new ArrayList<>();
    for (int n = 0; n < tests.size(); n++) {
      if (chosen.test(n)) {
        kept.add(n);
      }
    }
    double[][] j = kept.stream().map(n -> rows[n]).toArray(double[][]::new);
    double[] y = kept.stream().mapToDouble(n -> seen[n]).toArray();
    double[] v = kept.stream().mapToDouble(n -> noise[n] + widening).toArray();
    return new NormalUpdate(j, y, v);
  }

  /** How far a test lies from what was expected before any test, in standard deviations [1]. */
  double againstPrior(int n) {
    return seen[n] / spreadBefore(n);
  }

  /** Standard deviation of ln of the movement expected before any test [1]. */
  double spreadBefore(int n) {
    return Math.sqrt(PullUnknowns.sum(rows[n], rows[n]) + noise[n]);
  }

  /** ln of the movement seen over the one expected before any test [1]. */
  double lnSeenOverExpected(int n) {
    return seen[n];
  }

  /** How far a test lies from what the other tests lead to expect, in standard deviations [1]. */
  double againstOthers(int n) {
    NormalUpdate others = only(other -> other != n);
    return (seen[n] - others.mean(rows[n]))
        / Math.sqrt(others.variance(rows[n]) + noise[n] + widening);
  }

  /** ln of the movement seen over the one that the other tests lead to expect [1]. */
  double lnSeenOverOthers(int n) {
    return seen[n] - only(other -> other != n).mean(rows[n]);
  }

  /** The tests at the most likely point. */
  List<PullPoint> points() {
    return points;
  }

  /** The most likely point. */
  TrialWood wood() {
    return unknowns.at(z);
  }

  /** What the tests say, made linear at the most likely point and believed as far as they agree. */
  List<PullObservation> observations() {
    return points.stream().map(PullPoint::observation).map(this::widened).toList();
  }

  private PullObservation widened(PullObservation one) {
    return new PullObservation(
        one.test(),
        one.residual(),
        one.byLnMoe(),
        one.byStartReading(),
        one.byEndReading(),
        one.noiseVariance() + widening);
  }

  /** Modulus of a segment before any test [Pa]. */
  MoeBelief before(int segment) {
    double[] weights = unknowns.lnMoe(segment);
    return new MoeBelief(unknowns.bestMoe(segment), Math.sqrt(PullUnknowns.sum(weights, weights)));
  }

  /** Modulus of a segment after all tests [Pa]. */
  MoeBelief after(int segment) {
    double[] weights = unknowns.lnMoe(segment);
    NormalUpdate all = all();
    return new MoeBelief(
        unknowns.bestMoe(segment) * Math.exp(all.mean(weights)), Math.sqrt(all.variance(weights)));
  }

  /** Spread of ln of the force for a given movement there, before any test [1]. */
  double stiffnessBefore(int n) {
    return Math.sqrt(PullUnknowns.sum(rows[n], rows[n]));
  }

  /** The same after all tests [1]. */
  double stiffnessAfter(int n) {
    return Math.sqrt(all().variance(rows[n]));
  }
}
