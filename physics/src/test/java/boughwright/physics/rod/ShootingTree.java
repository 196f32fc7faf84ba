// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import boughwright.modeller.geometry.Vector3;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;

/**
 * Kirchhoff's equations of inextensible, unshearable rods as a boundary value problem, solved by
 * shooting: p' = d3, R' = R skew(u), n' = -w, m' = -d3 x n, u = u0 + (m1/EI, m2/EI, m3/GJ), with
 * the integrator and the linear solver of Hipparchus. Shares nothing with the solver under test.
 *
 * <p>Antman, Nonlinear Problems of Elasticity, 2nd ed. 2005, chapter 8 (from memory).
 *
 * <p>Unknown are force and moment at the start of every limb and the force of every line; they must
 * vanish beyond the tip of every limb, and the lines must have their tension or length.
 */
final class ShootingTree {
  private static final double SETTLED = 1e-10;
  private static final double PERTURBATION = 1e-6;

  /** Largest change of a scaled unknown in one iteration; farther, the limbs coil up. */
  private static final double LONGEST_STEP = 0.2;

  /** Curvature of the stress-free shape [rad/m, section frame]. */
  interface RestCurvature {
    Vector3 at(int limb, double s);
  }

  private final RodCase rods;
  private final ShootingRun.Problem problem;
  private final int limbs;
  private final ShootingRun.Scale scale;

  ShootingTree(RodCase rods) {
    this(rods, (limb, s) -> rods.limbs().get(limb).curvature());
  }

  ShootingTree(RodCase rods, RestCurvature curvature) {
    this.rods = rods;
    limbs = rods.limbs().size();
    double force = 1e-30;
    for (RodCase.Pull pull : rods.pulls()) {
      force += pull.force().norm();
    }
    for (RodCase.Tie tie : rods.ties()) {
      force += tie.tension();
    }
    double length = 0;
    for (RodCase.Limb limb : rods.limbs()) {
      length += limb.length();
    }
    for (RodCase.Spread spread : rods.spreads()) {
      double l = rods.limbs().get(spread.limb()).length();
      force += spread.pull().norm() * Math.abs(spread.at(l / 2)) * l;
    }
    scale = new ShootingRun.Scale(force, length);
    problem = new ShootingRun.Problem(rods, curvature, scale);
  }

  /** Continues from the unloaded state in even steps of load. */
  ShootingPose solve(int steps) {
    double[] x = new double[6 * limbs + 3 * rods.ties().size()];
    for (int i = 1; i <= steps; i++) {
      x = newton(x, (double) i / steps, false);
    }
    return polish(x);
  }

  /** Goes to the solution nearest to a guess, under full loads. */
  ShootingPose polish(double[] guess) {
    return run(newton(guess, 1, true), 1, true, true).pose;
  }

  private double[] newton(double[] start, double part, boolean byLength) {
    double[] x = start.clone();
    int size = x.length;
    for (int iteration = 0; iteration < 40; iteration++) {
      double[] residual = run(x, part, byLength, false).residual;
      double[][] jacobian = new double[size][size];
      for (int j = 0; j < size; j++) {
        double[] moved = x.clone();
        double h = PERTURBATION * size(j);
        moved[j] += h;
        double[] other = run(moved, part, byLength, false).residual;
        for (int i = 0; i < size; i++) {
          jacobian[i][j] = (other[i] - residual[i]) / h * size(j);
        }
      }
      double[] step =
          new QRDecomposition(new Array2DRowRealMatrix(jacobian))
              .getSolver()
              .solve(new ArrayRealVector(residual))
              .toArray();
      double largest = new ArrayRealVector(step).getLInfNorm();
      double factor = Math.min(1, LONGEST_STEP / largest);
      for (int j = 0; j < size; j++) {
        x[j] -= factor * step[j] * size(j);
      }
      if (largest < SETTLED) {
        return x;
      }
    }
    throw new IllegalStateException("shooting does not settle at part " + part);
  }

  private double size(int unknown) {
    boolean moment = unknown < 6 * limbs && unknown % 6 >= 3;
    return moment ? scale.force() * scale.length() : scale.force();
  }

  private ShootingRun run(double[] x, double part, boolean byLength, boolean keep) {
    ShootingRun run = new ShootingRun(problem, x, keep);
    run.through(part, byLength);
    return run;
  }
}
