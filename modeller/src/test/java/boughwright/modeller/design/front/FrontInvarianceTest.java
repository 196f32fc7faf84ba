// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.design.sight.Ellipsoid;
import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.FrontMeasure;
import boughwright.modeller.tree.Skeleton;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * What is measured turns, mirrors and scales with the tree, and is the same however it is asked.
 */
class FrontInvarianceTest {
  private static final double ROUNDING = 1e-9;

  private static final Eye EYE = Eye.LEVEL;

  /** What changes its sign in a mirror that swaps left and right. */
  private static final Set<FrontMeasure> SIDED = EnumSet.of(FrontMeasure.BALANCE_SIDES);

  private static final List<Vector3> PADS =
      List.of(new Vector3(0.1, 0.02, 0.2), new Vector3(-0.03, -0.1, 0.28));

  private static FrontGauge gauge(
      Stand stand, UnaryOperator<Vector3> move, double scale, boolean clothed) {
    Skeleton skeleton = stand.moved(move, scale);
    List<Ellipsoid> pads =
        PADS.stream()
            .map(
                at ->
                    Ellipsoid.pad(
                        Point3.ORIGIN.plus(move.apply(at).times(scale)),
                        0.04 * scale,
                        0.015 * scale))
            .toList();
    FrontSubject bare = Stand.bare(skeleton);
    return new FrontGauge(clothed ? bare.withFoliage(pads) : bare, EYE);
  }

  private static FrontPose pose(Random random) {
    return new FrontPose(
        6.3 * random.nextDouble(), random.nextDouble() - 0.5, random.nextDouble() - 0.5);
  }

  private static void requireSame(FrontReading found, FrontReading asked, boolean mirrored) {
    for (FrontMeasure measure : FrontMeasure.values()) {
      assertThat(found.value(measure).isPresent())
          .as(measure.name())
          .isEqualTo(asked.value(measure).isPresent());
      if (asked.value(measure).isPresent()) {
        double sign = mirrored && SIDED.contains(measure) ? -1 : 1;
        assertThat(found.raw(measure))
            .as(measure.name())
            .isCloseTo(sign * asked.raw(measure), within(ROUNDING));
      }
    }
  }

  @Test
  void turningTheTree_turnsTheAnswer() {
    Random random = new Random(11);
    for (int n = 0; n < 25; n++) {
      Stand stand = Stand.random(random);
      double angle = 6.3 * random.nextDouble();
      // A turn that carries azimuth a to azimuth a + angle: azimuths count against the z axis.
      Rotation turn = Rotation.about(Direction3.UP, -angle);
      FrontGauge before = gauge(stand, UnaryOperator.identity(), 1, n % 2 == 0);
      FrontGauge after = gauge(stand, turn::turn, 1, n % 2 == 0);
      for (int k = 0; k < 6; k++) {
        FrontPose pose = pose(random);
        FrontPose turned =
            new FrontPose(pose.azimuth() + angle, pose.tiltRight(), pose.tiltToward());
        requireSame(after.read(turned), before.read(pose), false);
      }
    }
  }

  @Test
  void mirroringTheTree_mirrorsTheAnswer() {
    Random random = new Random(12);
    for (int n = 0; n < 25; n++) {
      Stand stand = Stand.random(random);
      FrontGauge before = gauge(stand, UnaryOperator.identity(), 1, n % 2 == 0);
      FrontGauge after = gauge(stand, at -> new Vector3(-at.x(), at.y(), at.z()), 1, n % 2 == 0);
      for (int k = 0; k < 6; k++) {
        FrontPose pose = pose(random);
        FrontPose mirrored = new FrontPose(-pose.azimuth(), -pose.tiltRight(), pose.tiltToward());
        requireSame(after.read(mirrored), before.read(pose), true);
      }
    }
  }

  @Test
  void scalingTheTree_changesNothing() {
    Random random = new Random(13);
    for (int n = 0; n < 25; n++) {
      Stand stand = Stand.random(random);
      double scale = Math.exp(2 * random.nextGaussian());
      FrontGauge before = gauge(stand, UnaryOperator.identity(), 1, n % 2 == 0);
      FrontGauge after = gauge(stand, UnaryOperator.identity(), scale, n % 2 == 0);
      for (int k = 0; k < 6; k++) {
        FrontPose pose = pose(random);
        requireSame(after.read(pose), before.read(pose), false);
      }
    }
  }

  @Test
  void reading_isTheSameWhetherSeenBeforeOrNot_andInAnyThread() {
    Random random = new Random(14);
    FrontGauge gauge = gauge(Stand.random(random), UnaryOperator.identity(), 1, true);
    List<FrontPose> poses = random.ints(200).mapToObj(n -> pose(random)).toList();
    List<FrontReading> alone = poses.stream().map(gauge::read).toList();
    List<FrontReading> together = poses.parallelStream().map(gauge::read).toList();
    assertThat(together).isEqualTo(alone);
    for (int n = 0; n < poses.size(); n++) {
      Seen seen = gauge.seen(EYE.towardViewer(poses.get(n)));
      assertThat(gauge.read(poses.get(n), seen)).isEqualTo(alone.get(n));
    }
  }

  @Test
  void whatIsSeen_isTheSameForPosesWithOneLineOfSight() {
    Random random = new Random(15);
    FrontGauge gauge = new FrontGauge(Stand.bare(Stand.random(random).skeleton()), Eye.LEVEL);
    for (int n = 0; n < 50; n++) {
      FrontPose pose = pose(random);
      Direction3 toward = Eye.LEVEL.towardViewer(pose);
      // The same line of sight reached without a tilt to the side.
      FrontPose plain =
          new FrontPose(Math.atan2(-toward.x(), -toward.y()), 0, Math.asin(toward.z()));
      Direction3 same = Eye.LEVEL.towardViewer(plain);
      assertThat(same.angleTo(toward)).isLessThan(1e-7);
      for (FrontMeasure measure : FrontMeasure.values()) {
        Seen seen = gauge.seen(toward);
        if (seen.value(measure).isPresent()) {
          assertThat(gauge.read(plain).raw(measure))
              .as(measure.name())
              .isCloseTo(seen.value(measure).getAsDouble(), within(1e-5));
        }
      }
    }
  }
}
