// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import static boughwright.physics.trial.TreeText.text;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.physics.trial.HardwareFinding.Level;
import boughwright.physics.trial.HardwareFinding.Topic;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said of the tackle of a trial, against figures worked out beside each check. */
class HardwareTest {
  @TempDir Path folder;

  /** An upright trunk 60 mm thick with a level branch 24 mm thick and 300 mm long. */
  private static TreeText tree() {
    return new TreeText(6, 0.4)
        .segment(
            "\"id\": \"t\", \"parent\": null, \"kind\": \"trunk\", \"start_mm\": [0,0,0],"
                + " \"end_mm\": [0, 0, 400], \"caliper_start_mm\": 60, \"caliper_end_mm\": 40")
        .segment(
            "\"id\": \"b\", \"parent\": \"t\", \"along\": 0.6, \"kind\": \"branch\", \"joins\":"
                + " \"union\", \"end_mm\": [300, 0, 300], \"caliper_start_mm\": 24,"
                + " \"caliper_end_mm\": 16");
  }

  private static TreeText lined(TreeText tree, String line) {
    return tree.proposal(
        text("\"guy_lines\": [{\"id\": \"g\", \"segment\": \"b\", \"along\": 0.8, %s}]", line));
  }

  private Hardware hardware(TreeText tree) {
    TrialRequest request = tree.request(folder);
    TrialResult result = Trial.run(request);
    assertThat(result.outcome().holds()).as(result.outcome().where()).isTrue();
    return Hardware.of(request, result);
  }

  private LineHardware line(String line) {
    return hardware(lined(tree(), line)).lines().get(0);
  }

  private static HardwareFinding of(LineHardware line, Topic topic) {
    return line.findings().stream().filter(f -> f.topic() == topic).findFirst().orElseThrow();
  }

  private static final String DOWN = "\"anchor_mm\": [240, 0, 0], ";

  /** 0.8 mm of stainless wire: 0.503 mm² at 515 MPa, ends 0.7, safety 3: 60 N; doubled 121 N. */
  @ParameterizedTest
  @CsvSource({"50, FINE", "90, FINE", "130, NO"})
  void strand_isHeldAgainstItsSafeLoad(double tension, Level level) {
    LineHardware line =
        line(
            text("\"tension_N\": %s, ", tension)
                + DOWN
                + "\"strand\": {\"material\": \"stainless\", \"gauge_mm\": 0.8, \"count\": 2}");
    double safe = 2 * Math.PI / 4 * 0.64 * 515 * 0.7 / 3;
    assertThat(line.safeLoad().getAsDouble()).isCloseTo(safe, within(1e-6 * safe));
    assertThat(of(line, Topic.STRAND).level()).isEqualTo(level);
    assertThat(of(line, Topic.STRAND).sentence())
        .contains("121 N", tension < 100 ? "longer" : "cord");
  }

  /** Two wires of 0.5 mm bear 47 N, two cords of 1 mm bear 31 N: 200 MPa, knot 0.5, safety 5. */
  @Test
  void lineOfNothingKnown_isGivenOneThatBears() {
    HardwareFinding finding = of(line(DOWN + "\"tension_N\": 30"), Topic.STRAND);
    assertThat(finding.level()).isEqualTo(Level.LOOK);
    assertThat(finding.sentence())
        .contains("30 N", "stainless wire of 2 × 0.5 mm", "cord of 2 × 1.0 mm");
  }

  /** A wire under a higher stress than it yields at is no longer what it was. */
  @Test
  void aluminiumLine_stretchesForGood_beforeItBreaks() {
    // 4 mm: 12.57 mm², yields at 251 N, safe to 176 N
    LineHardware line =
        line(
            DOWN + "\"tension_N\": 20, \"strand\": {\"material\": \"aluminium\", \"gauge_mm\": 4}");
    assertThat(of(line, Topic.STRAND).level()).isEqualTo(Level.FINE);
    assertThat(line.breakingLoad().getAsDouble()).isCloseTo(Math.PI * 4 * 60 * 0.7, within(1e-6));
  }

  /** Turns in all are sqrt(L² - H²) / (pi d), L being the strand of the gap as it was tied. */
  @ParameterizedTest
  @CsvSource({"twist-at-end, 1, 0", "twist-at-end, 1, 3", "twist-in-middle, 2, 0"})
  void turns_areThoseOfTheHelix(String kind, int twice, double in) {
    LineHardware line =
        line(
            DOWN
                + text(
                    "\"shorten_mm\": 2, \"strand\": {\"material\": \"stainless\", \"gauge_mm\": 0.8,"
                        + " \"count\": 2}, \"tightener\": {\"kind\": \"%s\", \"turns_in\": %s}",
                    kind, in));
    double gap = Math.hypot(0.0, 0.288);
    double round = twice * Math.PI * 0.0008;
    double strand = Math.sqrt(gap * gap + round * round * in * in);
    double span = gap - 0.002;
    double turns = Math.sqrt(strand * strand - span * span) / round;
    LineHardware.Turns found = line.turns().orElseThrow();
    assertThat(found.toAdd()).isCloseTo(turns - in, within(1e-3));
    assertThat(found.in()).isEqualTo(in);
    // winding may use half of 35 % elongation: sine of the lay is the root of 0.175
    double most = strand * Math.sqrt(0.175) / round;
    assertThat(found.left().getAsDouble()).isCloseTo(most - turns, within(2e-3));
    assertThat(of(line, Topic.TIGHTENING).level()).isEqualTo(Level.FINE);
  }

  @Test
  void twistThatCannotGoSoFar_isSaid_withHowFarItGoes() {
    LineHardware line =
        line(
            DOWN
                + "\"shorten_mm\": 60, \"strand\": {\"material\": \"cord\", \"gauge_mm\": 4,"
                + " \"count\": 2}, \"tightener\": {\"kind\": \"twist-in-middle\", \"turns_in\": 5}");
    HardwareFinding finding = of(line, Topic.TIGHTENING);
    assertThat(line.turns().orElseThrow().left().getAsDouble()).isPositive();
    LineHardware thin =
        line(
            DOWN
                + "\"shorten_mm\": 60, \"strand\": {\"material\": \"stainless\", \"gauge_mm\": 1.5,"
                + " \"count\": 2}, \"tightener\": {\"kind\": \"twist-at-end\"}");
    assertThat(finding.level()).isEqualTo(Level.FINE);
    assertThat(of(thin, Topic.TIGHTENING).level()).isEqualTo(Level.NO);
    assertThat(of(thin, Topic.TIGHTENING).sentence()).contains("turnbuckle");
  }

  @Test
  void turnbuckle_isTurnedByTheShorteningOverItsThread() {
    LineHardware line =
        line(
            DOWN
                + "\"shorten_mm\": 6, \"tightener\": {\"kind\": \"turnbuckle\", \"mm_per_turn\": 1.5,"
                + " \"turns_in\": 2}");
    assertThat(line.turns().orElseThrow().toAdd()).isCloseTo(4, within(1e-6));
    assertThat(of(line, Topic.TIGHTENING).sentence()).contains("4.0 turns", "6.0 mm");
  }

  /** At 0.8 along, the branch is 17.6 mm thick: 60 N want 60 / (0.5 × 17.6) = 6.8 mm. */
  @ParameterizedTest
  @CsvSource({"3, NO", "5, LOOK", "10, FINE"})
  void pad_isHeldAgainstWhatBarkBears(double millimetres, Level level) {
    LineHardware line = line(DOWN + text("\"tension_N\": 60, \"pad_length_mm\": %s", millimetres));
    assertThat(line.padNeeded()).isCloseTo(60 / (0.5e6 * 0.0176), within(1e-9));
    assertThat(line.padPressure().getAsDouble())
        .isCloseTo(60 / (millimetres * 17.6) * 1e6, within(1.0));
    assertThat(of(line, Topic.PAD).level()).isEqualTo(level);
  }

  /** A pad that slides comes to rest against a side branch 0.03 x 306 mm = 9 mm further in. */
  @ParameterizedTest
  @CsvSource({"0.77, 5, LOOK", "0.77, 2, NO", "0.70, 5, NO", "0.83, 5, NO"})
  void sideBranch_stopsAPadThatSlides(double along, double caliper, Level level) {
    TreeText forked =
        tree()
            .segment(
                text(
                        "\"id\": \"c\", \"parent\": \"b\", \"along\": %s, \"kind\": \"branch\","
                            + " \"joins\": \"union\", \"end_mm\": [250, 80, 320],",
                        along)
                    + text("\"caliper_start_mm\": %s, \"caliper_end_mm\": 2", caliper));
    LineHardware found =
        hardware(lined(forked, "\"anchor_mm\": [60, 0, 40], \"tension_N\": 10")).lines().get(0);
    HardwareFinding slides =
        found.findings().stream()
            .filter(f -> f.sentence().contains("slides toward the trunk"))
            .findFirst()
            .orElseThrow();
    assertThat(slides.level()).isEqualTo(level);
    if (level == Level.LOOK) {
      assertThat(slides.sentence()).contains("fork of c, 9 mm on");
    }
  }

  /** An anchor square below stays; one 45 degrees in toward the trunk slides that way. */
  @Test
  void pad_slidesTowardTheSideTheLineLeans() {
    List<String> square =
        line(DOWN + "\"tension_N\": 1").findings().stream().map(HardwareFinding::sentence).toList();
    assertThat(square).anyMatch(words -> words.contains("the pad stays"));
    LineHardware leaning = line("\"anchor_mm\": [40, 0, 80], \"tension_N\": 1");
    assertThat(Math.toDegrees(leaning.offSquare())).isBetween(50.0, 65.0);
    assertThat(leaning.findings())
        .anyMatch(f -> f.level() == Level.NO && f.sentence().contains("slides toward the trunk"));
  }

  @Test
  void slackLine_isToldWhatWouldPull() {
    LineHardware line = line(DOWN + "\"length_mm\": 400");
    assertThat(line.findings()).hasSize(1);
    assertThat(line.findings().get(0).sentence()).contains("hangs loose", "288.0 mm");
  }

  @Test
  void thickBranchPulledDown_hasItsCrotchBound_butNotOnePulledUp() {
    assertThat(of(line(DOWN + "\"tension_N\": 30"), Topic.CROTCH).sentence())
        .contains("\"b\"", "bind");
    assertThat(line("\"anchor_mm\": [240, 0, 700], \"tension_N\": 30").findings())
        .noneMatch(f -> f.topic() == Topic.CROTCH);
  }

  @ParameterizedTest
  @CsvSource({"screw, thread", "rim, root or trunk stub", "peg, wet soil", "frame, fastened"})
  void fixedAnchor_isJudgedByWhatItIs(String kind, String says) {
    LineHardware line = line(DOWN + "\"tension_N\": 30, \"anchor_kind\": \"" + kind + "\"");
    assertThat(of(line, Topic.ANCHOR).sentence()).contains(says);
    TreeText listed =
        tree()
            .tree(
                "\"anchors\": [{\"id\": \"e\", \"at_mm\": [240, 0, 1], \"kind\": \""
                    + kind
                    + "\"}]");
    LineHardware found = hardware(lined(listed, DOWN + "\"tension_N\": 30")).lines().get(0);
    assertThat(of(found, Topic.ANCHOR)).isEqualTo(of(line, Topic.ANCHOR));
  }

  @Test
  void anchorBranch_givesWay_asTheTrialHasIt() {
    TreeText tied =
        tree()
            .segment(
                "\"id\": \"c\", \"parent\": \"t\", \"along\": 0.1, \"kind\": \"branch\","
                    + " \"end_mm\": [250, 0, 40], \"caliper_start_mm\": 8, \"caliper_end_mm\": 6");
    TreeText lined =
        lined(tied, "\"anchor\": {\"segment\": \"c\", \"along\": 0.9}, \"tension_N\": 8");
    HardwareFinding finding = of(hardware(lined).lines().get(0), Topic.ANCHOR);
    assertThat(finding.level()).isEqualTo(Level.LOOK);
    assertThat(finding.sentence()).contains("\"c\"", "gives way by");
  }

  private static String container(String rest) {
    return "\"container\": {\"length_mm\": 400, \"width_mm\": 300, \"depth_mm\": 100" + rest + "}";
  }

  /**
   * 40 N straight down at 240 mm from the middle, 40 mm beyond the end of the box: it weighs enough
   * with 40 × 0.04 / (9.81 × 0.2) = 0.8 kg. The peg stands far below, so the branch hardly tilts
   * the line.
   */
  @ParameterizedTest
  @CsvSource({"0.5, NO", "1.0, LOOK", "9, FINE"})
  void lineToTheGround_isHeldAgainstTheMass(double mass, Level level) {
    TreeText tree = tree().tree(container(text(", \"mass_kg\": %s", mass)));
    Hardware found =
        hardware(
            lined(
                tree,
                "\"anchor_mm\": [240, 0, -9000], \"tension_N\": 40, \"anchor_kind\": \"frame\""));
    assertThat(found.standing()).hasSize(1);
    assertThat(found.standing().get(0).level()).isEqualTo(level);
    assertThat(found.standing().get(0).sentence()).contains("0.8 kg", "tips over one end");
  }

  @Test
  void containerOfUnknownMass_isToldTheMassNeeded() {
    String peg = "\"anchor_mm\": [240, 0, -9000], \"tension_N\": 40, \"anchor_kind\": \"frame\"";
    HardwareFinding weigh = hardware(lined(tree().tree(container("")), peg)).standing().get(0);
    assertThat(weigh.level()).isEqualTo(Level.LOOK);
    assertThat(weigh.sentence()).contains("Weigh it", "1.2 kg");
    HardwareFinding none = hardware(lined(tree(), peg)).standing().get(0);
    assertThat(none.sentence()).contains("Give the container's sizes", "1.2 kg");
  }

  /**
   * The line runs down to the far rim and would go on to 157 mm beyond that end at floor height:
   * the root mass needs 40 × 0.54 × 0.157 / (9.81 × 0.2) = 1.7 kg.
   */
  @Test
  void lineToTheRim_pullsTheRootMass_unlessItIsTiedIn() {
    String rim = "\"anchor_mm\": [-200, 0, 0], \"tension_N\": 40, \"anchor_kind\": \"rim\"";
    HardwareFinding light =
        hardware(lined(tree().tree(container(", \"mass_kg\": 0.3")), rim)).standing().get(0);
    assertThat(light.level()).isEqualTo(Level.NO);
    HardwareFinding tied =
        hardware(lined(tree().tree(container(", \"tied_in\": true")), rim)).standing().get(0);
    assertThat(tied.level()).isEqualTo(Level.FINE);
  }

  @Test
  void findings_haveTheWorstFirst() {
    Hardware hardware = hardware(lined(tree(), DOWN + "\"tension_N\": 60, \"pad_length_mm\": 3"));
    List<Level> levels = hardware.findings().stream().map(HardwareFinding::level).toList();
    assertThat(levels).isSortedAccordingTo((a, b) -> b.compareTo(a)).contains(Level.NO);
  }
}
