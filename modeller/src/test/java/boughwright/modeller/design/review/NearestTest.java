// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Point3;
import java.util.Random;
import org.junit.jupiter.api.Test;

class NearestTest {
  /** A search on a grid, refined: no closed form in common with what is tested. */
  private static double searched(Nearest.Stick a, Nearest.Stick b) {
    double s = 0.5;
    double t = 0.5;
    double step = 0.5;
    double best = at(a, s).distance(at(b, t));
    while (step > 1e-9) {
      double bestS = s;
      double bestT = t;
      for (int i = -10; i <= 10; i++) {
        for (int j = -10; j <= 10; j++) {
          double u = Math.min(1, Math.max(0, s + i * step / 10));
          double v = Math.min(1, Math.max(0, t + j * step / 10));
          double distance = at(a, u).distance(at(b, v));
          if (distance < best) {
            best = distance;
            bestS = u;
            bestT = v;
          }
        }
      }
      boolean still = bestS == s && bestT == t;
      s = bestS;
      t = bestT;
      step = still ? step / 2 : step;
    }
    return best;
  }

  private static Point3 at(Nearest.Stick stick, double part) {
    return stick.from().toward(stick.to(), part);
  }

  private static Point3 point(Random random) {
    return new Point3(random.nextDouble(), random.nextDouble(), random.nextDouble());
  }

  @Test
  void distance_isThatOfASearchOverBothSticks() {
    Random random = new Random(7);
    for (int n = 0; n < 200; n++) {
      Nearest.Stick a = new Nearest.Stick(point(random), point(random));
      Nearest.Stick b = new Nearest.Stick(point(random), point(random));
      Nearest near = Nearest.of(a, b);
      assertThat(near.distance()).isCloseTo(searched(a, b), within(1e-6));
      Point3 onA = at(a, near.first() / a.from().distance(a.to()));
      Point3 onB = at(b, near.second() / b.from().distance(b.to()));
      assertThat(onA.distance(onB)).isCloseTo(near.distance(), within(1e-9));
    }
  }

  @Test
  void sticksSideBySide_areAsFarAsTheyAreApart() {
    Nearest.Stick a = new Nearest.Stick(new Point3(0, 0, 0), new Point3(1, 0, 0));
    Nearest.Stick b = new Nearest.Stick(new Point3(0.2, 0.3, 0), new Point3(0.8, 0.3, 0));
    assertThat(Nearest.of(a, b).distance()).isCloseTo(0.3, within(1e-12));
  }
}
