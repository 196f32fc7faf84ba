// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import static boughwright.modeller.file.TreeFaultsTest.Expected.ACCEPT;
import static boughwright.modeller.file.TreeFaultsTest.Expected.REFUSE;
import static boughwright.modeller.file.TreeFaultsTest.Expected.WARN;
import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.problem.Problem;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Files with one wrong thing in the tree each: what is said, and what it names. */
class TreeFaultsTest {

  enum Expected {
    ACCEPT,
    WARN,
    REFUSE
  }

  /** A changed file and what must be said of it. */
  record Case(String name, Expected expected, String kind, Change file, List<String> mustName) {
    @Override
    public String toString() {
      return name;
    }

    /** Reads the file and asserts that it is taken, questioned or refused in these words. */
    void check() {
      Verdict verdict = Verdict.of(file.text());
      assertThat(verdict.refused()).as("%s", verdict.lines()).isEqualTo(expected == REFUSE);
      if (expected == ACCEPT) {
        assertThat(verdict.problems()).isEmpty();
        return;
      }
      List<Problem> named = verdict.problems().stream().filter(p -> p.kind().equals(kind)).toList();
      assertThat(named).as("%s", verdict.lines()).isNotEmpty();
      assertThat(named.get(0).isFault()).isEqualTo(expected == REFUSE);
      assertThat(named.get(0).place().line()).isPositive();
      assertThat(named.get(0).line()).contains(mustName);
    }
  }

  static Case is(String name, Expected expected, String kind, Change file, String... must) {
    return new Case(name, expected, kind, file, List.of(must));
  }

  private static Change set(String pointer, String json) {
    return Change.of().set(pointer, json);
  }

  static Stream<Case> shapes() {
    return Stream.of(
        is("cycle_two", REFUSE, "ring", set("/segments/1/parent", "\"s3\""), "\"s2\"", "\"s3\""),
        is("cycle_self", REFUSE, "ring", set("/segments/1/parent", "\"s2\""), "\"s2\""),
        is(
            "cycle_through_root_no_root",
            REFUSE,
            "no-base",
            set("/segments/0/parent", "\"s5\"").remove("/segments/0/start_mm"),
            "trunk base"),
        is(
            "cycle_through_root_names_the_ring",
            REFUSE,
            "ring",
            set("/segments/0/parent", "\"s5\"").remove("/segments/0/start_mm"),
            "\"s1\"",
            "\"s2\"",
            "\"s3\"",
            "\"s5\""),
        is(
            "two_roots",
            REFUSE,
            "several-bases",
            set("/segments/1/parent", "null").set("/segments/1/start_mm", "[4,0,120]"),
            "\"s1\"",
            "\"s2\""),
        is("missing_root", REFUSE, "unknown-parent", Change.of().remove("/segments/0"), "\"s1\""),
        is(
            "dangling_parent",
            REFUSE,
            "unknown-parent",
            set("/segments/4/parent", "\"no-such-id\""),
            "\"s5\"",
            "\"no-such-id\""),
        is("duplicate_id", REFUSE, "duplicate-id", set("/segments/4/id", "\"s1\""), "\"s1\""),
        // design.md: one segment, and only one, has no parent; so no segment is no tree
        is("empty_segments", REFUSE, "no-segments", set("/segments", "[]"), "no wood"),
        is(
            "ids_differ_in_case",
            WARN,
            "ids-look-alike",
            set("/segments/4/id", "\"S2\"").remove("/plans"),
            "\"S2\""),
        is(
            "id_with_zero_width_joiner",
            WARN,
            "hidden-character",
            set("/segments/3/id", "\"s\\u200d4\"").remove("/plans"),
            "cannot be seen"),
        is(
            "children_before_parents",
            ACCEPT,
            "",
            Change.of().remove("/segments/0").set("/segments/-", firstSegment()),
            "s1"));
  }

  private static String firstSegment() {
    return Change.of().segments().get(0).toString();
  }

  private static Case caliper(
      String name, Expected expected, String kind, String value, String shown) {
    return is(
        "caliper_" + name, expected, kind, set("/segments/1/caliper_start_mm", value), "s2", shown);
  }

  static Stream<Case> calipers() {
    return Stream.of(
        caliper("negative", REFUSE, "out-of-range", "-3.0", "-3.0 mm"),
        caliper("zero", REFUSE, "out-of-range", "0", "0 mm"),
        caliper("tiny", WARN, "very-thin", "1e-12", "1E-12 mm"),
        caliper("huge", WARN, "very-thick", "24000.0", "24000 mm"),
        caliper("string", REFUSE, "no-number", "\"12\"", "the text \"12\""),
        // design.md: a caliper is a number of the file; an unknown one is to be measured
        caliper("null", REFUSE, "null-value", "null", "null"),
        caliper("bool", REFUSE, "wrong-type", "true", "true"),
        caliper("array", REFUSE, "wrong-type", "[1]", "a list"),
        is(
            "caliper_missing",
            REFUSE,
            "missing-field",
            Change.of().remove("/segments/1/caliper_end_mm"),
            "s2",
            "caliper_end_mm",
            "Measure it"),
        is(
            "caliper_grows_10x_outward",
            WARN,
            "caliper-jump",
            set("/segments/4/caliper_start_mm", "240").set("/segments/4/caliper_end_mm", "240"),
            "\"s5\"",
            "240 mm",
            "\"s3\"",
            "6 mm"),
        is(
            "one_caliper_in_inches",
            WARN,
            "caliper-jump",
            set("/segments/1/caliper_end_mm", "0.4724"),
            "\"s3\"",
            "9 mm",
            "\"s2\"",
            "0.4724 mm",
            "much below its child"),
        is(
            "caliper_widens_in_a_segment",
            WARN,
            "widening",
            set("/segments/3/caliper_start_mm", "0.315"),
            "\"s4\"",
            "0.315 mm",
            "5 mm"),
        is(
            "bark_thicker_than_wood",
            REFUSE,
            "no-wood",
            set("/segments/4/bark_mm", "2"),
            "\"s5\"",
            "no wood is left"),
        is(
            "bark_of_the_tree_thicker_than_a_twig",
            REFUSE,
            "no-wood",
            set("/bark_mm", "2.2"),
            "\"s5\"",
            "own, smaller bark_mm"));
  }

  static Stream<Case> places() {
    return Stream.of(
        // design.md: a segment is straight with a direction; without a length it has none
        is("length_zero", REFUSE, "no-length", set("/segments/4/end_mm", "[40,5,190]"), "\"s5\""),
        is(
            "coincident_nodes",
            WARN,
            "same-end",
            set("/segments/4/end_mm", "[-30,2,180]"),
            "\"s5\"",
            "\"s4\""),
        is(
            "far_node_1e9",
            WARN,
            "far-away",
            set("/segments/4/end_mm", "[1e9,9,200]"),
            "\"s5\"",
            "1000000000 mm"),
        is("coord_string", REFUSE, "no-number", set("/segments/4/end_mm/2", "\"120\""), "s5", "z"),
        is("coord_null", REFUSE, "no-number", set("/segments/4/end_mm/2", "null"), "s5", "z of"),
        is(
            "coord_of_two_numbers",
            REFUSE,
            "no-point",
            set("/segments/4/end_mm", "[1,2]"),
            "s5",
            "2 numbers"),
        is(
            "branch_inside_its_parent",
            WARN,
            "inside-parent",
            set("/segments/3/along", "0.5").set("/segments/3/end_mm", "[8,1,150]"),
            "\"s4\"",
            "\"s2\""),
        is(
            "along_beyond_the_parent",
            REFUSE,
            "out-of-range",
            set("/segments/3/along", "1.5"),
            "s4",
            "1.5"),
        is(
            "start_on_a_child",
            REFUSE,
            "start-on-parent",
            set("/segments/3/start_mm", "[0,0,0]"),
            "s4",
            "s2"),
        // version 1 has the unit in each name: a file that names another one contradicts itself
        is("units_unknown", REFUSE, "other-units", set("/units", "\"furlong\""), "furlong"),
        is("units_inches", REFUSE, "other-units", set("/units", "\"in\""), "\"in\""),
        is(
            "values_in_inches",
            WARN,
            "very-small",
            Change.of().scale(1 / 25.4).remove("/plans"),
            "0.94488 mm",
            "inches"),
        is(
            "values_25_times_too_large",
            WARN,
            "very-tall",
            Change.of().scale(25.4).remove("/plans"),
            "mm and inches mixed up"));
  }

  static Stream<Case> woundsAndWood() {
    String wound =
        "{\"id\":\"w\",\"segment\":\"%s\",\"along\":0.5,\"round_deg\":0,\"width_mm\":3,\"height_mm\":4}";
    return Stream.of(
        is(
            "wound_on_unknown_segment",
            REFUSE,
            "unknown-segment",
            set("/wounds", "[" + String.format(wound, "zz") + "]"),
            "\"w\"",
            "\"zz\""),
        is(
            "two_wounds_of_one_id",
            REFUSE,
            "duplicate-id",
            set("/wounds", "[" + String.format(wound + "," + wound, "s1", "s2") + "]"),
            "\"w\""),
        is(
            "wood_for_unknown_segment",
            REFUSE,
            "unknown-segment",
            set("/wood", "{\"s9\":{\"moe_GPa\":5}}"),
            "\"s9\""),
        is(
            "wood_for_unknown_beginning",
            WARN,
            "unknown-segment",
            set("/wood", "{\"q*\":{}}"),
            "\"q*\""),
        is(
            "species_unknown",
            WARN,
            "unknown-species",
            set("/species", "\"Arbor incognita\""),
            "Arbor incognita",
            "generic wood values"),
        is(
            "species_homoglyph",
            WARN,
            "look-alike-species",
            set("/species", "\"\\u0410cer palmatum\""),
            "looks like a known name",
            "acer-palmatum"),
        is(
            "species_misspelt",
            WARN,
            "unknown-species",
            set("/species", "\"carpinus betulis\""),
            "carpinus-betulus"),
        is(
            "species_ambiguous",
            WARN,
            "several-species",
            set("/species", "\"Thuja plicata\""),
            "uk"));
  }

  static Stream<Case> foliage() {
    String pad =
        "{\"id\":\"f\",\"segment\":\"%s\",\"along\":0.5,\"length_mm\":%s,\"width_mm\":30,"
            + "\"thickness_mm\":20}";
    return Stream.of(
        is(
            "pad_on_unknown_segment",
            REFUSE,
            "unknown-segment",
            set("/foliage", "{\"pads\":[" + String.format(pad, "zz", "40") + "]}"),
            "\"f\"",
            "\"zz\""),
        is(
            "two_pads_of_one_id",
            REFUSE,
            "duplicate-id",
            set(
                "/foliage",
                "{\"pads\":[" + String.format(pad + "," + pad, "s1", "40", "s2", "50") + "]}"),
            "\"f\""),
        is(
            "pad_of_no_length",
            REFUSE,
            "out-of-range",
            set("/foliage", "{\"pads\":[" + String.format(pad, "s1", "0") + "]}"),
            "length_mm"),
        is(
            "pad_in_micrometres",
            WARN,
            "odd-pad-size",
            set("/foliage", "{\"pads\":[" + String.format(pad, "s1", "40000") + "]}"),
            "at its largest"),
        is(
            "leaves_unknown",
            REFUSE,
            "unknown-word",
            set("/foliage", "{\"leaves\":\"sometimes\"}"),
            "evergreen"));
  }

  @ParameterizedTest
  @MethodSource({"shapes", "calipers", "places", "woundsAndWood", "foliage"})
  void check_saysWhatIsWrongAndWhere(Case one) {
    one.check();
  }
}
