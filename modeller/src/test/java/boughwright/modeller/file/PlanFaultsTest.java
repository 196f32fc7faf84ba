// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.problem.Problem;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files with one wrong thing in a plan each: what is said, and what it names. */
class PlanFaultsTest {
  private static final String PLAN = "/plans/0";
  private static final String PROPOSAL = PLAN + "/proposals/0";
  private static final String LINE = PROPOSAL + "/guy_lines/0";
  private static final String TIE = PROPOSAL + "/guy_lines/1";

  /** A changed file, the fault it must give and what that must name. */
  record Case(String name, String kind, Change file, List<String> mustName) {
    @Override
    public String toString() {
      return name;
    }
  }

  private static Case is(String name, String kind, Change file, String... mustName) {
    return new Case(name, kind, file, List.of(mustName));
  }

  private static Change set(String pointer, String json) {
    return Change.of().set(pointer, json);
  }

  static Stream<Case> lines() {
    return Stream.of(
        is(
            "anchor_inside_wood",
            "anchor-in-wood",
            set(LINE + "/anchor_mm", "[0,0,10]"),
            "\"g1\"",
            "\"s1\""),
        is(
            "anchor_unknown_segment",
            "unknown-segment",
            set(TIE + "/anchor/segment", "\"no-such-id\""),
            "\"g2\"",
            "no-such-id"),
        is("line_on_unknown_segment", "unknown-segment", set(LINE + "/segment", "\"s6\""), "s6"),
        is("line_length_negative", "out-of-range", set(LINE + "/length_mm", "-1"), "g1", "-1"),
        is("line_length_zero", "out-of-range", set(LINE + "/length_mm", "0"), "g1"),
        is(
            "line_same_ends",
            "same-ends",
            set(TIE + "/anchor", "{\"segment\":\"s3\",\"along\":0.5}"),
            "\"g2\""),
        is(
            "line_same_ends_at_a_node",
            "same-ends",
            set(TIE + "/anchor", "{\"segment\":\"s5\",\"along\":0}").set(TIE + "/along", "1"),
            "\"g2\""),
        is(
            "line_shortened_past_its_gap",
            "shortened-to-nothing",
            set(TIE + "/shorten_mm", "500"),
            "\"g2\"",
            "500 mm",
            "169.83 mm"),
        is("line_without_hold", "no-hold", Change.of().remove(LINE + "/length_mm"), "g1"),
        is(
            "line_with_two_holds",
            "two-holds",
            set(LINE + "/tension_N", "3"),
            "tension_N and length_mm"),
        is("line_without_anchor", "no-anchor", Change.of().remove(LINE + "/anchor_mm"), "g1"),
        is(
            "line_with_two_anchors",
            "two-anchors",
            set(LINE + "/anchor", "{\"segment\":\"s1\",\"along\":0}"),
            "g1"),
        is("line_id_twice", "duplicate-id", set(TIE + "/id", "\"g1\""), "\"g1\""));
  }

  static Stream<Case> parts() {
    return Stream.of(
        is("plan_id_twice", "duplicate-id", set("/plans/-", "{\"id\":\"a\"}"), "\"a\""),
        is(
            "proposal_id_twice",
            "duplicate-id",
            set(PLAN + "/proposals/-", "{\"id\":\"p1\"}"),
            "\"p1\""),
        is(
            "load_beyond_a_cut",
            "cut-away",
            set(PROPOSAL + "/hung_weights/0/along", "0.95"),
            "\"s4\"",
            "0.9"),
        is(
            "load_on_a_segment_beyond_a_cut",
            "cut-away",
            set(PLAN + "/cuts/0/segment", "\"s2\""),
            "\"s5\"",
            "\"s2\""),
        is(
            "apex_cut_away",
            "cut-away",
            set(PLAN + "/cuts/0/along", "0").set(PLAN + "/apex", "\"s4\""),
            "s4"),
        is(
            "cut_of_everything",
            "nothing-left",
            set(PLAN + "/cuts/0", "{\"segment\":\"s1\",\"along\":0}"),
            "base"),
        is(
            "cut_on_unknown_segment",
            "unknown-segment",
            set(PLAN + "/cuts/0/segment", "\"x\""),
            "x"),
        is("apex_unknown", "unknown-segment", set(PLAN + "/apex", "\"top\""), "top"),
        is("about_unknown", "unknown-segment", set(PROPOSAL + "/about", "\"b\""), "\"b\""),
        is(
            "clamp_unknown",
            "unknown-segment",
            set(PLAN + "/clamp", "{\"segment\":\"pot\",\"along\":0}"),
            "pot"),
        is("stance_unknown", "unknown-word", set(PLAN + "/stance", "\"upside\""), "as_measured"),
        is("self_weight_text", "wrong-type", set(PLAN + "/self_weight", "\"yes\""), "self_weight"),
        is(
            "planting_without_azimuth",
            "missing-field",
            set(PLAN + "/planting", "{\"tilt_deg\":5}"),
            "toward_azimuth_deg"),
        is(
            "coil_without_gauge",
            "missing-field",
            set(
                PROPOSAL + "/coils",
                "[{\"from\":{\"segment\":\"s3\",\"along\":0},\"to\":{\"segment\":\"s3\",\"along\":1},"
                    + "\"metal\":\"m\",\"strands\":1,\"angle_to_axis_deg\":50,\"hand\":\"left\"}]"),
            "gauge_mm"));
  }

  @ParameterizedTest
  @MethodSource({"lines", "parts"})
  void check_refusesThePlan(Case one) {
    Verdict verdict = Verdict.of(one.file().text());
    List<Problem> faults =
        verdict.problems().stream()
            .filter(Problem::isFault)
            .filter(problem -> problem.kind().equals(one.kind()))
            .toList();
    assertThat(faults).as("%s", verdict.lines()).isNotEmpty();
    assertThat(faults.get(0).place().line()).isPositive();
    assertThat(faults.get(0).line()).contains(one.mustName());
  }

  /**
   * Where a bad-input catalogue refuses a line shorter than the gap, the format of version 1 takes
   * {@code length_mm} as the tightened length, which is shorter than the gap of 210.67 mm.
   */
  @ParameterizedTest
  @ValueSource(strings = {"1", "100", "210"})
  void lineShorterThanItsGap_isAccepted(String length) {
    assertThat(Verdict.of(set(LINE + "/length_mm", length).text()).problems()).isEmpty();
  }

  /** A loose line is no fault: it may stop a branch that another line pulls away from it. */
  @ParameterizedTest
  @ValueSource(strings = {"212", "300"})
  void lineLongerThanItsGap_isQuestioned_withWhatWouldPull(String length) {
    Verdict verdict = Verdict.of(set(LINE + "/length_mm", length).text());
    assertThat(verdict.refused()).isFalse();
    assertThat(verdict.kinds()).containsExactly("slack-line");
    assertThat(verdict.lines().get(0)).contains(length + " mm", "210.67 mm", "g1");
  }

  @Test
  void anchorWhereWoodIsCutAway_isAccepted() {
    Change file = set(LINE + "/anchor_mm", "[-29.9,2,180]").set(LINE + "/length_mm", "100");
    assertThat(Verdict.of(file.text()).refused()).isFalse();
    assertThat(Verdict.of(file.set(PLAN + "/cuts", "[]").text()).kinds())
        .containsExactly("anchor-in-wood");
  }

  @Test
  void planFaults_areFoundBesideTreeFaults() {
    Change file = set("/segments/1/caliper_start_mm", "-1").set(PROPOSAL + "/about", "\"nobody\"");
    assertThat(Verdict.of(file.text()).kinds()).containsExactly("out-of-range", "unknown-segment");
  }
}
