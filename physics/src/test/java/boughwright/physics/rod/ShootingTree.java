// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.ode.DenseOutputModel;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

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
  private static final double INTEGRATION = 1e-12;
  private static final double SETTLED = 1e-10;
  private static final double PERTURBATION = 1e-6;

  /** Curvature of the stress-free shape [rad/m, section frame]. */
  interface RestCurvature {
    Vector3 at(int limb, double s);
  }

  private final RodCase rods;
  private final RestCurvature curvature;
  private final int limbs;
  private final double scaleForce;
  private final double scaleLength;

  ShootingTree(RodCase rods) {
    this(rods, (limb, s) -> rods.limbs().get(limb).curvature());
  }

  ShootingTree(RodCase rods, RestCurvature curvature) {
    this.rods = rods;
    this.curvature = curvature;
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
    scaleForce = force;
    scaleLength = length;
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

  /** Largest change of a scaled unknown in one iteration; farther, the limbs coil up. */
  private static final double LONGEST_STEP = 0.2;

  private double[] newton(double[] start, double part, boolean byLength) {
    double[] x = start.clone();
    int size = x.length;
    for (int iteration = 0; iteration < 40; iteration++) {
      double[] residual = run(x, part, byLength, false).residual;
      double[][] jacobian = new double[size][size];
      for (int j = 0; j < size; j++) {
        double[] moved = x.clone();
        double h = PERTURBATION * scale(j);
        moved[j] += h;
        double[] other = run(moved, part, byLength, false).residual;
        for (int i = 0; i < size; i++) {
          jacobian[i][j] = (other[i] - residual[i]) / h * scale(j);
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
        x[j] -= factor * step[j] * scale(j);
      }
      if (largest < SETTLED) {
        return x;
      }
    }
    throw new IllegalStateException("shooting does not settle at part " + part);
  }

  private double scale(int unknown) {
    boolean moment = unknown < 6 * limbs && unknown % 6 >= 3;
    return moment ? scaleForce * scaleLength : scaleForce;
  }

  /** One integration of the whole tree. */
  private final class Run {
    final double[] x;
    final double part;
    final boolean keep;
    final double[] residual;
    final double[][] starts = new double[limbs][];
    final Vector3[][] ends = new Vector3[rods.ties().size()][2];
    final ShootingPose pose = new ShootingPose(rods);

    Run(double[] x, double part, boolean keep) {
      this.keep = keep;
      this.x = x;
      this.part = part;
      residual = new double[x.length];
    }

    void limb(int i) {
      RodCase.Limb limb = rods.limbs().get(i);
      double[] y = starts[i];
      System.arraycopy(x, 6 * i, y, 12, 6);
      double from = 0;
      for (double to : stops(i)) {
        if (to > from) {
          DenseOutputModel path = new DenseOutputModel();
          DormandPrince853Integrator integrator =
              new DormandPrince853Integrator(
                  1e-12 * limb.length(), limb.length(), tolerances(), tolerances());
          if (keep) {
            integrator.addStepHandler(path);
          }
          y = integrator.integrate(equation(i), new ODEState(from, y), to).getPrimaryState();
          pose.add(i, to, path);
        }
        pass(i, to, y);
        from = to;
      }
      for (int k = 0; k < 3; k++) {
        residual[6 * i + k] = y[12 + k] / scaleForce;
        residual[6 * i + 3 + k] = y[15 + k] / scaleForce / scaleLength;
      }
    }

    private double[] tolerances() {
      double[] t = new double[18];
      Arrays.fill(t, 0, 3, INTEGRATION * scaleLength);
      Arrays.fill(t, 3, 12, INTEGRATION);
      Arrays.fill(t, 12, 15, INTEGRATION * scaleForce);
      Arrays.fill(t, 15, 18, INTEGRATION * scaleForce * scaleLength);
      return t;
    }

    private OrdinaryDifferentialEquation equation(int i) {
      RodCase.Limb limb = rods.limbs().get(i);
      return new OrdinaryDifferentialEquation() {
        @Override
        public int getDimension() {
          return 18;
        }

        @Override
        public double[] computeDerivatives(double s, double[] y) {
          Vector3 d1 = vector(y, 3);
          Vector3 d2 = vector(y, 6);
          Vector3 d3 = vector(y, 9);
          Vector3 m = vector(y, 15);
          double ei = bendingStiffness(limb, s);
          double gj = 2 * limb.wood().shear() / limb.wood().moe() * ei;
          Vector3 rest = curvature.at(i, s);
          double u1 = rest.x() + m.dot(d1) / ei;
          double u2 = rest.y() + m.dot(d2) / ei;
          double u3 = rest.z() + m.dot(d3) / gj;
          double[] out = new double[18];
          put(out, 0, d3);
          put(out, 3, d2.times(u3).minus(d3.times(u2)));
          put(out, 6, d3.times(u1).minus(d1.times(u3)));
          put(out, 9, d1.times(u2).minus(d2.times(u1)));
          put(out, 12, spread(i, s).times(-part));
          put(out, 15, vector(y, 12).cross(d3));
          return out;
        }
      };
    }

    /** Takes out of force and moment what acts at a place, and starts the limbs there. */
    private void pass(int i, double s, double[] y) {
      for (RodCase.Pull pull : rods.pulls()) {
        if (pull.at().limb() == i && pull.at().s() == s) {
          take(y, pull.force().times(part), turned(y, pull.at().arm()), Vector3.ZERO);
        }
      }
      for (int k = 0; k < rods.ties().size(); k++) {
        RodCase.Tie tie = rods.ties().get(k);
        Vector3 force = vector(x, 6 * limbs + 3 * k);
        end(i, s, y, tie.at(), force, k, 0);
        if (tie.other() != null) {
          end(i, s, y, tie.other(), force.times(-1), k, 1);
        } else {
          ends[k][1] = tie.anchor().minus(Point3.ORIGIN);
        }
      }
      for (int c = 0; c < limbs; c++) {
        RodCase.Limb child = rods.limbs().get(c);
        if (child.parent() == i && child.at() == s) {
          Vector3 link = turned(y, child.offset());
          starts[c] = start(y, link, child);
          take(y, vector(x, 6 * c), link, vector(x, 6 * c + 3));
        }
      }
    }

    private void end(
        int i, double s, double[] y, RodCase.Place place, Vector3 force, int tie, int side) {
      if (place.limb() == i && place.s() == s) {
        Vector3 arm = turned(y, place.arm());
        ends[tie][side] = vector(y, 0).plus(arm);
        take(y, force, arm, Vector3.ZERO);
      }
    }

    void ties(boolean byLength) {
      for (int k = 0; k < rods.ties().size(); k++) {
        RodCase.Tie tie = rods.ties().get(k);
        int at = 6 * limbs + 3 * k;
        Vector3 force = vector(x, at);
        pose.addTie(force.norm());
        Vector3 gap = ends[k][1].minus(ends[k][0]);
        Vector3 wrong;
        if (byLength && tie.byLength()) {
          double taut = tie.length() + tie.compliance() * force.norm();
          wrong = gap.minus(force.times(taut / force.norm())).times(1 / scaleLength);
        } else {
          wrong = force.minus(gap.times(part * tie.tension() / gap.norm())).times(1 / scaleForce);
        }
        put(residual, at, wrong);
      }
    }
  }

  private Run run(double[] x, double part, boolean byLength, boolean keep) {
    Run run = new Run(x, part, keep);
    double[] base = new double[18];
    putFrame(base, rods.baseFrame().turn(X), rods.baseFrame().turn(Y), rods.baseFrame().turn(Z));
    for (int i = 0; i < limbs; i++) {
      RodCase.Limb limb = rods.limbs().get(i);
      if (limb.parent() < 0) {
        run.starts[i] = start(base, turned(base, limb.offset()), limb);
      }
      run.limb(i);
    }
    run.ties(byLength);
    return run;
  }

  private static final Vector3 X = new Vector3(1, 0, 0);
  private static final Vector3 Y = new Vector3(0, 1, 0);
  private static final Vector3 Z = new Vector3(0, 0, 1);

  private static double[] start(double[] parent, Vector3 link, RodCase.Limb limb) {
    double[] y = new double[18];
    put(y, 0, vector(parent, 0).plus(link));
    putFrame(
        y,
        turned(parent, limb.turn().turn(X)),
        turned(parent, limb.turn().turn(Y)),
        turned(parent, limb.turn().turn(Z)));
    return y;
  }

  private TreeSet<Double> stops(int i) {
    TreeSet<Double> stops = new TreeSet<>(List.of(0.0, rods.limbs().get(i).length()));
    rods.pulls().stream().filter(p -> p.at().limb() == i).forEach(p -> stops.add(p.at().s()));
    rods.limbs().stream().filter(c -> c.parent() == i).forEach(c -> stops.add(c.at()));
    for (RodCase.Tie tie : rods.ties()) {
      if (tie.at().limb() == i) {
        stops.add(tie.at().s());
      }
      if (tie.other() != null && tie.other().limb() == i) {
        stops.add(tie.other().s());
      }
    }
    return stops;
  }

  private Vector3 spread(int i, double s) {
    Vector3 sum = Vector3.ZERO;
    for (RodCase.Spread spread : rods.spreads()) {
      if (spread.limb() == i) {
        sum = sum.plus(spread.pull().times(spread.at(s)));
      }
    }
    return sum;
  }

  /** E pi r^4 / 4. */
  static double bendingStiffness(RodCase.Limb limb, double s) {
    return limb.wood().moe() * Math.PI / 4 * Math.pow(limb.wood().radius(s / limb.length()), 4);
  }

  static Vector3 vector(double[] y, int at) {
    return new Vector3(y[at], y[at + 1], y[at + 2]);
  }

  private static void put(double[] y, int at, Vector3 v) {
    y[at] = v.x();
    y[at + 1] = v.y();
    y[at + 2] = v.z();
  }

  private static void putFrame(double[] y, Vector3 d1, Vector3 d2, Vector3 d3) {
    put(y, 3, d1);
    put(y, 6, d2);
    put(y, 9, d3);
  }

  private static Vector3 turned(double[] y, Vector3 v) {
    return vector(y, 3)
        .times(v.x())
        .plus(vector(y, 6).times(v.y()))
        .plus(vector(y, 9).times(v.z()));
  }

  private static void take(double[] y, Vector3 force, Vector3 arm, Vector3 moment) {
    put(y, 12, vector(y, 12).minus(force));
    put(y, 15, vector(y, 15).minus(arm.cross(force)).minus(moment));
  }
}
