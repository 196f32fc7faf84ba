// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.TreeStyle;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

class FrontSearchTest {
  /** Every 12 degrees, so that a look at every pose takes no time. */
  private static final FrontGrid COARSE =
      new FrontGrid(FrontRange.square(Math.toRadians(24)), 30, 2, 2);

  private static final Eye EYE = Eye.LEVEL;

  private static final double SAME = 1e-9;

  private static FrontGauge gauge(long seed, UnaryOperator<Vector3> move, double scale) {
    return new FrontGauge(Stand.bare(Stand.random(new Random(seed)).moved(move, scale)), EYE);
  }

  private static FrontGauge gauge(long seed) {
    return gauge(seed, UnaryOperator.identity(), 1);
  }

  private static Fronts search(FrontGauge gauge, TreeStyle style) {
    return new FrontSearch(gauge, FrontRules.of(style), COARSE)
        .run(FrontWatch.NOBODY)
        .orElseThrow();
  }

  @Test
  void search_findsWhatALookAtEveryPoseFinds() {
    for (int seed = 0; seed < 20; seed++) {
      TreeStyle style = TreeStyle.values()[seed % TreeStyle.values().length];
      FrontGauge gauge = gauge(seed);
      Fronts all =
          new FrontSweep(gauge, FrontRules.of(style), COARSE).run(FrontWatch.NOBODY).orElseThrow();
      Fronts found = search(gauge, style);
      assertThat(FrontBench.poses(found)).as("tree " + seed).isEqualTo(FrontBench.poses(all));
      for (int azimuth = 0; azimuth < COARSE.azimuths(); azimuth++) {
        assertThat(found.map().best(azimuth))
            .isCloseTo(all.map().best(azimuth), within(2 * found.blur()));
      }
    }
  }

  @Test
  void turnedTree_hasItsFrontsTurned() {
    int steps = 7;
    Rotation turn = Rotation.about(Direction3.UP, -steps * COARSE.azimuthStep());
    for (int seed = 0; seed < 2; seed++) {
      Fronts before = search(gauge(seed), TreeStyle.UPRIGHT);
      Fronts after = search(gauge(seed, turn::turn, 1), TreeStyle.UPRIGHT);
      requireSame(after, before, azimuth -> azimuth + steps * COARSE.azimuthStep(), 1);
    }
  }

  @Test
  void mirroredTree_hasItsFrontsMirrored() {
    for (int seed = 0; seed < 2; seed++) {
      Fronts before = search(gauge(seed), TreeStyle.UPRIGHT);
      Fronts after =
          search(gauge(seed, at -> new Vector3(-at.x(), at.y(), at.z()), 1), TreeStyle.UPRIGHT);
      requireSame(after, before, azimuth -> -azimuth, -1);
    }
  }

  @Test
  void scaledTree_hasTheSameFronts() {
    for (int seed = 0; seed < 2; seed++) {
      Fronts before = search(gauge(seed), TreeStyle.UPRIGHT);
      requireSame(
          search(gauge(seed, UnaryOperator.identity(), 3.7), TreeStyle.UPRIGHT),
          before,
          azimuth -> azimuth,
          1);
    }
  }

  private static void requireSame(
      Fronts found, Fronts before, java.util.function.DoubleUnaryOperator round, int side) {
    assertThat(found.fronts()).hasSameSizeAs(before.fronts());
    for (int n = 0; n < before.fronts().size(); n++) {
      Front one = found.fronts().get(n);
      Front other = before.fronts().get(n);
      double asked = round.applyAsDouble(other.pose().azimuth());
      assertThat(Math.IEEEremainder(one.pose().azimuth() - asked, 2 * Math.PI))
          .isCloseTo(0, within(SAME));
      assertThat(one.pose().tiltRight()).isCloseTo(side * other.pose().tiltRight(), within(SAME));
      assertThat(one.pose().tiltToward()).isCloseTo(other.pose().tiltToward(), within(SAME));
      assertThat(one.score().total()).isCloseTo(other.score().total(), within(SAME));
    }
  }

  @Test
  void progress_growsToTheEnd_andStoppingGivesNothing() {
    AtomicInteger told = new AtomicInteger();
    FrontWatch stopping =
        new FrontWatch() {
          @Override
          public void part(double done) {
            assertThat(done).isBetween(0.0, 1.0);
            told.incrementAndGet();
          }

          @Override
          public boolean isStopped() {
            return told.get() > 5;
          }
        };
    FrontRules rules = FrontRules.of(TreeStyle.UPRIGHT);
    Optional<Fronts> search = new FrontSearch(gauge(1), rules, COARSE).run(stopping);
    assertThat(search).isEmpty();
    assertThat(told.get()).isGreaterThan(5);
    told.set(0);
    assertThat(new FrontSweep(gauge(1), rules, COARSE).run(stopping)).isEmpty();
  }

  @Test
  void grid_holdsEveryAzimuthAndTiltOfTheRange() {
    FrontGrid grid = FrontGrid.of(FrontRange.usual(TreeStyle.UPRIGHT));
    assertThat(List.of(grid.azimuths(), grid.sidewaysCount(), grid.forwardCount()))
        .containsExactly(180, 51, 51);
    assertThat(grid.size()).isEqualTo(180L * 51 * 51);
    assertThat(Math.toDegrees(grid.tiltRight(0))).isCloseTo(-25, within(SAME));
    assertThat(Math.toDegrees(grid.tiltToward(50))).isCloseTo(25, within(SAME));
    assertThat(FrontGrid.of(FrontRange.square(0)).size()).isEqualTo(180);
    assertThat(FrontGrid.of(FrontRange.usual(TreeStyle.CASCADE)).sidewaysCount()).isEqualTo(181);
  }
}
