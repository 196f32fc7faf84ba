// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.validation;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.random.RandomGenerator;

/**
 * Draws true branches and bends them under a weight, with a rod and a section of its own.
 *
 * @param law how true sections bend
 * @param moeMedian median branch modulus over that of clear wood [1]
 * @param correlation of strength with stiffness [1]
 * @param crackFactor crack strain over strength over stiffness [1]
 */
record TruthDraw(FibreLaw law, double moeMedian, double correlation, double crackFactor) {
  private static final double GRAVITY = 9.80665;

  /** Nine caliper readings in ten within 0.3 mm; standard deviation of a reading [m]. */
  private static final double READING = 0.0003 / 1.645;

  /** What the program believes. */
  static TruthDraw asStated() {
    return new TruthDraw(new FibreLaw(1), 0.75, 0.76, 2.0);
  }

  /** Branches half as stiff as clear wood, strength loosely bound to it, crushed fibres let go. */
  static TruthDraw different() {
    return new TruthDraw(new FibreLaw(0.7), 0.5, 0.3, 2.0);
  }

  /** As stated, but cracking at 1.5 times strength over stiffness, as clear stem wood does. */
  static TruthDraw brittle() {
    return new TruthDraw(new FibreLaw(1), 0.75, 0.76, 1.5);
  }

  /** True if one branch drawn cracks under a weight on its tip [kg]. */
  boolean cracksUnder(double mass, Bench bench, RandomGenerator random) {
    BentBranch.Force force = new BentBranch.Force(0, -mass * GRAVITY);
    return cracks(bench, random, (branch, limit) -> branch.under(force, limit));
  }

  /** True if one branch drawn cracks when a line to an anchor far below is tightened [m]. */
  boolean cracksTightened(double shortening, Bench bench, RandomGenerator random) {
    double[] anchor = anchor(bench);
    return cracks(bench, random, (branch, limit) -> branch.tightened(anchor, shortening, limit));
  }

  /** Where the line of a branch is anchored [m]. */
  static double[] anchor(Bench bench) {
    return new double[] {bench.length(), -2};
  }

  private interface Bending {
    BentBranch.Bent bend(BentBranch branch, DoubleUnaryOperator limit);
  }

  private boolean cracks(Bench bench, RandomGenerator random, Bending bending) {
    Belief stated = Belief.stated(bench.wood());
    Belief truth =
        new Belief(bench.wood(), moeMedian, stated.moeBetween(), correlation, crackFactor);
    double between = random.nextGaussian();
    double within = random.nextGaussian();
    BentBranch branch =
        new BentBranch(
            law,
            truth.moe(between, within),
            truth.yield(within, random.nextGaussian()),
            bench.length(),
            (bench.start() - READING * random.nextGaussian()) / 2,
            (bench.end() - READING * random.nextGaussian()) / 2);
    double crack = truth.crack(between, within, random.nextGaussian());
    return bending.bend(branch, d -> crack * Belief.size(d)).worst() >= 1;
  }
}
