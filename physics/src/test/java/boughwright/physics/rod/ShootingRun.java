// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import org.hipparchus.ode.DenseOutputModel;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/**
 * One integration of a whole tree by {@link ShootingTree}, from the clamp to the tips, with given
 * unknowns: what is left over at the tips and at the lines.
 */
final class ShootingRun {
  private static final double INTEGRATION = 1e-12;
  private static final Vector3 X = new Vector3(1, 0, 0);
  private static final Vector3 Y = new Vector3(0, 1, 0);
  private static final Vector3 Z = new Vector3(0, 0, 1);

  /** Typical force [N] and length [m], to compare unknowns of different units. */
  record Scale(double force, double length) {}

  /** What is to be integrated. */
  record Problem(RodCase rods, ShootingTree.RestCurvature curvature, Scale scale) {}

  /** A place the integration has come to, with the state there. */
  private record Here(int limb, double s, double[] y) {
    boolean is(RodCase.Place place) {
      return place.limb() == limb && place.s() == s;
    }
  }

  private final RodCase rods;
  private final ShootingTree.RestCurvature curvature;
  private final Scale scale;
  private final int limbs;
  private final double[] x;
  private final boolean keep;
  private final double[][] starts;
  private final Vector3[][] ends;
  private double part;
  final double[] residual;
  final ShootingPose pose;

  ShootingRun(Problem problem, double[] x, boolean keep) {
    rods = problem.rods();
    curvature = problem.curvature();
    scale = problem.scale();
    this.x = x;
    this.keep = keep;
    limbs = rods.limbs().size();
    starts = new double[limbs][];
    ends = new Vector3[rods.ties().size()][2];
    residual = new double[x.length];
    pose = new ShootingPose(rods);
  }

  /** Integrates everything with a part of the loads; lines by length, or all by tension. */
  void through(double partOfLoads, boolean byLength) {
    part = partOfLoads;
    double[] base = new double[18];
    putFrame(base, rods.baseFrame().turn(X), rods.baseFrame().turn(Y), rods.baseFrame().turn(Z));
    for (int i = 0; i < limbs; i++) {
      RodCase.Limb limb = rods.limbs().get(i);
      if (limb.parent() < 0) {
        starts[i] = start(base, turned(base, limb.offset()), limb);
      }
      limb(i);
    }
    ties(byLength);
  }

  private void limb(int i) {
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
      pass(new Here(i, to, y));
      from = to;
    }
    for (int k = 0; k < 3; k++) {
      residual[6 * i + k] = y[12 + k] / scale.force();
      residual[6 * i + 3 + k] = y[15 + k] / scale.force() / scale.length();
    }
  }

  private double[] tolerances() {
    double[] t = new double[18];
    Arrays.fill(t, 0, 3, INTEGRATION * scale.length());
    Arrays.fill(t, 3, 12, INTEGRATION);
    Arrays.fill(t, 12, 15, INTEGRATION * scale.force());
    Arrays.fill(t, 15, 18, INTEGRATION * scale.force() * scale.length());
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
        double soft = softening(limb, s, Math.hypot(m.dot(d1), m.dot(d2)));
        double u1 = rest.x() + soft * m.dot(d1) / ei;
        double u2 = rest.y() + soft * m.dot(d2) / ei;
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
  private void pass(Here here) {
    double[] y = here.y();
    for (RodCase.Pull pull : rods.pulls()) {
      if (here.is(pull.at())) {
        take(y, pull.force().times(part), turned(y, pull.at().arm()));
      }
    }
    for (int k = 0; k < rods.ties().size(); k++) {
      RodCase.Tie tie = rods.ties().get(k);
      Vector3 force = vector(x, 6 * limbs + 3 * k);
      if (here.is(tie.at())) {
        ends[k][0] = end(y, tie.at(), force);
      }
      if (tie.other() == null) {
        ends[k][1] = tie.anchor().minus(Point3.ORIGIN);
      } else if (here.is(tie.other())) {
        ends[k][1] = end(y, tie.other(), force.times(-1));
      }
    }
    for (int c = 0; c < limbs; c++) {
      RodCase.Limb child = rods.limbs().get(c);
      if (child.parent() == here.limb() && child.at() == here.s()) {
        Vector3 link = turned(y, child.offset());
        starts[c] = start(y, link, child);
        take(y, vector(x, 6 * c), link);
        put(y, 15, vector(y, 15).minus(vector(x, 6 * c + 3)));
      }
    }
  }

  private static Vector3 end(double[] y, RodCase.Place place, Vector3 force) {
    Vector3 arm = turned(y, place.arm());
    take(y, force, arm);
    return vector(y, 0).plus(arm);
  }

  private void ties(boolean byLength) {
    for (int k = 0; k < rods.ties().size(); k++) {
      RodCase.Tie tie = rods.ties().get(k);
      int at = 6 * limbs + 3 * k;
      Vector3 force = vector(x, at);
      pose.addTie(force.norm());
      Vector3 gap = ends[k][1].minus(ends[k][0]);
      Vector3 wrong;
      if (byLength && tie.byLength()) {
        double taut = tie.length() + tie.compliance() * force.norm();
        wrong = gap.minus(force.times(taut / force.norm())).times(1 / scale.length());
      } else {
        wrong = force.minus(gap.times(part * tie.tension() / gap.norm())).times(1 / scale.force());
      }
      put(residual, at, wrong);
    }
  }

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

  /** Curvature under a bending moment over that of straight-line elastic wood. */
  static double softening(RodCase.Limb limb, double s, double moment) {
    double radius = limb.wood().radius(s / limb.length());
    double first = bendingStiffness(limb, s) * limb.wood().yield() / radius;
    return moment <= first ? 1 : FibreBending.curvature(moment / first) * first / moment;
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

  private static void take(double[] y, Vector3 force, Vector3 arm) {
    put(y, 12, vector(y, 12).minus(force));
    put(y, 15, vector(y, 15).minus(arm.cross(force)));
  }
}
