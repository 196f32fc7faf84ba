// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import static boughwright.physics.trial.TreeText.text;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Point3;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a trial makes of a tree, against beam formulas for small movements (Gere and Timoshenko,
 * Mechanics of Materials, appendix on deflections of beams; from memory): tip load P L^3 / (3 E I),
 * own weight w L^4 / (8 E I), twist T L / (G J).
 */
class TrialTest {
  private static final double MOE = 6e9;
  private static final double SHEAR = 2.4e9;
  private static final double GRAVITY = 9.80665;

  /** What small-movement formulas leave out at the loads used here, relative. */
  private static final double SMALL_MOVEMENT = 1e-3;

  @TempDir Path folder;

  private static TreeText tree() {
    return new TreeText(MOE / 1e9, SHEAR / 1e9);
  }

  private static String segment(String id, String rest, double x, double y, double z) {
    return text("\"id\": \"%s\", %s, \"end_mm\": [%s, %s, %s]", id, rest, x, y, z);
  }

  private static String base(double x, double y, double z, double start, double end) {
    return segment("t", "\"parent\": null, \"kind\": \"trunk\", \"start_mm\": [0,0,0]", x, y, z)
        + calipers(start, end);
  }

  private static String calipers(double start, double end) {
    return text(", \"caliper_start_mm\": %s, \"caliper_end_mm\": %s", start, end);
  }

  private static String weight(String segment, double along, double mass) {
    return text(
        "\"hung_weights\": [{\"segment\": \"%s\", \"along\": %s, \"mass_kg\": %s}]",
        segment, along, mass);
  }

  private static double second(double radius) {
    return Math.PI * Math.pow(radius, 4) / 4;
  }

  @ParameterizedTest
  @CsvSource({"axis, 0", "surface, 20", "slanting, 28.284271247"})
  void branch_bendsFromTheBarkOfItsParent(String unions, double collar) {
    boolean slanting = unions.equals("slanting");
    double rise = slanting ? 150 : 0;
    TrialResult result =
        tree()
            .unions(slanting ? "surface" : unions)
            .segment(base(0, 0, 200, 40, 40))
            .segment(
                segment(
                        "b",
                        "\"parent\": \"t\", \"along\": 0.5, \"kind\": \"branch\"",
                        150,
                        0,
                        100 + rise)
                    + calipers(8, 8))
            .proposal(weight("b", 1, 0.02))
            .tryIn(folder);
    double length = Math.hypot(150, rise) / 1000 - collar / 1000;
    double across = slanting ? Math.sqrt(0.5) : 1;
    double drop = 0.02 * GRAVITY * across * Math.pow(length, 3) / (3 * MOE * second(0.004));
    Point3 tip = result.segment("b").orElseThrow().end();
    double moved = tip.distance(new Point3(0.150, 0, (100 + rise) / 1000));
    // the stout trunk gives way too: a weight times a lever bends it
    double lever = 0.02 * GRAVITY * 0.150;
    double trunkTurn = lever * 0.1 / (MOE * second(0.020));
    assertThat(moved).isCloseTo(drop, within(SMALL_MOVEMENT * drop + 2 * trunkTurn * 0.2));
    assertThat(result.peak().orElseThrow().fromUnion().orElseThrow()).isCloseTo(0, within(1e-6));
    assertThat(result.peak().orElseThrow().along())
        .isCloseTo(collar / 1000 / (length + collar / 1000), within(1e-6));
  }

  @Test
  void bark_carriesNothing() {
    TrialResult result =
        tree()
            .segment(base(200, 0, 0, 10, 10) + ", \"bark_mm\": 1")
            .proposal(weight("t", 1, 0.01))
            .tryIn(folder);
    double drop = 0.01 * GRAVITY * Math.pow(0.2, 3) / (3 * MOE * second(0.004));
    assertThat(-result.segments().get(0).end().z()).isCloseTo(drop, within(SMALL_MOVEMENT * drop));
    assertThat(result.peak().orElseThrow().bendingStrain())
        .isCloseTo(
            0.01 * GRAVITY * 0.2 * 0.004 / (MOE * second(0.004)), within(SMALL_MOVEMENT * 1e-3));
  }

  @Test
  void clampAtTheTip_bendsTheTreeFromThere() {
    // elastica at P L^2 / E I = 1: Bisshopp and Drucker 1945
    double mass = MOE * second(0.006) / 0.16 / GRAVITY;
    TrialResult result =
        tree()
            .segment(base(400, 0, 0, 12, 12))
            .plan("\"clamp\": {\"segment\": \"t\", \"along\": 1},")
            .proposal(weight("t", 0, mass))
            .tryIn(folder);
    SegmentTrial segment = result.segments().get(0);
    assertThat(segment.end().distance(new Point3(0.4, 0, 0))).isLessThan(1e-12);
    assertThat(segment.start().z()).isCloseTo(-0.4 * 0.3017207738, within(1e-5 * 0.4));
    assertThat(segment.start().x()).isCloseTo(0.4 * 0.0564332363, within(1e-5 * 0.4));
    assertThat(segment.endDirection().x()).isCloseTo(1, within(1e-12));
    assertThat(segment.startDirection().z()).isCloseTo(Math.sin(0.461351949712), within(1e-4));
    assertThat(result.peak().orElseThrow().along()).isCloseTo(1, within(1e-6));
    assertThat(result.peak().orElseThrow().side()).isEqualTo("top");
  }

  @Test
  void clampOnABranch_carriesTheTrunkAlong() {
    TrialResult result =
        tree()
            .segment(base(0, 0, 200, 20, 16))
            .segment(
                segment("b", "\"parent\": \"t\", \"along\": 0.5, \"kind\": \"branch\"", 120, 0, 100)
                    + calipers(10, 8))
            .plan("\"clamp\": {\"segment\": \"b\", \"along\": 0.8},")
            .proposal(weight("t", 1, 0.05))
            .tryIn(folder);
    SegmentTrial branch = result.segment("b").orElseThrow();
    assertThat(branch.end().distance(new Point3(0.12, 0, 0.1))).isLessThan(1e-12);
    SegmentTrial trunk = result.segment("t").orElseThrow();
    assertThat(trunk.start().z()).isLessThan(-5e-5);
    // the branch carries all of the trunk: force times lever to the clamp
    assertThat(branch.moment())
        .isCloseTo(0.05 * GRAVITY * 0.096, within(2 * SMALL_MOVEMENT * 0.047));
    assertThat(trunk.start().distance(trunk.end())).isLessThanOrEqualTo(0.2);
  }

  @Test
  void ownWeight_leavesTheMeasuredPoseAsItIs() {
    TrialResult result =
        tree()
            .segment(base(300, 40, 80, 14, 8))
            .segment(
                segment(
                        "b",
                        "\"parent\": \"t\", \"along\": 0.6, \"kind\": \"branch\"",
                        200,
                        160,
                        60)
                    + calipers(7, 4))
            .plan("\"self_weight\": true,")
            .proposal("\"hung_weights\": []")
            .tryIn(folder);
    assertThat(result.outcome().holds()).isTrue();
    assertThat(result.segment("t").orElseThrow().end().distance(new Point3(0.3, 0.04, 0.08)))
        .isLessThan(1e-7);
    assertThat(result.segment("b").orElseThrow().end().distance(new Point3(0.2, 0.16, 0.06)))
        .isLessThan(1e-7);
    assertThat(result.segment("t").orElseThrow().moment()).isGreaterThan(0.01);
  }

  @Test
  void ownWeightTurnedOver_movesTheTipByTwiceItsSag() {
    TrialResult result =
        tree()
            .segment(base(200, 0, 0, 12, 12))
            .plan(
                "\"self_weight\": true, \"stance\": \"planted\", \"planting\": {\"tilt_deg\": 180,"
                    + " \"toward_azimuth_deg\": 270},")
            .proposal("\"hung_weights\": []")
            .tryIn(folder);
    double perLength = OwnWeight.GREEN_DENSITY * Math.PI * 0.006 * 0.006 * GRAVITY;
    double sag = perLength * Math.pow(0.2, 4) / (8 * MOE * second(0.006));
    assertThat(result.segments().get(0).end().z())
        .isCloseTo(2 * sag, within(SMALL_MOVEMENT * 2 * sag));
  }

  @Test
  void cutWithOwnWeight_letsTheRestRise() {
    TrialResult result =
        tree()
            .segment(base(100, 0, 0, 12, 12))
            .segment(
                segment("u", "\"parent\": \"t\", \"kind\": \"trunk\"", 200, 0, 0)
                    + calipers(12, 12))
            .plan("\"self_weight\": true, \"cuts\": [{\"segment\": \"u\", \"along\": 0}],")
            .proposal("\"hung_weights\": []")
            .tryIn(folder);
    double weight = OwnWeight.GREEN_DENSITY * Math.PI * 0.006 * 0.006 * GRAVITY * 0.1;
    double stiffness = MOE * second(0.006);
    // a force W and a moment W 0.05 at the end of 0.1 m are taken away
    double rise =
        weight * Math.pow(0.1, 3) / (3 * stiffness) + weight * 0.05 * 0.01 / (2 * stiffness);
    assertThat(result.segment("u")).isEmpty();
    assertThat(result.segment("t").orElseThrow().end().z())
        .isCloseTo(rise, within(SMALL_MOVEMENT * rise));
  }

  @Test
  void padOnTheSide_twistsTheBranch() {
    // looking along +x with z up, clockwise from the top is toward -y: 90 degrees
    TrialResult result =
        tree()
            .segment(base(200, 0, 0, 12, 12))
            .proposal(
                "\"guy_lines\": [{\"id\": \"g\", \"segment\": \"t\", \"along\": 1,"
                    + " \"pad_round_deg\": 90, \"anchor_mm\": [200, -6, -100000], \"tension_N\": 2}]")
            .tryIn(folder);
    assertThat(result.segments().get(0).torsion()).isCloseTo(2 * 0.006, within(1e-3 * 0.012));
    double twist = 2 * 0.006 * 0.2 / (SHEAR * 2 * second(0.006));
    Point3 pad = result.lines().get(0).pad();
    Point3 axis = result.segments().get(0).end();
    assertThat(pad.minus(axis).norm()).isCloseTo(0.006, within(1e-9));
    assertThat((axis.z() - pad.z()) / 0.006).isCloseTo(twist, within(0.01 * twist));
  }

  @Test
  void looseLine_carriesNothing() {
    TrialResult result =
        tree()
            .segment(base(200, 0, 0, 12, 12))
            .proposal(
                "\"guy_lines\": [{\"id\": \"g\", \"segment\": \"t\", \"along\": 1, \"anchor_mm\":"
                    + " [200, 0, -100], \"length_mm\": 120}]")
            .tryIn(folder);
    LineTrial line = result.lines().get(0);
    assertThat(line.slack()).isTrue();
    assertThat(line.tension()).isZero();
    assertThat(line.length()).isCloseTo(0.1, within(1e-12));
    assertThat(result.peak()).isEmpty();
  }

  @Test
  void sideBranches_areCarriedAlong() {
    TrialResult result =
        tree()
            .segment(base(200, 0, 0, 12, 12))
            .segment(
                segment("b", "\"parent\": \"t\", \"along\": 1, \"kind\": \"branch\"", 200, 80, 0)
                    + calipers(6, 4))
            .proposal(weight("t", 1, 0.3))
            .tryIn(folder);
    SegmentTrial trunk = result.segment("t").orElseThrow();
    SegmentTrial branch = result.segment("b").orElseThrow();
    assertThat(branch.start().distance(trunk.end())).isLessThan(1e-12);
    assertThat(branch.end().minus(branch.start()).norm()).isCloseTo(0.08, within(1e-12));
    // bent in the vertical plane, a branch square to that plane keeps its direction
    assertThat(branch.endDirection().y()).isCloseTo(1, within(1e-9));
    assertThat(branch.bendingStrain()).isZero();
  }

  @Test
  void firstAssumption_saysThatTheWoodIsElastic() {
    TrialResult result =
        tree().segment(base(200, 0, 0, 12, 12)).proposal(weight("t", 1, 0.1)).tryIn(folder);
    assertThat(result.assumptions().get(0))
        .contains("straight-line elastic")
        .contains("no verdict");
    assertThat(result.held()).isEqualTo("weight");
  }
}
