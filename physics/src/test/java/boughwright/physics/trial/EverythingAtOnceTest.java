// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import static boughwright.physics.trial.TreeText.text;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.physics.rod.Measured;
import boughwright.physics.trial.KirchhoffShooting.End;
import boughwright.physics.trial.KirchhoffShooting.Stretch;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.linear.DiagonalMatrix;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * One tree through everything at once: unions at the bark of a tapered parent (one branch
 * slanting), bark, a cut, the planted stance with a weight, two proposals, a line between two
 * branches by tension and one to the ground by shortening. Checked against shooting on the
 * continuum equations with Hipparchus' integrator and Levenberg-Marquardt; nothing is shared with
 * the solver.
 */
class EverythingAtOnceTest {
  private static final double MOE = 3e9;
  private static final double SHEAR = MOE / 16;
  private static final double BARK = 0.0005;
  private static final double TENSION_1 = 20;
  private static final double SHORTENING_2 = 0.015;
  private static final double MASS = 0.6;
  private static final double GRAVITY = 9.80665;

  private static final Vector3D O = Vector3D.ZERO;
  private static final Vector3D T1 = new Vector3D(0.012, -0.006, 0.150);
  private static final Vector3D T2 = new Vector3D(-0.010, 0.018, 0.260);
  private static final Vector3D B1 = new Vector3D(0.140, 0.030, 0.235);
  private static final Vector3D B2 = new Vector3D(-0.120, -0.050, 0.225);
  private static final Vector3D ANCHOR = new Vector3D(-0.09, -0.12, 0.0);

  private static final Measured MEASURED = new Measured(EverythingAtOnceTest.class);

  @TempDir Path folder;

  private static String point(Vector3D p) {
    return text("[%s, %s, %s]", 1000 * p.getX(), 1000 * p.getY(), 1000 * p.getZ());
  }

  private static Vector3D between(Vector3D a, Vector3D b, double part) {
    return a.add(b.subtract(a).scalarMultiply(part));
  }

  private TrialResult trial() {
    return new TreeText(MOE / 1e9, SHEAR / 1e9)
        .unions("surface")
        .segment(
            "\"id\": \"t1\", \"parent\": null, \"kind\": \"trunk\", \"bark_mm\": 0.5, \"start_mm\":"
                + " [0,0,0], \"end_mm\": "
                + point(T1)
                + ", \"caliper_start_mm\": 22, \"caliper_end_mm\": 18")
        .segment(
            "\"id\": \"t2\", \"parent\": \"t1\", \"kind\": \"trunk\", \"bark_mm\": 0.5, \"end_mm\": "
                + point(T2)
                + ", \"caliper_start_mm\": 18, \"caliper_end_mm\": 13")
        .segment(
            "\"id\": \"t3\", \"parent\": \"t2\", \"kind\": \"trunk\", \"bark_mm\": 0.5, \"end_mm\":"
                + " [-20, 20, 330], \"caliper_start_mm\": 13, \"caliper_end_mm\": 6")
        .segment(
            "\"id\": \"b1\", \"parent\": \"t1\", \"along\": 0.7, \"kind\": \"branch\", \"bark_mm\":"
                + " 0.5, \"end_mm\": "
                + point(B1)
                + ", \"caliper_start_mm\": 12, \"caliper_end_mm\": 8")
        .segment(
            "\"id\": \"b2\", \"parent\": \"t2\", \"along\": 0.5, \"kind\": \"branch\", \"bark_mm\":"
                + " 0.5, \"end_mm\": "
                + point(B2)
                + ", \"caliper_start_mm\": 9, \"caliper_end_mm\": 6")
        .plan(
            "\"planting\": {\"tilt_deg\": 15, \"toward_azimuth_deg\": 60}, \"stance\": \"planted\","
                + " \"cuts\": [{\"segment\": \"t3\", \"along\": 0.3}],")
        .proposal(
            text(
                "\"guy_lines\": [{\"id\": \"g1\", \"segment\": \"b1\", \"along\": 0.9, \"anchor\":"
                    + " {\"segment\": \"b2\", \"along\": 1.0}, \"tension_N\": %s}]",
                TENSION_1))
        .proposal(
            text(
                "\"hung_weights\": [{\"segment\": \"b1\", \"along\": 1.0, \"mass_kg\": %s}],"
                    + " \"guy_lines\": [{\"id\": \"g2\", \"segment\": \"b2\", \"along\": 0.8,"
                    + " \"anchor_mm\": %s, \"shorten_mm\": %s}]",
                MASS, point(ANCHOR), 1000 * SHORTENING_2))
        .tryIn(folder);
  }

  /** The same tree as a boundary value problem. */
  private static final class Independent {
    final double collar1 = collar(O, T1, 0.011, 0.009, 0.7, B1);
    final double collar2 = collar(T1, T2, 0.009, 0.0065, 0.5, B2);
    final Vector3D gravity = plantedGravity();
    Vector3D tipB1;
    Vector3D tipB2;
    Vector3D endT1;
    double tension2;

    /**
     * Where a ray from the axis leaves the cone: its distance from the axis is the cone's radius.
     */
    static double collar(Vector3D a, Vector3D b, double ra, double rb, double at, Vector3D to) {
      Vector3D axis = b.subtract(a).normalize();
      Vector3D from = between(a, b, at);
      Vector3D ray = to.subtract(from).normalize();
      double length = Vector3D.distance(a, b);
      return new BrentSolver(1e-13)
          .solve(
              200,
              t -> {
                Vector3D p = from.add(ray.scalarMultiply(t)).subtract(a);
                double along = p.dotProduct(axis);
                double away = p.subtract(axis.scalarMultiply(along)).getNorm();
                return away - (ra + (rb - ra) * along / length);
              },
              0,
              0.05);
    }

    /**
     * The top leans 15 degrees toward azimuth 60 degrees: gravity, seen from the tree, leans too.
     */
    static Vector3D plantedGravity() {
      double lean = Math.toRadians(15);
      double azimuth = Math.toRadians(60);
      return new Vector3D(
              -Math.sin(azimuth) * Math.sin(lean),
              -Math.cos(azimuth) * Math.sin(lean),
              -Math.cos(lean))
          .scalarMultiply(GRAVITY);
    }

    static Stretch wood(
        Vector3D from, Vector3D to, double collar, double startCaliper, double endCaliper) {
      return new Stretch(
          Vector3D.distance(from, to) - collar,
          startCaliper / 2 - BARK,
          endCaliper / 2 - BARK,
          MOE,
          SHEAR);
    }

    static End rest(Vector3D from, Vector3D to) {
      Vector3D tangent = to.subtract(from).normalize();
      return new End(from, tangent.orthogonal(), tangent, Vector3D.ZERO);
    }

    /** Residuals for unknown moments at the base and at the start of b1, and both line forces. */
    double[] residuals(double[] x) {
      Vector3D force1 = new Vector3D(x[6], x[7], x[8]);
      Vector3D force2 = new Vector3D(x[9], x[10], x[11]);
      Vector3D weight = gravity.scalarMultiply(MASS);
      Vector3D throughB2 = force1.negate().add(force2);
      Vector3D throughB1 = force1.add(weight);
      Vector3D atBase = throughB1.add(throughB2);
      Stretch trunk1 = wood(O, T1, 0, 0.022, 0.018);
      Stretch trunk2 = wood(T1, T2, 0, 0.018, 0.013);
      End rest1 = rest(O, T1);
      End node1 =
          KirchhoffShooting.along(
              rest1.withMoment(new Vector3D(x[0], x[1], x[2])), trunk1.part(0, 0.7), atBase);
      Vector3D start1 = between(O, T1, 0.7);
      Vector3D ray1 = B1.subtract(start1).normalize();
      Vector3D link1 = node1.carried(ray1.scalarMultiply(collar1), rest1);
      Vector3D momentB1 = new Vector3D(x[3], x[4], x[5]);
      End b1 = child(node1, rest1, start1, B1, collar1).withMoment(momentB1);
      Stretch wood1 = wood(start1, B1, collar1, 0.012, 0.008);
      double tied1 = fraction(0.9, start1, B1, collar1);
      End held1 = KirchhoffShooting.along(b1, wood1.part(0, tied1), throughB1);
      End tip1 = KirchhoffShooting.along(held1, wood1.part(tied1, 1), weight);
      Vector3D left = node1.moment().subtract(momentB1).subtract(link1.crossProduct(throughB1));
      End top = KirchhoffShooting.along(node1.withMoment(left), trunk1.part(0.7, 1), throughB2);
      End rest2 = rest(T1, T2);
      Vector3D tangent2 = top.carried(rest2.tangent(), rest1);
      Vector3D side2 = top.carried(rest2.side(), rest1);
      End start2 = new End(top.position(), side2, tangent2, top.moment());
      End node2 = KirchhoffShooting.along(start2, trunk2.part(0, 0.5), throughB2);
      Vector3D foot2 = between(T1, T2, 0.5);
      Vector3D ray2 = B2.subtract(foot2).normalize();
      Vector3D link2 = node2.carried(ray2.scalarMultiply(collar2), rest2);
      End b2 =
          child(node2, rest2, foot2, B2, collar2)
              .withMoment(node2.moment().subtract(link2.crossProduct(throughB2)));
      Stretch wood2 = wood(foot2, B2, collar2, 0.009, 0.006);
      double tied2 = fraction(0.8, foot2, B2, collar2);
      End held2 = KirchhoffShooting.along(b2, wood2.part(0, tied2), throughB2);
      End tip2 = KirchhoffShooting.along(held2, wood2.part(tied2, 1), force1.negate());
      tipB1 = tip1.position();
      tipB2 = tip2.position();
      endT1 = top.position();
      tension2 = force2.getNorm();
      Vector3D gap1 = tip2.position().subtract(held1.position());
      Vector3D gap2 = ANCHOR.subtract(held2.position());
      double given2 = Vector3D.distance(between(foot2, B2, 0.8), ANCHOR) - SHORTENING_2;
      List<Double> out = new ArrayList<>();
      add(out, tip1.moment().scalarMultiply(10));
      add(out, tip2.moment().scalarMultiply(10));
      add(out, force1.subtract(gap1.normalize().scalarMultiply(TENSION_1)));
      add(out, force2.subtract(gap2.normalize().scalarMultiply(force2.getNorm())));
      out.add(100 * (gap2.getNorm() - given2));
      return out.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static End child(End node, End rest, Vector3D from, Vector3D to, double collar) {
      End own = rest(from, to);
      Vector3D tangent = node.carried(own.tangent(), rest);
      return new End(
          node.position().add(tangent.scalarMultiply(collar)),
          node.carried(own.side(), rest),
          tangent,
          Vector3D.ZERO);
    }

    /** A fraction of the segment from the axis as a fraction of the stretch beyond the collar. */
    private static double fraction(double along, Vector3D from, Vector3D to, double collar) {
      double length = Vector3D.distance(from, to);
      return (along * length - collar) / (length - collar);
    }

    private static void add(List<Double> out, Vector3D v) {
      out.add(v.getX());
      out.add(v.getY());
      out.add(v.getZ());
    }

    void solve() {
      double[] start = new double[12];
      start[6] = -TENSION_1;
      start[9] = 1;
      start[11] = -1;
      double[] found =
          new LevenbergMarquardtOptimizer()
              .optimize(
                  new LeastSquaresBuilder()
                      .model(this::linearised)
                      .start(start)
                      .target(new double[13])
                      .weight(new DiagonalMatrix(ones(13)))
                      .maxEvaluations(500)
                      .maxIterations(500)
                      .build())
              .getPoint()
              .toArray();
      for (double residual : residuals(found)) {
        assertThat(residual).isCloseTo(0, within(1e-7));
      }
    }

    private static double[] ones(int count) {
      double[] out = new double[count];
      java.util.Arrays.fill(out, 1);
      return out;
    }

    private Pair<RealVector, RealMatrix> linearised(RealVector at) {
      double[] x = at.toArray();
      double[] value = residuals(x);
      RealMatrix jacobian = MatrixUtils.createRealMatrix(value.length, x.length);
      for (int j = 0; j < x.length; j++) {
        double step = 1e-6;
        double[] up = x.clone();
        double[] down = x.clone();
        up[j] += step;
        down[j] -= step;
        double[] above = residuals(up);
        double[] below = residuals(down);
        for (int i = 0; i < value.length; i++) {
          jacobian.setEntry(i, j, (above[i] - below[i]) / (2 * step));
        }
      }
      return new Pair<>(MatrixUtils.createRealVector(value), jacobian);
    }
  }

  @Test
  void treeThroughEverything_agreesWithShootingOnTheContinuum() {
    TrialResult result = trial();
    Independent independent = new Independent();
    independent.solve();
    assertThat(result.outcome().holds()).isTrue();
    near(result.segment("b1").orElseThrow().end(), independent.tipB1);
    near(result.segment("b2").orElseThrow().end(), independent.tipB2);
    near(result.segment("t1").orElseThrow().end(), independent.endT1);
    double tension = result.lines().get(1).tension();
    MEASURED.check("tension", tension / independent.tension2 - 1, 0.002);
    MEASURED.report();
    assertThat(result.lines().get(0).tension()).isEqualTo(TENSION_1);
    assertThat(result.held()).isEqualTo("tension+length+weight");
    // the movement is large enough for the comparison to mean something
    assertThat(Vector3D.distance(independent.tipB1, B1)).isGreaterThan(0.008);
    assertThat(Vector3D.distance(independent.tipB2, B2)).isGreaterThan(0.008);
  }

  private static void near(boughwright.modeller.geometry.Point3 found, Vector3D expected) {
    Vector3D at = new Vector3D(found.x(), found.y(), found.z());
    MEASURED.check("position / longest path", Vector3D.distance(at, expected) / 0.3, 1e-4);
  }
}
