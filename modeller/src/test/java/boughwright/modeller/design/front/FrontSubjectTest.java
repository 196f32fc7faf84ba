// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.design.shape.TrunkLine;
import boughwright.modeller.design.shape.WoodLeft;
import boughwright.modeller.design.sight.Ellipsoid;
import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.FrontMeasure;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Skeleton;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What can and cannot be said of plain trees, and what of a tree is looked at. */
class FrontSubjectTest {
  private static final FrontPose LEVEL = FrontPose.upright(0.3);

  private static Set<FrontMeasure> said(FrontReading reading) {
    Set<FrontMeasure> said = EnumSet.noneOf(FrontMeasure.class);
    for (FrontMeasure measure : FrontMeasure.values()) {
      if (reading.value(measure).isPresent()) {
        said.add(measure);
      }
    }
    return said;
  }

  private static Stand plain() {
    return Stand.trunk(new Vector3(0, 0, 0.3), 0.04, 0.02);
  }

  @Test
  void onePiece_saysNothingOfMovementBranchesOrRoots() {
    FrontReading reading = plain().gauge().read(LEVEL);
    assertThat(said(reading))
        .containsExactlyInAnyOrder(
            FrontMeasure.TAPER,
            FrontMeasure.WOUNDS,
            FrontMeasure.APEX_LEAN,
            FrontMeasure.BALANCE_OVER_BASE);
    assertThat(reading.raw(FrontMeasure.WOUNDS)).isZero();
  }

  @Test
  void treeWithoutRootsAndDeadwood_saysAllButThese() {
    Stand stand =
        plain()
            .add("t0", "t1", Kind.TRUNK, new Vector3(0, 0.01, 0.4), 0.02, 0.01)
            .addAt("t0", 0.5, "b", Kind.BRANCH, new Vector3(0.1, 0, 0.15), 0.01);
    assertThat(said(stand.gauge().read(LEVEL)))
        .isEqualTo(
            EnumSet.complementOf(EnumSet.of(FrontMeasure.ROOT_BASE_WIDTH, FrontMeasure.DEADWOOD)));
  }

  @Test
  void everythingIsSaidOfAWholeTree() {
    FrontReading reading = Stand.random(new Random(3)).gauge().read(LEVEL);
    assertThat(said(reading)).isEqualTo(EnumSet.allOf(FrontMeasure.class));
  }

  @Test
  void symmetricTree_looksTheSameFromItsFourSides() {
    Stand stand = plain().add("t0", "t1", Kind.TRUNK, new Vector3(0, 0, 0.4), 0.02, 0.01);
    for (int side = 0; side < 4; side++) {
      Vector3 out = Direction3.ofAzimuth(side * Math.PI / 2).times(0.1);
      stand.addAt("t0", 0.5, "b" + side, Kind.BRANCH, out.plus(new Vector3(0, 0, 0.15)), 0.01);
      stand.addAt("t0", 0, "r" + side, Kind.ROOT, out.plus(new Vector3(0, 0, -0.01)), 0.01);
    }
    FrontGauge gauge = stand.gauge();
    FrontReading first = gauge.read(LEVEL);
    for (int side = 1; side < 4; side++) {
      FrontReading other = gauge.read(FrontPose.upright(0.3 + side * Math.PI / 2));
      for (FrontMeasure measure : FrontMeasure.values()) {
        assertThat(other.raw(measure)).isCloseTo(first.raw(measure), within(1e-9));
      }
    }
    assertThat(first.raw(FrontMeasure.TRUNK_MOVEMENT)).isCloseTo(0, within(1e-12));
    assertThat(first.raw(FrontMeasure.BALANCE_SIDES)).isCloseTo(0, within(1e-9));
    assertThat(first.raw(FrontMeasure.DEPTH)).isCloseTo(0.5, within(1e-9));
  }

  /** All that is left of it in the picture is the face it is to leave, as large as it is today. */
  @Test
  void sacrificeWood_isLeftOut_butForTheFaceItLeaves() {
    Stand stand = Stand.random(new Random(8));
    FrontReading without = stand.gauge().read(LEVEL);
    stand
        .addAt("t2", 0.5, "s", Kind.SACRIFICE, new Vector3(0, -0.4, 0.3), 0.03)
        .addAt("s", 0.5, "sb", Kind.BRANCH, new Vector3(0, -0.4, 0.1), 0.02);
    FrontReading with = stand.gauge().read(LEVEL);
    for (FrontMeasure measure : FrontMeasure.values()) {
      if (measure != FrontMeasure.WOUNDS) {
        assertThat(with.raw(measure)).as("%s", measure).isEqualTo(without.raw(measure));
      }
    }
    WoodLeft cut = new WoodLeft(new Cutting(stand.skeleton(), List.of(new Spot("s", 0))));
    FrontSubject subject = FrontSubject.bare(cut, TrunkLine.of(cut, Optional.empty()));
    double afterwards = new FrontGauge(subject, Eye.LEVEL).read(LEVEL).raw(FrontMeasure.WOUNDS);
    assertThat(afterwards).isGreaterThan(without.raw(FrontMeasure.WOUNDS));
    assertThat(with.raw(FrontMeasure.WOUNDS)).isCloseTo(afterwards, within(1e-12));
  }

  @Test
  void cutWood_isNotLookedAt() {
    Skeleton skeleton =
        plain()
            .wound("t0", 0.2, new Vector3(0, -1, 0), 0.01)
            .wound("t0", 0.8, new Vector3(0, -1, 0), 0.01)
            .addAt("t0", 0.5, "b", Kind.BRANCH, new Vector3(0.1, 0, 0.15), 0.01)
            .skeleton();
    WoodLeft cut = new WoodLeft(new Cutting(skeleton, List.of(new Spot("t0", 0.4))));
    FrontSubject subject = FrontSubject.bare(cut, TrunkLine.of(cut, Optional.empty()));
    assertThat(subject.wounds()).hasSize(1);
    FrontReading reading = new FrontGauge(subject, Eye.LEVEL).read(FrontPose.upright(0));
    assertThat(reading.value(FrontMeasure.DEPTH)).isEmpty();
    assertThat(reading.raw(FrontMeasure.WOUNDS)).isGreaterThan(0);
    TrunkLine whole = TrunkLine.of(new WoodLeft(skeleton), Optional.empty());
    WoodLeft none = new WoodLeft(new Cutting(skeleton, List.of(new Spot("t0", 0))));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> FrontSubject.bare(none, whole))
        .withMessageContaining("cut away");
  }

  @Test
  void foliage_hidesTheTrunk_andFillsTheOutline() {
    Stand stand =
        plain()
            .add("t0", "t1", Kind.TRUNK, new Vector3(0, 0, 0.4), 0.02, 0.01)
            .addAt("t0", 0.5, "b", Kind.BRANCH, new Vector3(0.1, 0, 0.15), 0.01);
    FrontSubject bare = Stand.bare(stand.skeleton());
    Ellipsoid pad = Ellipsoid.pad(new Point3(0, -0.1, 0.2), 0.09, 0.25);
    FrontReading winter = new FrontGauge(bare, Eye.LEVEL).read(LEVEL);
    FrontReading clothed = new FrontGauge(bare.withFoliage(List.of(pad)), Eye.LEVEL).read(LEVEL);
    assertThat(clothed.raw(FrontMeasure.TAPER)).isLessThan(0.5 * winter.raw(FrontMeasure.TAPER));
    assertThat(clothed.raw(FrontMeasure.NEGATIVE_SPACE))
        .isLessThan(0.5 * winter.raw(FrontMeasure.NEGATIVE_SPACE));
  }

  @Test
  void hangingBranch_isSeenBelowTheSoilLine() {
    // Wood past the rim hangs free; only roots and the trunk base go into the soil.
    Stand stand =
        plain()
            .addAt("t0", 0.2, "b", Kind.BRANCH, new Vector3(0.2, 0, 0.0), 0.01)
            .add("b", "c", Kind.DEADWOOD, new Vector3(0.25, 0, -0.2), 0.01, 0.01);
    assertThat(stand.gauge().read(LEVEL).raw(FrontMeasure.DEADWOOD)).isGreaterThan(0.1);
  }

  @Test
  void eye_looksDownFromAbove() {
    assertThat(Eye.at(0.5, 1, 0.5).elevation()).isCloseTo(Math.atan(0.25), within(1e-12));
    assertThat(Eye.at(0.2, 2, 0.4)).isEqualTo(Eye.LEVEL);
    // A tree tilted toward the viewer is seen as from higher up.
    Direction3 level = new Eye(0.3).towardViewer(FrontPose.upright(1.1));
    Direction3 tilted = Eye.LEVEL.towardViewer(new FrontPose(1.1, 0, 0.3));
    assertThat(level.angleTo(tilted)).isLessThan(1e-9);
    assertThat(level.angleTo(Direction3.ofAzimuth(1.1, 0.3))).isLessThan(1e-9);
    assertThatIllegalArgumentException().isThrownBy(() -> Eye.at(0.5, 0, 0.5));
  }

  @Test
  void readingGivenByItsValues_holdsThem() {
    FrontReading reading = new FrontReading(LEVEL, Map.of(FrontMeasure.TAPER, 0.4));
    assertThat(reading.value(FrontMeasure.TAPER)).hasValue(0.4);
    assertThat(said(reading)).containsExactly(FrontMeasure.TAPER);
    assertThat(reading).isEqualTo(new FrontReading(LEVEL, Map.of(FrontMeasure.TAPER, 0.4)));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new FrontReading(LEVEL, Map.of(FrontMeasure.TAPER, Double.NaN)));
  }
}
