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
 * Hollow, slotted and dead-faced segments from a tree file, against beam formulas for small
 * movements: P L^3 / (3 E I) (Gere and Timoshenko, Mechanics of Materials, appendix; from memory).
 */
class ShapedSegmentTest {
  private static final double MOE = 6e9;
  private static final double LENGTH = 0.2;
  private static final double RADIUS = 0.006;

  /** The slot, 1 mm wide and 4 mm deep. */
  private static final double WIDTH = 0.001;

  private static final double DEPTH = 0.004;
  private static final double PULL = 0.05 * 9.80665;

  /** What small-movement formulas leave out here, and what a slot's grid does, relative. */
  private static final double SMALL_MOVEMENT = 2e-3;

  private static final String ELASTIC =
      "{\"name\": \"test wood\", \"moe_GPa\": 6, \"response\": \"elastic\"}";

  private static final String REAL =
      "{\"name\": \"test wood\", \"moe_GPa\": 6, \"response\": \"fibre\"}";

  @TempDir Path folder;

  private TrialResult level(String wood, String shape, double mass) {
    return new TreeText(wood)
        .segment(
            "\"id\": \"t\", \"parent\": null, \"kind\": \"trunk\", \"start_mm\": [0,0,0],"
                + " \"end_mm\": [200, 0, 0], \"caliper_start_mm\": 12, \"caliper_end_mm\": 12"
                + shape)
        .proposal(
            text("\"hung_weights\": [{\"segment\": \"t\", \"along\": 1, \"mass_kg\": %s}]", mass))
        .tryIn(folder);
  }

  private static Point3 tip(TrialResult result) {
    assertThat(result.outcome().holds()).as(result.outcome().where()).isTrue();
    return result.segments().get(0).end();
  }

  private static double drop(double second) {
    return PULL * Math.pow(LENGTH, 3) / (3 * MOE * second);
  }

  @Test
  void hollowSegment_bendsAsATube() {
    double second = Math.PI / 4 * (Math.pow(RADIUS, 4) - Math.pow(0.004, 4));
    Point3 tip = tip(level(ELASTIC, ", \"hollow_mm\": 8", 0.05));
    assertThat(-tip.z()).isCloseTo(drop(second), within(SMALL_MOVEMENT * drop(second)));
    assertThat(tip.y()).isCloseTo(0, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "180, 0", "90, 1", "270, -1"})
  void slot_onTopOrAside_softensWhereItLies(double round, int side) {
    double second = side == 0 ? secondAlong() : secondAcross();
    String slot = text(", \"slot\": {\"round_deg\": %s, \"width_mm\": 1, \"depth_mm\": 4}", round);
    Point3 tip = tip(level(ELASTIC, slot, 0.05));
    // the strip's outer end is round: a hundredth of it
    assertThat(-tip.z()).isCloseTo(drop(second), within(5 * SMALL_MOVEMENT * drop(second)));
    assertThat(tip.y()).isCloseTo(0, within(1e-6));
  }

  /** Second moment with the slot in the plane of bending: a strip less, about the centroid. */
  private static double secondAlong() {
    double area = Math.PI * RADIUS * RADIUS - WIDTH * DEPTH;
    double middle = RADIUS - DEPTH / 2;
    double strip = WIDTH * (DEPTH * middle * middle + Math.pow(DEPTH, 3) / 12);
    double shift = Math.pow(WIDTH * DEPTH * middle, 2) / area;
    return Math.PI / 4 * Math.pow(RADIUS, 4) - strip - shift;
  }

  /** With the slot beside it. */
  private static double secondAcross() {
    return Math.PI / 4 * Math.pow(RADIUS, 4) - DEPTH * Math.pow(WIDTH, 3) / 12;
  }

  @Test
  void slantingSlot_pushesTheBranchAside() {
    String slot = ", \"slot\": {\"round_deg\": 45, \"width_mm\": 1, \"depth_mm\": 4}";
    String other = ", \"slot\": {\"round_deg\": 315, \"width_mm\": 1, \"depth_mm\": 4}";
    Point3 one = tip(level(ELASTIC, slot, 0.05));
    Point3 two = tip(level(ELASTIC, other, 0.05));
    // at 45 degrees half of the difference of the two flexibilities
    double aside = (drop(secondAlong()) - drop(secondAcross())) / 2;
    assertThat(Math.abs(one.y())).isCloseTo(aside, within(0.05 * aside));
    assertThat(one.y()).isCloseTo(-two.y(), within(1e-8));
  }

  @Test
  void deadFaceBelow_doesNotFlowAndIsNotLiving() {
    TrialResult whole = level(REAL, "", 1.8);
    TrialResult faced =
        level(
            REAL,
            ", \"dead_face\": {\"round_deg\": 180, \"width_deg\": 150, \"depth_mm\": 3}",
            1.8);
    assertThat(-tip(faced).z()).isLessThan(-tip(whole).z());
    Peak peak = faced.peak().orElseThrow();
    assertThat(peak.compressionStrain()).isLessThan(peak.bendingStrain());
    Peak green = whole.peak().orElseThrow();
    assertThat(green.compressionStrain()).isGreaterThan(green.bendingStrain());
    assertThat(green.tensionStrain() + green.compressionStrain())
        .isCloseTo(2 * green.bendingStrain(), within(1e-12));
  }
}
