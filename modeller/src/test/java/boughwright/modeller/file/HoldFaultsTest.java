// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.problem.Problem;
import boughwright.modeller.problem.Severity;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Files with one wrong thing in what bends and holds: what is said, and what it names. */
class HoldFaultsTest {
  private static final String PLAN = "/plans/0";
  private static final String PROPOSAL = PLAN + "/proposals/0";
  private static final String LINE = PROPOSAL + "/guy_lines/0";

  /** A changed file, what is said of it and what that must name. */
  record Case(String name, Severity severity, String kind, Change file, List<String> mustName) {
    @Override
    public String toString() {
      return name;
    }
  }

  private static Case fault(String name, String kind, Change file, String... mustName) {
    return new Case(name, Severity.FAULT, kind, file, List.of(mustName));
  }

  private static Case note(String name, String kind, Change file, String... mustName) {
    return new Case(name, Severity.WARNING, kind, file, List.of(mustName));
  }

  private static Change set(String pointer, String json) {
    return Change.of().set(pointer, json);
  }

  private static Change strand(String json) {
    return set(LINE + "/strand", json);
  }

  private static Change coil(String from, String to) {
    return set(
        PROPOSAL + "/coils",
        String.format(
            "[{\"from\":%s,\"to\":%s,\"metal\":\"aluminium\",\"gauge_mm\":2,\"strands\":1,"
                + "\"angle_to_axis_deg\":50,\"hand\":\"left\"}]",
            from, to));
  }

  private static String at(String segment, double along) {
    return "{\"segment\":\"" + segment + "\",\"along\":" + along + "}";
  }

  private static Change aid(String rest) {
    return set(PROPOSAL + "/aids", "[{\"segment\":\"s3\",\"from\":0.2,\"to\":0.8," + rest + "}]");
  }

  static Stream<Case> lines() {
    return Stream.of(
        fault(
            "strand_of_nothing_known",
            "unknown-word",
            strand("{\"material\":\"steal-soft\",\"gauge_mm\":1}"),
            "steal-soft",
            "steel-soft",
            "cord"),
        fault(
            "strand_without_gauge",
            "missing-field",
            strand("{\"material\":\"cord\"}"),
            "gauge_mm",
            "gauge_awg"),
        fault(
            "strand_with_two_gauges",
            "two-gauges",
            strand("{\"material\":\"stainless\",\"gauge_mm\":1,\"gauge_awg\":18}"),
            "gauge_mm and gauge_awg"),
        fault(
            "gauge_number_that_does_not_exist",
            "out-of-range",
            strand("{\"material\":\"stainless\",\"gauge_awg\":41}"),
            "gauge_awg",
            "-3 to 40"),
        fault(
            "gauge_nobody_sells",
            "no-such-gauge",
            strand("{\"material\":\"aluminium\",\"gauge_mm\":20}"),
            "20 mm",
            "8 mm"),
        note(
            "gauge_between_two_sold",
            "odd-gauge",
            strand("{\"material\":\"aluminium\",\"gauge_mm\":2.2}"),
            "2.2 mm",
            "2 mm"),
        fault(
            "twist_of_an_unknown_kind",
            "unknown-word",
            set(LINE + "/tightener", "{\"kind\":\"twist\"}"),
            "twist-at-end"),
        fault(
            "turnbuckle_without_its_thread",
            "missing-field",
            set(LINE + "/tightener", "{\"kind\":\"turnbuckle\"}"),
            "mm_per_turn"),
        note(
            "twist_of_one_strand",
            "no-double-strand",
            strand("{\"material\":\"stainless\",\"gauge_mm\":1}")
                .set(LINE + "/tightener", "{\"kind\":\"twist-at-end\"}"),
            "count 2"),
        note(
            "anchor_kind_of_a_tie",
            "kind-of-a-tie",
            set(PROPOSAL + "/guy_lines/1/anchor_kind", "\"rim\""),
            "anchor_kind"),
        note(
            "anchor_behind_the_trunk",
            "no-line-of-sight",
            set(LINE + "/anchor_mm", "[-90,0,60]").set(LINE + "/length_mm", "100"),
            "\"s2\"",
            "Clear of it"));
  }

  static Stream<Case> parts() {
    return Stream.of(
        fault(
            "coil_from_branch_to_branch",
            "coil-no-path",
            coil(at("s3", 0.5), at("s4", 0.5)),
            "s3",
            "s4",
            "grows from"),
        fault(
            "coil_toward_the_trunk",
            "coil-no-path",
            coil(at("s5", 0.5), at("s3", 0.5)),
            "Swap from and to"),
        fault("coil_of_no_length", "coil-no-path", coil(at("s3", 0.5), at("s3", 0.5)), "\"s3\""),
        fault(
            "hand_on_wood_that_is_cut_away",
            "cut-away",
            set(
                PROPOSAL + "/hand_bends",
                "[{\"id\":\"h\",\"segment\":\"s4\",\"along\":1,\"direction\":[0,0,1],"
                    + "\"move_mm\":5}]"),
            "hand bend \"h\"",
            "0.9"),
        fault(
            "hand_that_goes_nowhere",
            "no-direction",
            set(
                PROPOSAL + "/hand_bends",
                "[{\"id\":\"h\",\"segment\":\"s3\",\"along\":1,\"direction\":[0,0,0],"
                    + "\"move_mm\":5}]"),
            "direction"),
        fault("aid_of_an_unknown_kind", "unknown-word", aid("\"kind\":\"steam\""), "relief-cut"),
        fault(
            "aid_on_an_unknown_segment",
            "unknown-segment",
            aid("\"kind\":\"wrap\"").set(PROPOSAL + "/aids/0/segment", "\"s33\""),
            "s3"),
        fault(
            "aid_backwards",
            "no-stretch",
            aid("\"kind\":\"wrap\"").set(PROPOSAL + "/aids/0/to", "0.1"),
            "0.1"),
        fault(
            "slot_without_a_side",
            "missing-field",
            aid("\"kind\":\"slot\",\"width_mm\":1,\"depth_mm\":1"),
            "round_deg"),
        fault(
            "hollow_as_wide_as_its_wood",
            "aid-too-large",
            aid("\"kind\":\"hollow\",\"depth_mm\":7"),
            "6.7676 mm"),
        note(
            "cut_past_the_middle",
            "deep-cut",
            aid("\"kind\":\"relief-cut\",\"round_deg\":0,\"width_mm\":1,\"depth_mm\":4"),
            "half"),
        fault(
            "cuts_that_leave_no_wood_between",
            "cuts-crowded",
            aid(
                "\"kind\":\"relief-cut\",\"round_deg\":0,\"width_mm\":2,\"depth_mm\":2,"
                    + "\"count\":20"),
            "20 cuts"),
        fault(
            "slot_where_there_is_one",
            "slot-twice",
            aid("\"kind\":\"slot\",\"round_deg\":0,\"width_mm\":1,\"depth_mm\":1")
                .set("/segments/2/slot", "{\"round_deg\":0,\"width_mm\":1,\"depth_mm\":1}"),
            "s3"));
  }

  static Stream<Case> times() {
    return Stream.of(
        fault(
            "stages_that_start_later",
            "stage-order",
            set(PLAN + "/stages", "[{\"after_days\":3,\"part\":1}]"),
            "3 days"),
        fault(
            "stages_out_of_order",
            "stage-order",
            set(
                PLAN + "/stages",
                "[{\"after_days\":0,\"part\":0.3},{\"after_days\":9,\"part\":0.5},"
                    + "{\"after_days\":9,\"part\":1}]"),
            "9 days"),
        fault(
            "stage_past_the_whole",
            "out-of-range",
            set(PLAN + "/stages", "[{\"after_days\":0,\"part\":1.2}]"),
            "part",
            "0 to 1"),
        note(
            "stages_that_never_come_to_the_whole",
            "never-whole",
            set(PLAN + "/stages", "[{\"after_days\":0,\"part\":0.7}]"),
            "0.7"),
        note(
            "stage_that_slackens",
            "no-further",
            set(
                PLAN + "/stages",
                "[{\"after_days\":0,\"part\":1},{\"after_days\":9,\"part\":0.5}]"),
            "0.5"),
        fault(
            "release_before_the_last_stage",
            "released-too-early",
            set(PLAN + "/stages", "[{\"after_days\":0,\"part\":0.5},{\"after_days\":9,\"part\":1}]")
                .set(PLAN + "/release_after_days", "9"),
            "9 days"));
  }

  static Stream<Case> settings() {
    String box = "{\"length_mm\":300,\"width_mm\":200,\"depth_mm\":80";
    return Stream.of(
        fault(
            "container_without_a_depth",
            "missing-field",
            box("{\"length_mm\":3,\"width_mm\":2}"),
            "depth_mm"),
        note(
            "container_in_metres",
            "odd-container",
            box("{\"length_mm\":0.3,\"width_mm\":200,\"depth_mm\":80}"),
            "length_mm"),
        note(
            "container_beside_the_tree",
            "base-outside",
            box(box + ",\"centre_mm\":[0,150]}"),
            "trunk base"),
        note(
            "container_heavier_than_stone", "odd-mass", box(box + ",\"mass_kg\":1450}"), "1450 kg"),
        note("rim_below_the_floor", "odd-container", box(box + ",\"rim_mm\":-100}"), "rim"),
        note(
            "ring_as_wide_as_a_girth",
            "odd-ring",
            set("/growing", "{\"ring_mm_per_year\":60}"),
            "60 mm"),
        fault(
            "growing_in_the_air", "unknown-word", set("/growing", "{\"where\":\"air\"}"), "ground"),
        fault(
            "anchor_without_a_kind",
            "missing-field",
            set("/anchors", "[{\"id\":\"a\",\"at_mm\":[1,2,3]}]"),
            "screw"),
        fault(
            "anchor_id_twice",
            "duplicate-id",
            set(
                "/anchors",
                "[{\"id\":\"a\",\"at_mm\":[90,2,3],\"kind\":\"peg\"},{\"id\":\"a\",\"at_mm\":[99,2,3],\"kind\":\"rim\"}]"),
            "\"a\""),
        note(
            "anchor_in_the_next_garden",
            "far-anchor",
            set("/anchors", "[{\"id\":\"a\",\"at_mm\":[9000,2,3],\"kind\":\"peg\"}]"),
            "9000 mm"));
  }

  private static Change box(String json) {
    return set("/container", json);
  }

  @ParameterizedTest
  @MethodSource({"lines", "parts", "times", "settings"})
  void check_saysWhatIsWrong_whereAndHowToMend(Case one) {
    Verdict verdict = Verdict.of(one.file().text());
    List<Problem> found =
        verdict.problems().stream()
            .filter(problem -> problem.kind().equals(one.kind()))
            .filter(problem -> problem.severity() == one.severity())
            .toList();
    assertThat(found).as("%s", verdict.lines()).isNotEmpty();
    assertThat(found.get(0).place().line()).isPositive();
    assertThat(found.get(0).line()).contains(one.mustName());
    assertThat(verdict.refused()).isEqualTo(one.severity() == Severity.FAULT);
  }

  @Test
  void severalFaults_areToldAtOnce() {
    Change file =
        strand("{\"material\":\"tin\",\"gauge_awg\":99}")
            .set(PLAN + "/stages", "[{\"after_days\":-1,\"part\":2}]")
            .set("/container", "{\"length_mm\":0}");
    assertThat(Verdict.of(file.text()).kinds())
        .contains("unknown-word", "missing-field")
        .filteredOn("out-of-range"::equals)
        .hasSize(4);
  }

  /** The anchor that is proposed instead is itself no cause for a word. */
  @Test
  void anchorProposedInstead_isClear() {
    Change file = set(LINE + "/anchor_mm", "[-90,0,60]").set(LINE + "/length_mm", "100");
    String line = Verdict.of(file.text()).lines().get(0);
    String point = line.substring(line.indexOf("anchor at [") + 10, line.lastIndexOf(']') + 1);
    assertThat(Verdict.of(file.set(LINE + "/anchor_mm", point).text()).problems()).isEmpty();
  }

  @Test
  void coilAcrossAUnion_isAccepted() {
    assertThat(Verdict.of(coil(at("s1", 0.5), at("s5", 0.5)).text()).problems()).isEmpty();
  }
}
