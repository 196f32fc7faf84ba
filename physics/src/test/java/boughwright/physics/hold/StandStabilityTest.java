// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.tree.Container;
import boughwright.physics.hold.StandStability.Pull;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Against levers worked out by hand, and against a block on its two bearing edges. */
class StandStabilityTest {
  private static final double G = 9.80665;
  private static final double ROUNDING = 1e-9;

  private static Container box(double turnDegrees) {
    return new Container(
        new Container.Size(0.4, 0.2, 0.1),
        0.05,
        -0.02,
        Math.toRadians(turnDegrees),
        -0.01,
        OptionalDouble.empty(),
        false,
        Map.of());
  }

  private static StandStability.Need need(Container box, Pull... pulls) {
    return new StandStability(box, List.of(pulls)).need();
  }

  /** 10 N sideways, 0.31 m above the floor, over half the width of 0.1 m: 3.16 kg. */
  @Test
  void pullAcross_tipsOverTheLongSide() {
    StandStability.Need need = need(box(0), new Pull(new Point3(0, 0, 0.2), new Vector3(0, 10, 0)));
    assertThat(need.mass()).isCloseTo(10 * 0.31 / (G * 0.1), within(ROUNDING));
    assertThat(need.how()).isEqualTo("tips over one side");
  }

  /** The same pull along the box has twice the lever against it, and 90 degrees turn swaps both. */
  @Test
  void pullAlong_needsHalf_andTurningTheBoxSwapsItsSides() {
    Pull along = new Pull(new Point3(0, 0, 0.2), new Vector3(10, 0, 0));
    assertThat(need(box(0), along).mass()).isCloseTo(10 * 0.31 / (G * 0.2), within(ROUNDING));
    assertThat(need(box(90), along).mass()).isCloseTo(10 * 0.31 / (G * 0.1), within(ROUNDING));
  }

  @Test
  void pullUpThroughTheMiddle_lifts_andDownHoldsIt() {
    Point3 middle = new Point3(0.05, -0.02, 0.3);
    assertThat(need(box(0), new Pull(middle, new Vector3(0, 0, 20))).mass())
        .isCloseTo(20 / G, within(ROUNDING));
    assertThat(need(box(0), new Pull(middle, new Vector3(0, 0, -20))).mass()).isZero();
  }

  /**
   * A block of the mass found is just in balance: the floor bears it, and nothing it bears lies
   * beyond the edge. The bearing force's place along the pull is found from all moments about the
   * origin.
   */
  @Test
  void massFound_isJustInBalance_forPullsFromAnySide() {
    Random random = new Random(3);
    int judged = 0;
    for (int n = 0; n < 200; n++) {
      Point3 at = new Point3(spread(random), spread(random), 0.1 + random.nextDouble() * 0.4);
      Vector3 force = new Vector3(20 * spread(random), 20 * spread(random), 5 * spread(random));
      double mass = need(box(0), new Pull(at, force)).mass();
      double bears = mass * G - force.z();
      if (mass == 0 || bears < 1e-6) {
        continue;
      }
      judged++;
      // moments about the x and y axes through the floor's middle place the floor's push
      double x = at.x() - 0.05;
      double y = at.y() + 0.02;
      double z = at.z() + 0.11;
      double pushX = (z * force.x() - x * force.z()) / bears;
      double pushY = (z * force.y() - y * force.z()) / bears;
      double beyond = Math.max(Math.abs(pushX) / 0.2, Math.abs(pushY) / 0.1);
      assertThat(beyond).isCloseTo(1, within(1e-6));
    }
    assertThat(judged).isGreaterThan(100);
  }

  private static double spread(Random random) {
    return random.nextDouble() * 2 - 1;
  }
}
