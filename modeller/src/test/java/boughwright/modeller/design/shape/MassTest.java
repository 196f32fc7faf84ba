// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Test;

/** Against closed forms of textbooks, and against a quadrature of Hipparchus. */
class MassTest {
  private static final Point3 HERE = new Point3(0.3, -0.2, 0.7);
  private static final Direction3 AXIS = Direction3.of(1, -2, 3);
  private static final double LENGTH = 0.4;

  /** Relative; rounding of sums. */
  private static final double CLOSE = 1e-12;

  /** Cosines of a full turn at this many places are integrated exactly to far beyond the square. */
  private static final int ROUND = 12;

  private static Frustum frustum(double startRadius, double endRadius) {
    return new Frustum(0, HERE, HERE.plus(AXIS.times(LENGTH)), startRadius, endRadius);
  }

  private static RealMatrix matrix(Inertia i) {
    return new Array2DRowRealMatrix(
        new double[][] {
          {i.xx(), i.xy(), i.xz()}, {i.xy(), i.yy(), i.yz()}, {i.xz(), i.yz(), i.zz()}
        });
  }

  private static void requireClose(Inertia found, RealMatrix asked) {
    double off = matrix(found).subtract(asked).getFrobeniusNorm();
    assertThat(off).isLessThan(CLOSE * asked.getFrobeniusNorm());
  }

  /** Sums of dV, x dV and x x' dV over a frustum, by Gauss rules along and outward. */
  private static final class Quadrature {
    private double volume;
    private Vector3D first = Vector3D.ZERO;
    private RealMatrix second = new Array2DRowRealMatrix(3, 3);

    void add(Frustum piece) {
      Vector3D start = vector(piece.start());
      Vector3D end = vector(piece.end());
      Vector3D axis = end.subtract(start);
      Vector3D u = axis.orthogonal();
      Vector3D v = axis.normalize().crossProduct(u);
      GaussIntegrator along = new GaussIntegratorFactory().legendre(4, 0, 1);
      GaussIntegrator out = new GaussIntegratorFactory().legendre(4, 0, 1);
      for (int i = 0; i < along.getNumberOfPoints(); i++) {
        double t = along.getPoint(i);
        double radius = piece.startRadius() + t * (piece.endRadius() - piece.startRadius());
        for (int j = 0; j < out.getNumberOfPoints(); j++) {
          double r = radius * out.getPoint(j);
          double part = along.getWeight(i) * axis.getNorm() * out.getWeight(j) * radius * r;
          for (int k = 0; k < ROUND; k++) {
            double angle = 2 * Math.PI * k / ROUND;
            Vector3D at =
                start.add(t, axis).add(r * Math.cos(angle), u).add(r * Math.sin(angle), v);
            add(at, part * 2 * Math.PI / ROUND);
          }
        }
      }
    }

    private void add(Vector3D at, double part) {
      volume += part;
      first = first.add(part, at);
      RealMatrix column = new Array2DRowRealMatrix(at.toArray());
      second = second.add(column.multiply(column.transpose()).scalarMultiply(part));
    }

    Vector3D centre() {
      return first.scalarMultiply(1 / volume);
    }

    RealMatrix inertia() {
      RealMatrix column = new Array2DRowRealMatrix(centre().toArray());
      RealMatrix about =
          second.subtract(column.multiply(column.transpose()).scalarMultiply(volume));
      RealMatrix out = about.scalarMultiply(-1);
      for (int i = 0; i < 3; i++) {
        out.addToEntry(i, i, about.getTrace());
      }
      return out;
    }

    private static Vector3D vector(Point3 point) {
      return new Vector3D(point.x(), point.y(), point.z());
    }
  }

  @Test
  void cylinder_isThatOfTheTextbook() {
    double r = 0.05;
    Mass mass = Mass.of(frustum(r, r));
    double volume = Math.PI * r * r * LENGTH;
    assertThat(mass.volume()).isCloseTo(volume, within(CLOSE * volume));
    assertThat(mass.centre().distance(HERE.plus(AXIS.times(LENGTH / 2)))).isLessThan(CLOSE);
    assertThat(mass.inertia().about(AXIS))
        .isCloseTo(volume * r * r / 2, within(CLOSE * volume * r * r));
    double square = volume * (3 * r * r + LENGTH * LENGTH) / 12;
    assertThat(mass.inertia().about(AXIS.anySquare())).isCloseTo(square, within(CLOSE * square));
  }

  /** A cone: 3/10 m r2 about its axis, 3/20 m r2 + 3/80 m h2 square to it through its centre. */
  @Test
  void cone_isThatOfTheTextbook() {
    double r = 0.05;
    double point = 1e-14;
    Mass mass = Mass.of(frustum(r, point));
    double volume = Math.PI * r * r * LENGTH / 3;
    assertThat(mass.volume()).isCloseTo(volume, within(CLOSE * volume));
    assertThat(mass.centre().distance(HERE.plus(AXIS.times(LENGTH / 4)))).isLessThan(CLOSE);
    double about = 0.3 * volume * r * r;
    assertThat(mass.inertia().about(AXIS)).isCloseTo(about, within(CLOSE * about));
    double square = volume * (0.15 * r * r + 0.0375 * LENGTH * LENGTH);
    assertThat(mass.inertia().about(AXIS.anySquare())).isCloseTo(square, within(CLOSE * square));
  }

  @Test
  void piecesOfACone_areTheConeTogether_byTheParallelAxis() {
    Frustum whole = frustum(0.05, 0.02);
    List<Frustum> slices = new ArrayList<>();
    double[] cuts = {0, 0.1, 0.45, 0.5, 1};
    for (int n = 1; n < cuts.length; n++) {
      slices.add(
          new Frustum(
              n,
              whole.start().toward(whole.end(), cuts[n - 1]),
              whole.start().toward(whole.end(), cuts[n]),
              0.05 - 0.03 * cuts[n - 1],
              0.05 - 0.03 * cuts[n]));
    }
    Mass one = Mass.of(whole);
    Mass sum = Mass.of(slices);
    assertThat(sum.volume()).isCloseTo(one.volume(), within(CLOSE * one.volume()));
    assertThat(sum.centre().distance(one.centre())).isLessThan(CLOSE);
    requireClose(sum.inertia(), matrix(one.inertia()));
  }

  /**
   * Six rods round a ring about z: m R2 each by the parallel axis, and half of that in the plane.
   */
  @Test
  void ringOfUprightRods_isHollow() {
    double ring = 0.5;
    double r = 0.01;
    List<Frustum> rods = new ArrayList<>();
    for (int n = 0; n < 6; n++) {
      Point3 foot = Point3.ORIGIN.plus(Direction3.ofAzimuth(Math.PI / 3 * n).times(ring));
      rods.add(new Frustum(n, foot, foot.plus(Direction3.UP.times(LENGTH)), r, r));
    }
    Mass mass = Mass.of(rods);
    double volume = 6 * Math.PI * r * r * LENGTH;
    assertThat(mass.centre().distance(new Point3(0, 0, LENGTH / 2))).isLessThan(CLOSE);
    assertThat(mass.inertia().zz())
        .isCloseTo(volume * (ring * ring + r * r / 2), within(CLOSE * volume));
    double level = volume * (ring * ring / 2 + r * r / 4 + LENGTH * LENGTH / 12);
    assertThat(mass.inertia().about(Direction3.ofAzimuth(0.3)))
        .isCloseTo(level, within(CLOSE * volume));
  }

  @Test
  void heapOfPieces_agreesWithAQuadrature() {
    Random random = new Random(11);
    for (int n = 0; n < 20; n++) {
      List<Frustum> pieces = new ArrayList<>();
      Quadrature asked = new Quadrature();
      for (int i = 0; i < 1 + random.nextInt(6); i++) {
        Frustum piece =
            new Frustum(
                i,
                new Point3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()),
                new Point3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()),
                0.01 + random.nextDouble(),
                0.01 + random.nextDouble());
        pieces.add(piece);
        asked.add(piece);
      }
      Mass mass = Mass.of(pieces);
      assertThat(mass.volume()).isCloseTo(asked.volume, within(CLOSE * asked.volume));
      assertThat(Quadrature.vector(mass.centre()).distance(asked.centre())).isLessThan(1e-11);
      requireClose(mass.inertia(), asked.inertia());
    }
  }

  @Test
  void inertia_turnsWithTheBody() {
    Rotation turn = Rotation.about(Direction3.of(2, 1, -1), 0.8);
    Frustum piece = frustum(0.05, 0.02);
    Frustum turned =
        new Frustum(
            0,
            Point3.ORIGIN.plus(turn.turn(piece.start().minus(Point3.ORIGIN))),
            Point3.ORIGIN.plus(turn.turn(piece.end().minus(Point3.ORIGIN))),
            0.05,
            0.02);
    double[] before =
        new EigenDecompositionSymmetric(matrix(Mass.of(piece).inertia())).getEigenvalues();
    double[] after =
        new EigenDecompositionSymmetric(matrix(Mass.of(turned).inertia())).getEigenvalues();
    assertThat(after).containsExactly(before, within(CLOSE * before[0]));
    assertThat(Mass.of(turned).inertia().about(turn.turn(AXIS)))
        .isCloseTo(Mass.of(piece).inertia().about(AXIS), within(CLOSE * before[0]));
  }

  @Test
  void nothing_hasNoMass() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Mass.of(List.<Frustum>of()))
        .withMessageContaining("no centre of mass");
  }
}
