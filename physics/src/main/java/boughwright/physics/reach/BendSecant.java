// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.geometry.Vector3;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.DiagonalMatrix;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularValueDecomposition;

/**
 * Finds how far and which way a hand must go so that what it lets go of rests nearest to the
 * target, in few trials: slopes are those of the bare limb, corrected after each trial (C. G.
 * Broyden, Mathematics of Computation 19, 1965). Ways in which the limb hardly gives are left
 * alone.
 */
final class BendSecant {
  /** Trials at most. */
  private static final int TRIALS = 8;

  /** A step shorter than this is not worth a trial [m]. */
  private static final double ENOUGH = 5e-5;

  /** Singular values below this part of the largest count as none [1]. */
  private static final double RANK = 0.1;

  /** The longest step, over the first bend [1]. */
  private static final double LONGEST = 0.7;

  private final RealMatrix slope;
  private final RealVector atRest;
  private RealMatrix now;
  private RealVector from = new ArrayRealVector(3);
  private RealVector missing;
  private RealVector best;
  private double least = Double.POSITIVE_INFINITY;

  /**
   * For one place.
   *
   * @param wish the pull it would need on the bare limb
   * @param atRest what is missing before anything is bent [m]
   */
  BendSecant(Wish wish, double[] atRest) {
    slope = wish.slope().multiply(inverse(wish.move()));
    this.atRest = new ArrayRealVector(atRest);
  }

  /**
   * The bend that leaves the least missing of those tried.
   *
   * @param rests what is missing once a bend is let go [m]; empty where no pose holds
   * @param first the bend of the bare limb that comes nearest while it is held [m]
   */
  Optional<Vector3> least(Function<Vector3, Optional<double[]>> rests, Vector3 first) {
    now = slope;
    missing = atRest;
    RealVector x = Wish.vector(first);
    for (int n = 0; n < TRIALS; n++) {
      Optional<double[]> found = rests.apply(vector(x));
      if (found.isEmpty()) {
        x = x.add(from).mapMultiply(0.5);
        continue;
      }
      learn(x, new ArrayRealVector(found.get()));
      RealVector step = inverse(now).operate(missing).mapMultiply(-1);
      double part = Math.min(1, LONGEST * first.norm() / step.getNorm());
      if (step.getNorm() < ENOUGH) {
        break;
      }
      x = x.add(step.mapMultiply(part));
    }
    return Optional.ofNullable(best).map(BendSecant::vector);
  }

  private void learn(RealVector x, RealVector found) {
    RealVector dx = x.subtract(from);
    double square = dx.dotProduct(dx);
    if (square > 0) {
      RealVector wrong = found.subtract(missing).subtract(now.operate(dx));
      now = now.add(wrong.outerProduct(dx).scalarMultiply(1 / square));
    }
    from = x;
    missing = found;
    if (found.getNorm() < least) {
      least = found.getNorm();
      best = x;
    }
  }

  private static RealMatrix inverse(RealMatrix matrix) {
    SingularValueDecomposition parts = new SingularValueDecomposition(matrix);
    double[] values = parts.getSingularValues();
    double[] inverse = new double[values.length];
    for (int k = 0; k < values.length; k++) {
      inverse[k] = values[k] > RANK * values[0] ? 1 / values[k] : 0;
    }
    return parts.getV().multiply(new DiagonalMatrix(inverse)).multiply(parts.getUT());
  }

  private static Vector3 vector(RealVector x) {
    return new Vector3(x.getEntry(0), x.getEntry(1), x.getEntry(2));
  }
}
