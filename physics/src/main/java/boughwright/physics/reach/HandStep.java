// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.physics.trial.TreeStand;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * From one force of a hand to the next by slopes that each trial corrects (C. G. Broyden,
 * Mathematics of Computation 19, 1965): where the slopes are good, one trial for each place the
 * hand comes to.
 */
final class HandStep {
  /** Trials before it is looked closely. */
  private static final int TRIALS = 6;

  /** A step that moves the place by less is none, while the hand moves [m]. */
  private static final double SETTLED = 1e-4;

  private final RealMatrix slopes;
  private final double weight;
  private final Function<double[], Optional<Trial>> trials;

  /**
   * A force and what came of it.
   *
   * @param force of the hand [N, tree frame]
   * @param stood the pose, which holds
   * @param at where the grabbed place is [m, tree frame]
   */
  record Trial(double[] force, TreeStand.Stood stood, Point3 at) {}

  /**
   * Steps with slopes to begin with.
   *
   * @param slopes of the place with the force, shape (place)(force) [m/N]
   * @param weight of the force beside what is missing [m/N]
   * @param trials the pose under a force; empty where none holds
   */
  HandStep(double[][] slopes, double weight, Function<double[], Optional<Trial>> trials) {
    this.slopes = MatrixUtils.createRealMatrix(slopes);
    this.weight = weight;
    this.trials = trials;
  }

  /** The force for a target from that of another; empty where that does not settle soon. */
  Optional<Trial> followed(Aim target, Trial from) {
    Trial here = from;
    double longest = Double.POSITIVE_INFINITY;
    for (int n = 0; n < TRIALS; n++) {
      double[] step = step(target, here);
      double moves = Fit.norm(slopes.operate(step));
      if (moves < SETTLED) {
        return Optional.of(here);
      }
      if (moves > longest) {
        return Optional.empty();
      }
      longest = moves;
      double[] next = here.force().clone();
      for (int k = 0; k < 3; k++) {
        next[k] += step[k];
      }
      Optional<Trial> there = trials.apply(next);
      if (there.isEmpty()) {
        return Optional.empty();
      }
      learn(step, there.get().at().minus(here.at()));
      here = there.get();
    }
    return Optional.empty();
  }

  /** The step to the least of what is missing and the weighted force, by the slopes there are. */
  private double[] step(Aim target, Trial here) {
    RealMatrix counts = across(target);
    Vector3 way = target.way(here.at());
    RealMatrix normal = counts.transpose().multiply(counts);
    double[] rhs = counts.preMultiply(new double[] {way.x(), way.y(), way.z()});
    for (int k = 0; k < 3; k++) {
      normal.addToEntry(k, k, weight * weight);
      rhs[k] -= weight * weight * here.force()[k];
    }
    return new LUDecomposition(normal, 0).getSolver().solve(new ArrayRealVector(rhs)).toArray();
  }

  private RealMatrix across(Aim target) {
    RealMatrix counts = slopes.copy();
    for (int k = 0; k < 3; k++) {
      double[] moves = slopes.getColumn(k);
      Vector3 across = target.across(new Vector3(moves[0], moves[1], moves[2]));
      counts.setColumn(k, new double[] {across.x(), across.y(), across.z()});
    }
    return counts;
  }

  private void learn(double[] step, Vector3 moved) {
    double square = Fit.norm(step) * Fit.norm(step);
    double[] foretold = slopes.operate(step);
    double[] came = {moved.x(), moved.y(), moved.z()};
    for (int i = 0; i < 3; i++) {
      for (int k = 0; k < 3; k++) {
        slopes.addToEntry(i, k, (came[i] - foretold[i]) * step[k] / square);
      }
    }
  }
}
