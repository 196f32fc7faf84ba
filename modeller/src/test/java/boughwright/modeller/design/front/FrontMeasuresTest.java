// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.design.shape.TrunkLine;
import boughwright.modeller.design.shape.WoodLeft;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.FrontMeasure;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Skeleton;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Each measure of a front against a tree so plain that its value can be written down. */
class FrontMeasuresTest {
  private static final double ROUNDING = 1e-9;

  /** The azimuth of a viewer who stands on the side of x. */
  private static final double FROM_X = -Math.PI / 2;

  private static double at(Stand stand, double azimuth, FrontMeasure measure) {
    return stand.gauge().read(FrontPose.upright(azimuth)).value(measure).orElseThrow();
  }

  private static double tilted(Stand stand, double right, double toward, FrontMeasure measure) {
    return stand.gauge().read(new FrontPose(0, right, toward)).value(measure).orElseThrow();
  }

  /** Straight up, 0.3 m, caliper 40 mm at the base and 20 mm at the apex, in three pieces. */
  private static Stand post() {
    return Stand.trunk(new Vector3(0, 0, 0.1), 0.04, 0.035)
        .add("t0", "t1", Kind.TRUNK, new Vector3(0, 0, 0.2), 0.035, 0.027)
        .add("t1", "t2", Kind.TRUNK, new Vector3(0, 0, 0.3), 0.027, 0.02);
  }

  /** A trunk that goes out along x by 30 mm and comes back, in two pieces of 50 mm. */
  private static Stand elbow() {
    return Stand.trunk(new Vector3(0.03, 0, 0.04), 0.01, 0.01)
        .add("t0", "t1", Kind.TRUNK, new Vector3(0, 0, 0.08), 0.01, 0.01);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 20, 70, 130, 180, 250})
  void movement_isThatOfAnElbow_asFarAsItIsSeenFromTheSide(double degrees) {
    // A triangle of height 30 mm on a line of 100 mm has the root mean square 30 / sqrt 3.
    double azimuth = Math.toRadians(degrees);
    double asked = 0.03 / Math.sqrt(3) / 0.1 * Math.abs(Math.cos(azimuth));
    assertThat(at(elbow(), azimuth, FrontMeasure.TRUNK_MOVEMENT))
        .isCloseTo(asked, within(ROUNDING));
  }

  @Test
  void bulge_isPositiveTowardTheViewer() {
    // The mean of a triangle is half its height.
    double asked = 0.015 / 0.1;
    assertThat(at(elbow(), FROM_X, FrontMeasure.TRUNK_BULGE)).isCloseTo(asked, within(ROUNDING));
    assertThat(at(elbow(), -FROM_X, FrontMeasure.TRUNK_BULGE)).isCloseTo(-asked, within(ROUNDING));
    assertThat(at(elbow(), 0, FrontMeasure.TRUNK_BULGE)).isCloseTo(0, within(ROUNDING));
  }

  @Test
  void taper_isWhatTheTrunkLoses_lessWhereItIsForeshortened() {
    assertThat(at(post(), 1, FrontMeasure.TAPER)).isCloseTo(0.5, within(ROUNDING));
    assertThat(tilted(post(), 0, 0.4, FrontMeasure.TAPER))
        .isCloseTo(0.5 * Math.cos(0.4), within(ROUNDING));
    assertThat(tilted(post(), 0.4, 0, FrontMeasure.TAPER)).isCloseTo(0.5, within(ROUNDING));
  }

  @Test
  void taper_isNotSeenBehindABranch() {
    Stand hidden = post().addAt("t0", 0.01, "b", Kind.BRANCH, new Vector3(0, -0.1, 0.0), 0.01);
    Stand screen = hidden.add("b", "c", Kind.BRANCH, new Vector3(0, -0.1, 0.2), 0.08, 0.08);
    // The screen stands before all of the trunk but its top: only the last piece is seen, in part.
    double seen = at(screen, 0, FrontMeasure.TAPER);
    assertThat(seen).isBetween(0.0, 0.007 / 0.04);
    assertThat(at(screen, Math.PI, FrontMeasure.TAPER)).isCloseTo(0.5, within(ROUNDING));
    assertThat(at(screen, 0, FrontMeasure.BRANCHES_AT_VIEWER)).isGreaterThan(0.9);
  }

  @Test
  void rootBase_isAsWideAsItsRootsReachAside() {
    Stand stand =
        post()
            .addAt("t0", 0, "r1", Kind.ROOT, new Vector3(0.1, 0, 0), 0.02)
            .addAt("t0", 0, "r2", Kind.ROOT, new Vector3(-0.1, 0, 0), 0.02);
    assertThat(at(stand, 0, FrontMeasure.ROOT_BASE_WIDTH)).isCloseTo(0.22 / 0.04, within(ROUNDING));
    assertThat(at(stand, Math.PI / 4, FrontMeasure.ROOT_BASE_WIDTH))
        .isCloseTo((0.2 / Math.sqrt(2) + 0.02) / 0.04, within(ROUNDING));
    assertThat(at(stand, FROM_X, FrontMeasure.ROOT_BASE_WIDTH)).isCloseTo(1, within(ROUNDING));
  }

  @Test
  void rootThatDips_countsAsFarAsItsBackShows() {
    // The upper side of a cylinder of radius r that dips by an angle b is level with the soil
    // r / tan b along its axis.
    double dip = Math.atan(0.2);
    Stand stand = post().addAt("t0", 0, "r", Kind.ROOT, new Vector3(0.1, 0, -0.02), 0.02);
    double reach = 0.01 / Math.tan(dip) * Math.cos(dip) + 0.01;
    assertThat(at(stand, 0, FrontMeasure.ROOT_BASE_WIDTH))
        .isCloseTo((0.02 + reach) / 0.04, within(ROUNDING));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 30, 60, 85, 100, 180, 300})
  void wound_isSeenByTheCosineOfHowFarItFacesAway(double degrees) {
    double angle = Math.toRadians(degrees);
    Stand stand =
        Stand.trunk(new Vector3(0, 0, 0.3), 0.1, 0.1)
            .wound("t0", 0.5, new Vector3(0, -1, 0), 0.002);
    double area = Math.PI / 4 * 0.002 * 0.0026;
    double asked = area * Math.max(0, Math.cos(angle)) / (0.3 * 0.1);
    assertThat(at(stand, angle, FrontMeasure.WOUNDS)).isCloseTo(asked, within(1e-3 * area / 0.03));
  }

  /** A flat face shows its area times the cosine between its normal and the line of sight. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 25, 60, 85, 100, 180, 300})
  void faceOfACutBranch_isSeenByTheCosineOfHowFarItFacesAway(double degrees) {
    double angle = Math.toRadians(degrees);
    Skeleton skeleton =
        Stand.trunk(new Vector3(0, 0, 0.3), 0.1, 0.1)
            .addAt("t0", 0.5, "b", Kind.BRANCH, new Vector3(0, -0.2, 0.15), 0.02)
            .skeleton();
    double area = Math.PI / 4 * 0.02 * 0.02;
    double asked = area * Math.max(0, Math.cos(angle)) / (0.3 * 0.1);
    assertThat(cut(skeleton, "b", 0, new FrontPose(angle, 0, 0)))
        .isCloseTo(asked, within(ROUNDING));
  }

  @Test
  void faceOfTheTrunkCutAcross_isSeenFromAbove_andHiddenBehindABranch() {
    Stand stand =
        Stand.trunk(new Vector3(0, 0, 0.2), 0.04, 0.04)
            .add("t0", "t1", Kind.TRUNK, new Vector3(0, 0, 0.4), 0.04, 0.02);
    double area = Math.PI / 4 * 0.04 * 0.04;
    double profile = 0.2 * 0.04;
    Skeleton bare = stand.skeleton();
    assertThat(cut(bare, "t1", 0, FrontPose.upright(0.3))).isCloseTo(0, within(ROUNDING));
    assertThat(cut(bare, "t1", 0, new FrontPose(0.3, 0, 0.4)))
        .isCloseTo(area * Math.sin(0.4) / profile, within(ROUNDING));
    assertThat(cut(bare, "t1", 0, new FrontPose(0.3, 0, -0.4))).isZero();
    Skeleton screened =
        stand
            .addAt("t0", 0.5, "b", Kind.BRANCH, new Vector3(0, -0.1, 0.1), 0.01)
            .add("b", "c", Kind.BRANCH, new Vector3(0, -0.1, 0.35), 0.08, 0.08)
            .skeleton();
    assertThat(cut(screened, "t1", 0, new FrontPose(0, 0, 0.4))).isZero();
    assertThat(cut(screened, "t1", 0, new FrontPose(Math.PI, 0, 0.4)))
        .isCloseTo(area * Math.sin(0.4) / profile, within(ROUNDING));
  }

  private static double cut(Skeleton skeleton, String segment, double along, FrontPose pose) {
    WoodLeft wood = new WoodLeft(new Cutting(skeleton, List.of(new Spot(segment, along))));
    FrontSubject subject = FrontSubject.bare(wood, TrunkLine.of(wood, Optional.empty()));
    return new FrontGauge(subject, Eye.LEVEL).read(pose).raw(FrontMeasure.WOUNDS);
  }

  @Test
  void wound_isNotSeenBehindABranch() {
    Stand stand =
        post()
            .wound("t1", 0.5, new Vector3(0, -1, 0), 0.01)
            .addAt("t0", 0.5, "b", Kind.BRANCH, new Vector3(0, -0.1, 0.05), 0.01);
    assertThat(at(stand, 0, FrontMeasure.WOUNDS)).isGreaterThan(0);
    Stand screen = stand.add("b", "c", Kind.BRANCH, new Vector3(0, -0.1, 0.25), 0.03, 0.03);
    assertThat(at(screen, 0, FrontMeasure.WOUNDS)).isZero();
  }

  @Test
  void branch_pointsByTheFourthPowerOfTheCosine() {
    Stand stand = post().addAt("t0", 0.9, "b", Kind.BRANCH, new Vector3(0, -0.2, 0.09), 0.002);
    for (int degrees = 0; degrees < 90; degrees += 15) {
      double angle = Math.toRadians(degrees);
      // A branch this thin hides next to nothing of the trunk.
      assertThat(at(stand, angle, FrontMeasure.BRANCHES_AT_VIEWER))
          .isCloseTo(Math.pow(Math.cos(angle), 4), within(0.02));
    }
    assertThat(at(stand, Math.PI, FrontMeasure.BRANCHES_AT_VIEWER)).isZero();
  }

  @Test
  void branchInTheCrown_mayPoint() {
    Stand stand = post().addAt("t2", 0.9, "b", Kind.BRANCH, new Vector3(0, -0.2, 0.29), 0.01);
    assertThat(at(stand, 0, FrontMeasure.BRANCHES_AT_VIEWER)).isZero();
  }

  @Test
  void apexLean_isTheTiltTowardTheViewer() {
    assertThat(tilted(post(), 0, 0.2, FrontMeasure.APEX_LEAN)).isCloseTo(0.2, within(ROUNDING));
    assertThat(tilted(post(), 0, -0.3, FrontMeasure.APEX_LEAN)).isCloseTo(-0.3, within(ROUNDING));
    assertThat(tilted(post(), 0.3, 0, FrontMeasure.APEX_LEAN)).isCloseTo(0, within(ROUNDING));
  }

  @Test
  void sides_areEqualWithEqualBranches_andPositiveToTheRight() {
    Stand stand = post().addAt("t1", 0, "b", Kind.BRANCH, new Vector3(0.1, 0, 0.1), 0.01);
    assertThat(at(stand, 0, FrontMeasure.BALANCE_SIDES)).isBetween(0.95, 1.0);
    assertThat(at(stand, Math.PI, FrontMeasure.BALANCE_SIDES)).isBetween(-1.0, -0.95);
    stand.addAt("t1", 0.5, "c", Kind.BRANCH, new Vector3(-0.1, 0, 0.15), 0.01);
    double both = Math.hypot(0.1, 0.05) - 0.1;
    assertThat(at(stand, 0, FrontMeasure.BALANCE_SIDES)).isBetween(-1.2 * both / 0.2, 0.0);
  }

  @Test
  void overBase_isHowFarTheMiddleOfMassMovesWithTheTilt() {
    // The middle of mass of a cone's stump by summing thin discs.
    double volume = 0;
    double moment = 0;
    int discs = 100_000;
    for (int k = 0; k < discs; k++) {
      double height = 0.3 * (k + 0.5) / discs;
      double radius = 0.02 - 0.015 * height / 0.3;
      volume += radius * radius;
      moment += radius * radius * height;
    }
    Stand cone = Stand.trunk(new Vector3(0, 0, 0.3), 0.04, 0.01);
    assertThat(tilted(cone, 0.3, 0, FrontMeasure.BALANCE_OVER_BASE))
        .isCloseTo(moment / volume * Math.sin(0.3) / 0.3, within(1e-8));
    assertThat(at(cone, 2, FrontMeasure.BALANCE_OVER_BASE)).isCloseTo(0, within(ROUNDING));
  }

  @Test
  void depth_isHalfWithAsMuchBehindAsBefore() {
    Stand stand = post().addAt("t1", 0, "b", Kind.BRANCH, new Vector3(0, 0.1, 0.1), 0.01);
    assertThat(at(stand, 0, FrontMeasure.DEPTH)).isGreaterThan(0.98);
    assertThat(at(stand, Math.PI, FrontMeasure.DEPTH)).isLessThan(0.02);
    stand.addAt("t1", 0, "c", Kind.BRANCH, new Vector3(0, -0.1, 0.1), 0.01);
    assertThat(at(stand, 0, FrontMeasure.DEPTH)).isCloseTo(0.5, within(ROUNDING));
  }

  @Test
  void firstBranch_isTheLowestSeen() {
    Stand stand =
        post()
            .addAt("t1", 0.05, "b", Kind.BRANCH, new Vector3(0.1, 0, 0.11), 0.01)
            .addAt("t1", 0.95, "c", Kind.BRANCH, new Vector3(-0.1, 0, 0.2), 0.01)
            .addAt("t2", 0.5, "d", Kind.BRANCH, new Vector3(-0.1, 0, 0.25), 0.01);
    assertThat(at(stand, 0, FrontMeasure.FIRST_BRANCH)).isCloseTo(0.35, within(0.01));
  }

  @Test
  void deadwood_isSeenWhereTheTrunkDoesNotHideIt() {
    Stand stand = post().addAt("t1", 0, "d", Kind.DEADWOOD, new Vector3(0.1, 0, 0.1), 0.01);
    double outside = 0.01 * (0.1 - 0.0175) + Math.PI / 2 * 0.005 * 0.005;
    double profile = 0.1 * (0.04 + 0.035 + 0.035 + 0.027 + 0.027 + 0.02) / 2;
    assertThat(at(stand, 0, FrontMeasure.DEADWOOD))
        .isCloseTo(outside / profile, within(0.05 * outside / profile));
    assertThat(at(stand, -FROM_X, FrontMeasure.DEADWOOD)).isZero();
  }

  @Test
  void openSpace_isWhatATriangleHoldsBesideItsTwoSides() {
    // A thin trunk and a thin branch, square to each other: a triangle with two thin sides.
    Stand stand =
        Stand.trunk(new Vector3(0, 0, 0.3), 0.004, 0.004)
            .addAt("t0", 0, "b", Kind.BRANCH, new Vector3(0.2, 0, 0), 0.004);
    double wood = 0.004 * (0.3 + 0.2);
    double hull = 0.3 * 0.2 / 2 + 0.002 * (0.3 + 0.2 + Math.hypot(0.3, 0.2));
    assertThat(at(stand, 0, FrontMeasure.NEGATIVE_SPACE)).isCloseTo(1 - wood / hull, within(0.005));
    assertThat(at(stand, FROM_X, FrontMeasure.NEGATIVE_SPACE)).isLessThan(0.05);
  }
}
