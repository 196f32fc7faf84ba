// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import static boughwright.physics.trial.TreeText.text;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Levers and stretching lines in a trial, against beam formulas for small movements (Gere and
 * Timoshenko, Mechanics of Materials, appendix; from memory): a tip force P moves the tip by P L³ /
 * (3 E I), a tip moment M by M L² / (2 E I).
 */
class TackleTrialTest {
  private static final double MOE = 6e9;
  private static final double LENGTH = 0.2;
  private static final double RADIUS = 0.005;

  /** What small-movement formulas leave out at these loads, relative. */
  private static final double SMALL_MOVEMENT = 2e-3;

  @TempDir Path folder;

  private TrialResult level(String line) {
    return new TreeText(6, 0.4)
        .segment(
            "\"id\": \"t\", \"parent\": null, \"kind\": \"trunk\", \"start_mm\": [0,0,0],"
                + " \"end_mm\": [200, 0, 0], \"caliper_start_mm\": 10, \"caliper_end_mm\": 10")
        .proposal(
            text("\"guy_lines\": [{\"id\": \"g\", \"segment\": \"t\", \"along\": 1, %s}]", line))
        .tryIn(folder);
  }

  private static double bending() {
    return MOE * Math.PI / 4 * Math.pow(RADIUS, 4);
  }

  /** A line to an anchor 100 m below a lever of 80 mm: a force, and a moment of 80 mm times it. */
  @Test
  void lever_addsItsMomentToTheTip() {
    TrialResult result =
        level("\"anchor_mm\": [280, 0, -100000], \"tension_N\": 0.2, \"lever_mm\": 80");
    double drop =
        0.2 * Math.pow(LENGTH, 3) / (3 * bending())
            + 0.2 * 0.08 * LENGTH * LENGTH / (2 * bending());
    assertThat(-result.segments().get(0).end().z()).isCloseTo(drop, within(SMALL_MOVEMENT * drop));
    assertThat(result.lines().get(0).pad().x()).isCloseTo(0.28, within(1e-3));
  }

  /** Branch and line are two springs in a row: the shortening goes to both. */
  @Test
  void strand_takesItsShareOfTheShortening() {
    String line = "\"anchor_mm\": [200, 0, -2000], \"shorten_mm\": 1";
    String cord = ", \"strand\": {\"material\": \"cord\", \"gauge_mm\": 1}";
    double stiff = 3 * bending() / Math.pow(LENGTH, 3);
    double area = Math.PI / 4 * 1e-6;
    // cord: 2.5 GPa, from memory, as the table of materials has it; its length is the given one
    double compliance = (2.0 - 0.001) / (2.5e9 * area);
    double tension = 0.001 / (1 / stiff + compliance);
    TrialResult soft = level(line + cord);
    assertThat(soft.lines().get(0).tension()).isCloseTo(tension, within(SMALL_MOVEMENT * tension));
    assertThat(-soft.segments().get(0).end().z())
        .isCloseTo(tension / stiff, within(SMALL_MOVEMENT * tension / stiff));
    double unyielding = level(line).lines().get(0).tension();
    assertThat(unyielding).isCloseTo(0.001 * stiff, within(SMALL_MOVEMENT * 0.001 * stiff));
    assertThat(soft.assumptions()).noneMatch(words -> words.contains("do not stretch"));
  }
}
