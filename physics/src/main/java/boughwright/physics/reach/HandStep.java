// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.physics.trial.TreeStand;
import java.util.Optional;
import java.util.function.Consumer;
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
  /** Trials for one place of the hand: as many as fit between two pictures. */
  private static final int TRIALS = 4;

  /** After a step that leads no nearer one this part as long is tried (a choice) [1]. */
  private static final double SHORTER = 0.25;

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

  /**
   * The force for a target from that of another, as near as a few trials come; empty where none of
   * them comes nearer, so that the slopes are of no use.
   */
  Optional<Trial> followed(Aim target, Trial from) {
    Trial best = from;
    double longest = Double.POSITIVE_INFINITY;
    boolean nearer = false;
    for (int n = 0; n < TRIALS; n++) {
      double[] step = step(target, best);
      double moves = Fit.norm(slopes.operate(step));
      if (moves < SETTLED) {
        return Optional.of(best);
      }
      double part = Math.min(1, longest / moves);
      Optional<Trial> there = trials.apply(stepped(best.force(), step, part));
      there.ifPresent(learned(step, part, best));
      if (there.isPresent() && cost(target, there.get()) < cost(target, best)) {
        best = there.get();
        nearer = true;
      } else {
        longest = SHORTER * part * moves;
      }
    }
    return nearer ? Optional.of(best) : Optional.empty();
  }

  private static double[] stepped(double[] force, double[] step, double part) {
    double[] next = force.clone();
    for (int k = 0; k < 3; k++) {
      next[k] += part * step[k];
    }
    return next;
  }

  private Consumer<Trial> learned(double[] step, double part, Trial from) {
    double[] taken = stepped(new double[3], step, part);
    return there -> learn(taken, there.at().minus(from.at()));
  }

  private double cost(Aim target, Trial trial) {
    double pull = weight * Fit.norm(trial.force());
    double miss = target.miss(trial.at());
    return miss * miss + pull * pull;
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
