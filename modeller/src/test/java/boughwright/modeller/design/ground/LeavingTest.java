// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.design.shape.Frustum;
import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LeavingTest {
  private static final double CLOSE = 1e-9;

  private static Frustum upright(double startRadius, double endRadius) {
    return new Frustum(0, Point3.ORIGIN, new Point3(0, 0, 0.1), startRadius, endRadius);
  }

  @Test
  void rootBelowTheBase_leavesTheTrunksLine_atTheRadiusOfTheBase() {
    Leaving leaving = new Leaving(upright(0.03, 0.02));
    Point3 end = Point3.ORIGIN.plus(Direction3.ofAzimuth(1, Math.toRadians(-20)).times(0.1));
    assertThat(leaving.fraction(Point3.ORIGIN, end))
        .isCloseTo(0.03 / Math.cos(Math.toRadians(20)) / 0.1, within(CLOSE));
  }

  /** Level at height h of a cone: its radius there. */
  @Test
  void levelRoot_leavesAtTheRadiusOfTheCone() {
    Leaving leaving = new Leaving(upright(0.03, 0.02));
    Point3 from = new Point3(0, 0, 0.05);
    assertThat(leaving.fraction(from, new Point3(0.1, 0, 0.05))).isCloseTo(0.25, within(CLOSE));
  }

  /** A line up at 45 degrees on the cone r = 0.03 - 0.1 h leaves where h = 0.03 - 0.1 h. */
  @Test
  void steepRoot_leavesWhereTheConeThins() {
    Leaving leaving = new Leaving(upright(0.03, 0.02));
    assertThat(leaving.fraction(Point3.ORIGIN, new Point3(0.1, 0, 0.1)))
        .isCloseTo(0.3 / 1.1, within(CLOSE));
  }

  @Test
  void rootThatEndsInside_neverLeaves() {
    Leaving leaving = new Leaving(upright(0.03, 0.02));
    assertThat(leaving.fraction(Point3.ORIGIN, new Point3(0.01, 0, -0.3))).isEqualTo(Leaving.NEVER);
  }

  /** Steps along the line, and looks at each with the definition alone. */
  @Test
  void anyLine_leavesWhereSteppingAlongItSays() {
    Random random = new Random(5);
    int left = 0;
    for (int n = 0; n < 300; n++) {
      Frustum trunk =
          new Frustum(
              0,
              point(random, 0.02),
              point(random, 0.1),
              0.01 + 0.04 * random.nextDouble(),
              0.01 + 0.04 * random.nextDouble());
      Point3 from = trunk.start().toward(trunk.end(), random.nextDouble());
      Point3 to = from.plus(point(random, 0.1).minus(Point3.ORIGIN));
      double found = new Leaving(trunk).fraction(from, to);
      double stepped = stepped(trunk, from, to);
      if (stepped == Leaving.NEVER) {
        assertThat(found).isGreaterThan(1 - 2e-4);
      } else {
        assertThat(found).isCloseTo(stepped, within(2e-4));
        left++;
      }
    }
    assertThat(left).isGreaterThan(100);
  }

  private static Point3 point(Random random, double size) {
    return new Point3(
        size * random.nextGaussian(), size * random.nextGaussian(), size * random.nextGaussian());
  }

  private static double stepped(Frustum trunk, Point3 from, Point3 to) {
    for (double t = 0; t <= 1; t += 1e-4) {
      Vector3 out = from.toward(to, t).minus(trunk.start());
      Vector3 axis = trunk.end().minus(trunk.start());
      double along = out.dot(axis) / axis.dot(axis);
      double part = Math.max(0, Math.min(1, along));
      double radius = (1 - part) * trunk.startRadius() + part * trunk.endRadius();
      if (out.cross(axis).norm() / axis.norm() > radius) {
        return t;
      }
    }
    return Leaving.NEVER;
  }
}
