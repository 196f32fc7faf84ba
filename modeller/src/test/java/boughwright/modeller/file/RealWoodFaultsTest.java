// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import static boughwright.modeller.file.TreeFaultsTest.Expected.ACCEPT;
import static boughwright.modeller.file.TreeFaultsTest.Expected.REFUSE;
import static boughwright.modeller.file.TreeFaultsTest.Expected.WARN;
import static boughwright.modeller.file.TreeFaultsTest.is;
import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.file.TreeFaultsTest.Case;
import boughwright.modeller.file.TreeFaultsTest.Expected;
import boughwright.modeller.tree.PullTest.Reading;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Files with one wrong thing in wood, weak spots, condition or pull tests each. */
class RealWoodFaultsTest {

  /** The third segment of the sample: 9 mm thick at its start, 6 mm at its end, no bark. */
  private static Case spot(Expected expected, String kind, String field, String json) {
    return is(
        field + " " + json,
        expected,
        kind,
        Change.of().set("/segments/2/" + field, json),
        expected == ACCEPT ? new String[0] : new String[] {"s3"});
  }

  private static Case top(
      Expected expected, String kind, String field, String json, String... must) {
    return is(field + " " + json, expected, kind, Change.of().set("/" + field, json), must);
  }

  static Stream<Case> weakSpots() {
    String large = "weak-spot-too-large";
    return Stream.of(
        spot(ACCEPT, "", "hollow_mm", "5.9"),
        spot(REFUSE, large, "hollow_mm", "6"),
        spot(REFUSE, large, "hollow_mm", "8"),
        spot(REFUSE, "out-of-range", "hollow_mm", "0"),
        spot(REFUSE, "no-number", "hollow_mm", "\"3 mm\""),
        spot(ACCEPT, "", "dead_face", "{\"round_deg\":90,\"width_deg\":360,\"depth_mm\":3}"),
        spot(REFUSE, large, "dead_face", "{\"round_deg\":90,\"width_deg\":60,\"depth_mm\":3.1}"),
        spot(
            REFUSE,
            "out-of-range",
            "dead_face",
            "{\"round_deg\":90,\"width_deg\":361,\"depth_mm\":1}"),
        spot(REFUSE, "missing-field", "dead_face", "{\"round_deg\":90,\"width_deg\":36}"),
        spot(REFUSE, "wrong-type", "dead_face", "true"),
        spot(ACCEPT, "", "slot", "{\"round_deg\":0,\"width_mm\":2,\"depth_mm\":5.9}"),
        spot(REFUSE, large, "slot", "{\"round_deg\":0,\"width_mm\":2,\"depth_mm\":6}"),
        spot(REFUSE, large, "slot", "{\"round_deg\":0,\"width_mm\":6,\"depth_mm\":2}"),
        spot(REFUSE, large, "slot", "{\"round_deg\":0,\"width_mm\":5.99,\"depth_mm\":5.99}"),
        spot(REFUSE, "unknown-word", "knots", "\"few\""),
        spot(ACCEPT, "", "knots", "\"many\""),
        spot(REFUSE, "unknown-word", "grain", "\"spiral\""),
        spot(REFUSE, "wrong-type", "included_bark", "\"yes\""),
        spot(ACCEPT, "", "included_bark", "true"),
        is(
            "hollow and slot leave nothing",
            REFUSE,
            large,
            Change.of()
                .set("/segments/2/hollow_mm", "5.98")
                .set("/segments/2/slot", "{\"round_deg\":0,\"width_mm\":5,\"depth_mm\":2}"),
            "a hollow and a slot",
            "s3"),
        is(
            "bark leaves less than the hollow",
            REFUSE,
            large,
            Change.of().set("/segments/2/hollow_mm", "5").set("/bark_mm", "0.5"),
            "5 mm",
            "cut the segment off"),
        is(
            "included bark on the trunk base",
            WARN,
            "no-crotch",
            Change.of().set("/segments/0/included_bark", "true"),
            "s1"));
  }

  static Stream<Case> condition() {
    return Stream.of(
        top(ACCEPT, "", "caliper_error_mm", "0.5"),
        top(WARN, "large-error", "caliper_error_mm", "5", "5 mm", "0.3 mm"),
        top(REFUSE, "out-of-range", "caliper_error_mm", "0", "above 0"),
        top(REFUSE, "out-of-range", "caliper_error_mm", "-0.3", "above 0"),
        top(ACCEPT, "", "condition", "{\"hemisphere\":\"south\"}"),
        top(REFUSE, "unknown-word", "condition", "{\"hemisphere\":\"Kenya\"}", "north, south"),
        top(REFUSE, "no-date", "condition", "{\"repotted_on\":\"spring\"}", "year-month-day"),
        top(WARN, "far-date", "condition", "{\"worked_on\":\"2206-03-02\"}", "2206-03-02"),
        top(WARN, "far-date", "condition", "{\"collected_on\":\"0202-03-02\"}", "0202-03-02"),
        top(WARN, "far-date", "measured_on", "\"2206-03-02\"", "2206-03-02"),
        top(WARN, "unknown-field", "condition", "{\"repoted_on\":\"2024-03-01\"}", "repotted_on"));
  }

  private static Case wood(Expected expected, String kind, String json, String... must) {
    return top(expected, kind, "wood", "{\"s3\":" + json + "}", must);
  }

  static Stream<Case> wood() {
    return Stream.of(
        wood(ACCEPT, "", "{\"moe_GPa\":4.1,\"moe_cv\":0.15}"),
        wood(REFUSE, "out-of-range", "{\"moe_GPa\":4.1,\"moe_cv\":15}", "moe_cv", "at most 1"),
        wood(REFUSE, "out-of-range", "{\"moe_GPa\":4.1,\"moe_cv\":0}", "above 0"),
        wood(WARN, "spread-of-nothing", "{\"moe_cv\":0.2}", "moe_GPa"),
        wood(REFUSE, "impossible-moe", "{\"moe_GPa\":9000}", "Write 9 if MPa", "s3"),
        wood(WARN, "odd-moe", "{\"moe_GPa\":41}", "41", "3 to 16 GPa"),
        wood(WARN, "odd-moe", "{\"moe_GPa\":0.009}", "softer"),
        wood(REFUSE, "shear-above-moe", "{\"moe_GPa\":5,\"shear_GPa\":300}", "16 times"),
        wood(WARN, "odd-shear", "{\"shear_GPa\":300}", "Write 0.3 if MPa"),
        wood(
            WARN,
            "shear-above-moe",
            "{\"moe_GPa\":5,\"shear_GPa\":9,\"response\":\"elastic\"}",
            "9"),
        wood(ACCEPT, "", "{\"moe_GPa\":210,\"shear_GPa\":81,\"response\":\"elastic\"}"),
        top(REFUSE, "impossible-moe", "species", "{\"name\":\"own\",\"moe_GPa\":9000}", "species"),
        top(ACCEPT, "", "species", "{\"name\":\"own\",\"moe_GPa\":9}"));
  }

  private static Case pull(Expected expected, String kind, String pointer, String json) {
    String test =
        "[{\"id\":\"q\",\"segment\":\"s3\",\"along\":0.9,\"direction\":[0,0,-1],\"readings\":"
            + "[{\"force_N\":3,\"moved_mm\":4,\"base_moved_mm\":0.5},{\"force_N\":6,\"moved_mm\":7}]}]";
    Change change = Change.of().set("/pull_tests", test);
    return is(
        pointer + " " + json,
        expected,
        kind,
        json.isEmpty()
            ? change.remove("/pull_tests" + pointer)
            : change.set("/pull_tests" + pointer, json),
        expected == ACCEPT ? new String[0] : new String[] {"pull test \"q\""});
  }

  static Stream<Case> pullTests() {
    String twin =
        "{\"id\":\"q\",\"segment\":\"s1\",\"along\":1,\"direction\":[1,0,0],\"readings\":"
            + "[{\"force_N\":3,\"moved_mm\":4}]}";
    return Stream.of(
        pull(ACCEPT, "", "/0/done_on", "\"2026-03-05\""),
        pull(ACCEPT, "", "/0/direction", "[0,3,-4]"),
        pull(REFUSE, "duplicate-id", "/-", twin),
        pull(REFUSE, "unknown-segment", "/0/segment", "\"s9\""),
        pull(REFUSE, "no-direction", "/0/direction", "[0,0,0]"),
        pull(REFUSE, "no-point", "/0/direction", "[0,-1]"),
        pull(REFUSE, "missing-field", "/0/direction", ""),
        pull(REFUSE, "no-readings", "/0/readings", "[]"),
        pull(REFUSE, "missing-field", "/0/readings", ""),
        pull(REFUSE, "out-of-range", "/0/along", "1.5"),
        pull(REFUSE, "nothing-bent", "/0/readings/0/base_moved_mm", "4"),
        pull(REFUSE, "nothing-bent", "/0/readings/0/base_moved_mm", "-4"),
        pull(REFUSE, "out-of-range", "/0/readings/0/moved_mm", "0"),
        pull(REFUSE, "out-of-range", "/0/readings/0/force_error_pct", "101"),
        pull(REFUSE, "out-of-range", "/0/readings/0/moved_error_mm", "0"),
        pull(WARN, "odd-force", "/0/readings/1/force_N", "600"),
        pull(WARN, "odd-force", "/0/readings/0/force_N", "0.1"),
        pull(WARN, "odd-movement", "/0/readings/1/moved_mm", "301"),
        pull(WARN, "odd-movement", "/0/readings/0", "{\"force_N\":3,\"moved_mm\":0.25}"),
        pull(WARN, "no-growth", "/0/readings/1/moved_mm", "3.5"),
        pull(WARN, "far-date", "/0/done_on", "\"2262-03-05\""));
  }

  @ParameterizedTest
  @MethodSource({"weakSpots", "condition", "wood", "pullTests"})
  void check_saysWhatIsWrongAndWhere(Case one) {
    one.check();
  }

  @Test
  void readingWithoutErrors_hasTheUsualOnes_whichAreNotWritten() throws Exception {
    TreeFile file = TreeFiles.read("full", Sample.bytes());
    Reading plain = file.document().tree().pullTests().get(0).readings().get(0);
    assertThat(plain).isEqualTo(new Reading(5, 2.4e-3, 0, 0.02, 0.5e-3));
    assertThat(TreeJson.text(file.document())).contains("{\"force_N\": 5, \"moved_mm\": 2.4}");
  }

  @Test
  void direction_ofAnyLength_isTheSameAfterWritingAndReading() throws Exception {
    byte[] bytes = pull(ACCEPT, "", "/0/direction", "[0.3,-7,1e-3]").file().bytes();
    TreeFile once = TreeFiles.read("once", bytes);
    TreeFile twice = TreeFiles.read("twice", TreeJson.bytes(once.document()));
    assertThat(twice.document()).isEqualTo(once.document());
  }
}
