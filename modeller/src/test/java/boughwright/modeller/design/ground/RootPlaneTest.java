// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.plan.Planting;
import boughwright.modeller.plan.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Test;

/** Against Hipparchus by another way: the eigenvectors of the scatter matrix. */
class RootPlaneTest {
  private static final double CLOSE = 1e-9;

  private final Random random = new Random(21);

  private List<Point3> ring(int count, double uneven) {
    List<Point3> points = new ArrayList<>();
    double slopeX = 0.4 * random.nextGaussian();
    double slopeY = 0.4 * random.nextGaussian();
    for (int n = 0; n < count; n++) {
      double angle = 2 * Math.PI * (n + 0.4 * random.nextDouble()) / count;
      double x = 0.03 * Math.cos(angle);
      double y = 0.03 * Math.sin(angle);
      points.add(new Point3(x, y, slopeX * x + slopeY * y - 0.01 + uneven * random.nextGaussian()));
    }
    return points;
  }

  private List<Double> weights(int count) {
    return random.doubles(count, 0.008, 0.035).boxed().toList();
  }

  private static Vector3D vector(Point3 point) {
    return new Vector3D(point.x(), point.y(), point.z());
  }

  private static Vector3D normal(List<Point3> points, List<Double> weights) {
    double all = weights.stream().mapToDouble(w -> w).sum();
    Vector3D middle = Vector3D.ZERO;
    for (int n = 0; n < points.size(); n++) {
      middle = middle.add(weights.get(n) / all, vector(points.get(n)));
    }
    RealMatrix scatter = new Array2DRowRealMatrix(3, 3);
    for (int n = 0; n < points.size(); n++) {
      RealMatrix out = new Array2DRowRealMatrix(vector(points.get(n)).subtract(middle).toArray());
      scatter = scatter.add(out.multiply(out.transpose()).scalarMultiply(weights.get(n)));
    }
    Vector3D least =
        new Vector3D(new EigenDecompositionSymmetric(scatter).getEigenvector(2).toArray());
    return least.getZ() < 0 ? least.negate() : least;
  }

  @Test
  void planeOfRandomRoots_isThatOfAGeneralLibrary() {
    for (int trial = 0; trial < 200; trial++) {
      int count = 3 + random.nextInt(10);
      List<Point3> points = ring(count, 0.003);
      List<Double> weights = weights(count);
      RootPlane plane = RootPlane.of(points, weights).orElseThrow();
      Vector3D asked = normal(points, weights);
      Direction3 found = plane.normal();
      assertThat(Vector3D.angle(asked, new Vector3D(found.x(), found.y(), found.z())))
          .isLessThan(1e-7);
      Vector3D middle = vector(plane.middle());
      for (int n = 0; n < count; n++) {
        double offset = asked.dotProduct(vector(points.get(n)).subtract(middle));
        assertThat(plane.offsets().get(n)).isCloseTo(offset, within(CLOSE));
      }
    }
  }

  /** A plane tilted by hand: its top goes 12 degrees toward azimuth 70, so it falls that way. */
  @Test
  void plantedTilt_isFound_andLevelledByTheTurnBack() {
    Planting planted = new Planting(Math.toRadians(12), Math.toRadians(70));
    Rotation turn = Standing.turn(planted);
    List<Point3> points = new ArrayList<>();
    for (int n = 0; n < 7; n++) {
      Point3 flat = new Point3(0, 0, -0.01).plus(Direction3.ofAzimuth(n * 0.9).times(0.03));
      points.add(RootedTree.turned(flat, turn));
    }
    RootPlane plane = RootPlane.of(points, weights(7)).orElseThrow();
    assertThat(plane.tilt()).isCloseTo(Math.toRadians(12), within(CLOSE));
    assertThat(plane.fallsToward()).isCloseTo(Math.toRadians(70), within(CLOSE));
    assertThat(plane.unevenness()).isLessThan(CLOSE);
    Rotation back = Standing.turn(plane.levelling());
    for (Point3 point : points) {
      assertThat(RootedTree.turned(point, back).z()).isCloseTo(-0.01, within(CLOSE));
    }
  }

  /** No other planting angle leaves the starts nearer to one height. */
  @Test
  void levellingAngle_isTheBestOfAll() {
    List<Point3> points = ring(6, 0.004);
    List<Double> weights = weights(6);
    Planting best = RootPlane.of(points, weights).orElseThrow().levelling();
    double least = heights(points, weights, best);
    for (int n = 0; n < 2000; n++) {
      Planting other =
          new Planting(
              best.tilt() + 0.1 * random.nextGaussian(),
              best.towardAzimuth() + 0.3 * random.nextGaussian());
      assertThat(heights(points, weights, other)).isGreaterThanOrEqualTo(least);
    }
  }

  private static double heights(List<Point3> points, List<Double> weights, Planting planting) {
    Rotation turn = Standing.turn(planting);
    double all = 0;
    double first = 0;
    double second = 0;
    for (int n = 0; n < points.size(); n++) {
      double z = RootedTree.turned(points.get(n), turn).z();
      all += weights.get(n);
      first += weights.get(n) * z;
      second += weights.get(n) * z * z;
    }
    return second - first * first / all;
  }

  @Test
  void twoRoots_orRootsOnALine_haveNoPlane() {
    assertThat(RootPlane.of(ring(2, 0), weights(2))).isEmpty();
    assertThat(RootPlane.of(List.of(), List.of())).isEmpty();
    List<Point3> line = new ArrayList<>();
    for (int n = 0; n < 5; n++) {
      line.add(new Point3(0.01 * n, 0.02 * n, -0.003 * n));
    }
    assertThat(RootPlane.of(line, weights(5))).isEmpty();
  }
}
