// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Small trees and few tilts, so that a search takes no time. */
class FrontsVerbTest {
  private static final double ROUNDING = 1e-9;

  @TempDir private Path folder;

  /** A trunk that moves in one plane, a wound, three roots, two branches and two plans. */
  private Path tree() {
    return write(
        """
        {"format": "boughwright-tree", "version": 1, "name": "Moved trunk (invented)",
         "species": "carpinus-betulus", "bark_mm": 0.5, "unions": "surface",
         "segments": [
          {"id": "t1", "parent": null, "kind": "trunk", "start_mm": [0, 0, 0],
           "end_mm": [25, 0, 90], "caliper_start_mm": 50, "caliper_end_mm": 38},
          {"id": "t2", "parent": "t1", "kind": "trunk", "end_mm": [-20, 8, 190],
           "caliper_start_mm": 38, "caliper_end_mm": 24},
          {"id": "t3", "parent": "t2", "kind": "trunk", "end_mm": [5, 0, 280],
           "caliper_start_mm": 24, "caliper_end_mm": 8},
          {"id": "b1", "parent": "t1", "kind": "branch", "end_mm": [150, 30, 110],
           "caliper_start_mm": 12, "caliper_end_mm": 5},
          {"id": "b2", "parent": "t2", "kind": "branch", "end_mm": [-120, 60, 215],
           "caliper_start_mm": 9, "caliper_end_mm": 4},
          {"id": "r1", "parent": "t1", "along": 0, "kind": "root", "end_mm": [80, -10, -4],
           "caliper_start_mm": 22, "caliper_end_mm": 12},
          {"id": "r2", "parent": "t1", "along": 0, "kind": "root", "end_mm": [-70, 20, -4],
           "caliper_start_mm": 20, "caliper_end_mm": 12},
          {"id": "r3", "parent": "t1", "along": 0, "kind": "root", "end_mm": [10, 75, -6],
           "caliper_start_mm": 18, "caliper_end_mm": 10}],
         "wounds": [{"id": "w1", "segment": "t1", "along": 0.6, "round_deg": 180,
           "width_mm": 22, "height_mm": 26}],
         "plans": [
          {"id": "a", "cuts": [{"segment": "t3", "along": 0.5}], "apex": "t3", "proposals": []},
          {"id": "b", "front_azimuth_deg": 77, "proposals": [{"id": "p1", "about": "b1",
            "hung_weights": [{"segment": "b1", "along": 1, "mass_kg": 0.1}]}]}]}
        """);
  }

  private Path write(String text) {
    return TreeFixture.write(folder, "tree.tree.json", text);
  }

  private static Ran fronts(Path file, Object... more) {
    List<Object> words = new ArrayList<>(List.of("fronts", file));
    words.addAll(List.of(more));
    return Ran.command(words.toArray());
  }

  private static Ran few(Path file, Object... more) {
    List<Object> words = new ArrayList<>(List.of(more));
    words.addAll(List.of("--tilt-deg", "2"));
    return fronts(file, words.toArray());
  }

  private static double degreesApart(double one, double other) {
    return Math.abs(Math.IEEEremainder(one - other, 360));
  }

  private static String score(JsonNode front) {
    return String.format(Locale.ROOT, "%.1f", 100 * front.get("score").asDouble());
  }

  private static JsonNode measure(JsonNode front, String name) {
    for (JsonNode one : front.get("measures")) {
      if (one.get("measure").asText().equals(name)) {
        return one;
      }
    }
    throw new AssertionError("no " + name + " in " + front);
  }

  @Test
  void fiveFronts_areToldTheBestFirst_andAgreeWithTheJson() {
    Path file = tree();
    Ran ran = few(file);
    assertThat(ran.err()).isEmpty();
    assertThat(ran.code()).isZero();
    JsonNode answer = few(file, "--json").json();
    JsonNode fronts = answer.get("fronts");
    assertThat(fronts).hasSize(5);
    assertThat(ran.out().lines().findFirst().orElseThrow()).startsWith("Best: azimuth ");
    double before = 1;
    for (int n = 0; n < 5; n++) {
      JsonNode front = fronts.get(n);
      assertThat(front.get("score").asDouble()).isLessThanOrEqualTo(1);
      double azimuth = front.get("front_azimuth_deg").asDouble();
      for (int k = 0; k < n; k++) {
        assertThat(degreesApart(azimuth, fronts.get(k).get("front_azimuth_deg").asDouble()))
            .isGreaterThan(20 - ROUNDING);
      }
      // The table's row, and the heading of the front, of the same numbers.
      assertThat(ran.out())
          .containsPattern(
              "(?m)^ +"
                  + (n + 1)
                  + " +"
                  + score(front).replace(".", "\\.")
                  + " +"
                  + Math.round(azimuth)
                  + " ")
          .contains("Front " + (n + 1) + ": azimuth " + Math.round(azimuth) + " faces you");
      before = n > 0 && front.get("top").asBoolean() ? before : 1;
      assertThat(front.get("score").asDouble()).isLessThanOrEqualTo(before);
      assertThat(front.get("told_from_first").asBoolean())
          .isEqualTo(n == 0 || !ran.words().contains("Front " + (n + 1) + AS_GOOD));
    }
    assertThat(answer.get("score_best").asDouble())
        .isEqualTo(fronts.get(0).get("score").asDouble());
    assertThat(ran.words())
        .contains("For it:", "Root base:", "What was measured")
        .contains("common practice, no source")
        .contains("deadwood: the file holds no deadwood on this tree")
        .contains("line of sight, bare");
    assertThat(ran.out().lines()).allSatisfy(line -> assertThat(line.length()).isLessThan(101));
  }

  private static final String AS_GOOD = "As good as front 1";

  /** The sum of a score is what its measures add; worked out here from weights and merits. */
  @Test
  void json_addsUp_withUnitsInItsKeys() {
    JsonNode answer = few(tree(), "--json").json();
    assertThat(answer.at("/style").asText()).isEqualTo("upright");
    assertThat(answer.at("/tilts/sideways_deg").asDouble()).isCloseTo(2, within(ROUNDING));
    assertThat(answer.at("/map/azimuth_step_deg").asDouble()).isCloseTo(2, within(ROUNDING));
    assertThat(answer.at("/map/best_by_azimuth")).hasSize(180);
    assertThat(answer.at("/weights_source").asText()).isEqualTo("common practice, no source");
    for (JsonNode front : answer.get("fronts")) {
      double sum = 0;
      double weights = 0;
      double adds = 0;
      for (JsonNode part : front.get("measures")) {
        double weight = answer.get("weights").get(part.get("measure").asText()).asDouble();
        sum += weight * part.get("merit").asDouble();
        weights += weight;
        adds += part.get("adds").asDouble();
      }
      assertThat(front.get("score").asDouble()).isCloseTo(sum / weights, within(ROUNDING));
      assertThat(front.get("score").asDouble()).isCloseTo(adds, within(ROUNDING));
      assertThat(measure(front, "apex_lean").has("value_deg")).isTrue();
      assertThat(measure(front, "apex_lean").has("value")).isFalse();
      assertThat(front.at("/ground/root_base/roots").asInt()).isEqualTo(3);
      assertThat(front.at("/ground/root_base/mean_height_mm").isNumber()).isTrue();
      assertThat(front.get("unsaid")).extracting(JsonNode::asText).containsExactly("deadwood");
    }
  }

  /** What speaks against a front is the worse of two sides, in words too. */
  @Test
  void reasons_sayTheSideTheySpeakFor() {
    Ran ran = few(tree());
    boolean against = false;
    int told = 0;
    for (String line : ran.out().lines().map(String::strip).toList()) {
      if (line.startsWith("+") || line.startsWith("-0") || line.matches("-[0-9.]+ {2}.*")) {
        against = line.startsWith("-");
        told++;
        List<String> wrong =
            against
                ? List.of("looks wider", "less of the wounds", "more of the trunk's", "more alike")
                : List.of("looks narrower", "more of the wounds", "less of the trunk's");
        assertThat(line).doesNotContain(wrong);
      }
    }
    assertThat(told).isGreaterThan(4);
  }

  @Test
  void plan_isJudgedAsItsCutsLeaveIt() {
    Path file = tree();
    JsonNode uncut = fronts(file, "--at", "0", "--json").json();
    Ran ran = fronts(file, "--plan", "a", "--at", "0", "--json");
    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(ran.json().get("plan").asText()).isEqualTo("a");
    assertThat(uncut.has("plan")).isFalse();
    // The trunk ends at 16 mm in place of 8 of 50; seen square to it nothing hides its edges.
    assertThat(measure(uncut.get("at"), "taper").get("value").asDouble()).isGreaterThan(0.75);
    assertThat(measure(ran.json().get("at"), "taper").get("value").asDouble()).isLessThan(0.69);
    assertThat(fronts(file, "--plan", "a", "--at", "0").words()).contains("Plan a, its cuts made");
    Ran none = fronts(file, "--plan", "z");
    assertThat(none.code()).isEqualTo(2);
    assertThat(none.err()).contains("there is no plan \"z\"");
  }

  @Test
  void oneFront_isExplained() {
    Path file = tree();
    Ran ran = fronts(file, "--at", "-20, 3, -2");
    assertThat(ran.code()).as(ran.err()).isZero();
    JsonNode at = fronts(file, "--at", "-20,3,-2", "--json").json().get("at");
    assertThat(ran.out()).startsWith("Score " + score(at) + " of 100: azimuth 340\u00B0, tilted");
    assertThat(ran.words())
        .contains("tilted 3\u00B0 to the right and 2\u00B0 away")
        .contains("What was measured", "worth weight adds", "How it stands");
    assertThat(degreesApart(at.get("front_azimuth_deg").asDouble(), 340))
        .isCloseTo(0, within(ROUNDING));
    assertThat(at.get("tilt_right_deg").asDouble()).isCloseTo(3, within(ROUNDING));
    assertThat(at.get("tilt_toward_deg").asDouble()).isCloseTo(-2, within(ROUNDING));
    // Small tilts square to each other add like the sides of a right angle.
    assertThat(at.at("/planting/tilt_deg").asDouble()).isCloseTo(Math.hypot(3, 2), within(0.01));
    assertThat(fronts(file, "--at", "0", "--json").json().at("/at/planting").isMissingNode())
        .isTrue();
  }

  @Test
  void wishesOfTheFile_areTaken_andTheCommandLineComesFirst() throws IOException {
    Path file = tree();
    String wishes =
        "\"fronts\": {\"style\": \"broom\", \"eye_mm\": 300, \"eye_distance_mm\": 500,"
            + " \"weights\": {\"taper\": 7}}, \"bark_mm\"";
    write(Files.readString(file).replace("\"bark_mm\"", wishes));
    JsonNode saved = fronts(file, "--at", "0", "--json").json();
    assertThat(saved.get("style").asText()).isEqualTo("broom");
    assertThat(saved.at("/weights/taper").asDouble()).isEqualTo(7);
    assertThat(saved.get("eye_looks_down_deg").asDouble()).isBetween(10.0, 30.0);
    assertThat(fronts(file, "--at", "0").words())
        .contains("style broom, eye 300 mm above the soil line, 500 mm away");
    JsonNode said =
        fronts(
                file,
                "--at",
                "0",
                "--json",
                "--style",
                "Twin-Trunk",
                "--weights",
                "taper=2, at-viewer=0.5,wounds=0")
            .json();
    assertThat(said.get("style").asText()).isEqualTo("twin_trunk");
    assertThat(said.at("/weights/taper").asDouble()).isEqualTo(2);
    assertThat(said.at("/weights/branches_at_viewer").asDouble()).isEqualTo(0.5);
    assertThat(said.at("/weights/wounds").asDouble()).isZero();
    assertThat(measure(said.get("at"), "wounds").get("adds").asDouble()).isZero();
  }

  @Test
  void leaves_hideAndAreSaidToBeAGuess() {
    Path file = tree();
    JsonNode bare = fronts(file, "--at", "0", "--json").json();
    JsonNode leaf = fronts(file, "--at", "0", "--in-leaf", "--json").json();
    assertThat(bare.get("in_leaf").asBoolean()).isFalse();
    assertThat(bare.has("leaf_guessed")).isFalse();
    assertThat(leaf.get("in_leaf").asBoolean()).isTrue();
    assertThat(leaf.get("leaf_guessed").asBoolean()).isTrue();
    assertThat(measure(leaf.get("at"), "negative_space").get("value").asDouble())
        .isLessThan(measure(bare.get("at"), "negative_space").get("value").asDouble() - 0.01);
    assertThat(fronts(file, "--at", "0", "--in-leaf").words())
        .contains("in leaf, a guess")
        .contains("line of sight, in leaf, with pads that are a guess")
        .doesNotContain("line of sight, bare");
  }

  @Test
  void chosenFront_goesIntoThePlan_andNothingElseIsChanged() throws IOException {
    Path file = tree();
    ObjectNode before = document(file);
    Ran ran = few(file, "--choice", "2", "--add-to-plan", "b", "--json");
    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(ran.json().get("added_to_plan").asText()).isEqualTo("b");
    JsonNode front = ran.json().get("fronts").get(1);
    ObjectNode after = document(file);
    ObjectNode plan = (ObjectNode) after.get("plans").get(1);
    assertThat(degreesApart(plan.get("front_azimuth_deg").asDouble(), azimuth(front)))
        .isCloseTo(0, within(1e-6));
    assertThat(plan.has("planting")).isEqualTo(front.has("planting"));
    for (String angle : List.of("tilt_deg", "toward_azimuth_deg")) {
      assertThat(plan.at("/planting/" + angle).asDouble())
          .isCloseTo(front.at("/planting/" + angle).asDouble(), within(1e-6));
    }
    plan.remove("planting");
    plan.set("front_azimuth_deg", before.get("plans").get(1).get("front_azimuth_deg"));
    assertThat(without(keys(before), keys(after))).isEmpty();
    assertThat(without(keys(after), keys(before))).isEmpty();
    assertThat(Ran.command("check", file).code()).isZero();
    assertThat(folder.resolve("tree.tree.json~")).exists();
  }

  private static double azimuth(JsonNode front) {
    return front.get("front_azimuth_deg").asDouble();
  }

  private static ObjectNode document(Path file) throws IOException {
    return (ObjectNode) new ObjectMapper().readTree(Files.readString(file));
  }

  /** Every value with where it is, numbers as numbers. */
  private static Set<String> keys(JsonNode node) {
    Set<String> all = new HashSet<>();
    collect(node, "", all);
    return all;
  }

  private static Set<String> without(Set<String> all, Set<String> some) {
    Set<String> left = new HashSet<>(all);
    left.removeAll(some);
    return left;
  }

  private static void collect(JsonNode node, String place, Set<String> all) {
    if (node.isObject()) {
      node.properties().forEach(f -> collect(f.getValue(), place + "/" + f.getKey(), all));
    } else if (node.isArray()) {
      for (int n = 0; n < node.size(); n++) {
        collect(node.get(n), place + "/" + n, all);
      }
    } else {
      all.add(place + "=" + (node.isNumber() ? String.valueOf(node.asDouble()) : node));
    }
  }

  @Test
  void newPlan_takesCutsAndApexOfTheOneJudged() throws IOException {
    Path file = tree();
    Ran ran = few(file, "--plan", "a", "--add-to-plan", "f");
    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(ran.words()).contains("Front 1 is in the file now, in plan f.");
    JsonNode plan = document(file).get("plans").get(2);
    assertThat(plan.get("id").asText()).isEqualTo("f");
    assertThat(plan.get("apex").asText()).isEqualTo("t3");
    assertThat(plan.at("/cuts/0/segment").asText()).isEqualTo("t3");
    assertThat(plan.has("front_azimuth_deg")).isTrue();
  }

  @Test
  void whatCannotBeUsed_isRefusedTogether_andNothingIsWritten() throws IOException {
    Path file = tree();
    String before = Files.readString(file);
    Ran ran =
        fronts(
            file,
            "--plan",
            "z",
            "--style",
            "windy",
            "--eye-mm",
            "high",
            "--eye-distance-mm",
            "0",
            "--tilt-deg",
            "95",
            "--weights",
            "mouvement=2,taper,wounds=-1",
            "--container",
            "300x200",
            "--at",
            "20,5",
            "--picture",
            "p.jpg",
            "--size",
            "10x10",
            "--choice",
            "9",
            "--add-to-plan",
            " ");
    assertThat(ran.code()).isEqualTo(2);
    assertThat(ran.out()).isEmpty();
    for (String option :
        List.of(
            "--plan",
            "--style",
            "--eye-mm",
            "--eye-distance-mm",
            "--tilt-deg",
            "--container",
            "--at",
            "--size",
            "--choice",
            "--add-to-plan")) {
      assertThat(ran.err().lines().filter(line -> line.startsWith(option + ":"))).isNotEmpty();
    }
    assertThat(ran.err().lines().filter(line -> line.startsWith("--weights:"))).hasSize(3);
    assertThat(ran.err())
        .contains("Did you mean movement?")
        .contains("\"windy\" is none of upright")
        .contains("p.jpg");
    assertThat(Files.readString(file)).isEqualTo(before);
    try (var files = Files.list(folder)) {
      assertThat(files).containsExactly(file);
    }
  }

  @Test
  void optionsWithoutUse_areRefused() {
    Path file = tree();
    assertThat(fronts(file, "--choice", "2").err()).contains("nothing is done with it");
    assertThat(fronts(file, "--size", "900x600").err()).contains("there is no picture");
    assertThat(fronts(file, "--eye-distance-mm", "900").err()).contains("Add --eye-mm");
    assertThat(fronts(file, "--at", "3", "--add-to-plan", "f").err()).contains("--at");
    String none =
        "movement=0,taper=0,root-base=0,wounds=0,at-viewer=0,apex-lean=0,sides=0,over-base=0,"
            + "depth=0,first-branch=0,space=0,bulge=0,deadwood=0";
    assertThat(fronts(file, "--weights", none).err()).contains("every weight is 0");
  }

  @Test
  void treeWithoutRoots_isJudgedWithoutThem() throws IOException {
    Path file = tree();
    write(Files.readString(file).replaceAll("(?s),\\s*\\{\"id\": \"r[123]\".*?\\}", ""));
    JsonNode answer = few(file, "--json").json();
    assertThat(answer.get("fronts")).isNotEmpty();
    for (JsonNode front : answer.get("fronts")) {
      assertThat(front.get("unsaid")).extracting(JsonNode::asText).contains("root_base_width");
      assertThat(front.at("/ground/root_base").isMissingNode()).isTrue();
    }
    assertThat(few(file).words())
        .contains("root base: the file holds no root that shows above the soil line");
    Ran drawn = fronts(file, "--at", "0", "--roots", folder.resolve("r.png"));
    assertThat(drawn.code()).isEqualTo(2);
    assertThat(drawn.err()).contains("no root leaves the trunk in this file");
    assertThat(folder.resolve("r.png")).doesNotExist();
  }

  /** An upright rod is the same from every side: there is no front, and none is made up. */
  @Test
  void oneStraightUprightSegment_hasNoFront() throws IOException {
    Path file = TreeFixture.pulled(folder, "\"tension_N\": 5");
    String before = Files.readString(file);
    Ran ran = few(file);
    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(ran.words())
        .startsWith("No side of this tree is better than another:")
        .contains("no front is put forward")
        .contains("the trunk line is one straight piece")
        .contains("the tree has no branches");
    JsonNode answer = few(file, "--json").json();
    assertThat(answer.get("side_can_be_chosen").asBoolean()).isFalse();
    assertThat(answer.get("fronts")).isEmpty();
    Ran kept = few(file, "--add-to-plan", "f");
    assertThat(kept.code()).isEqualTo(2);
    assertThat(kept.out()).isEmpty();
    assertThat(kept.err()).contains("no side of this tree is better than another");
    assertThat(Files.readString(file)).isEqualTo(before);
  }

  /** Six even branches round an upright trunk. */
  @Test
  void treeTheSameSixTimesRound_hasSidesThatAreAsGood() {
    StringBuilder round = new StringBuilder();
    for (int k = 0; k < 6; k++) {
      double x = Math.cos(k * Math.PI / 3);
      double y = Math.sin(k * Math.PI / 3);
      round.append(
          String.format(
              Locale.ROOT,
              ", {\"id\": \"b%d\", \"parent\": \"t1\", \"kind\": \"branch\", \"along\": 0.6,"
                  + " \"end_mm\": [%.6f, %.6f, 150], \"caliper_start_mm\": 8,"
                  + " \"caliper_end_mm\": 4}",
              k,
              100 * x,
              100 * y));
    }
    Path file =
        write(
            """
            {"format": "boughwright-tree", "version": 1, "name": "Even (invented)",
             "species": "carpinus-betulus", "segments": [
              {"id": "t1", "parent": null, "kind": "trunk", "start_mm": [0, 0, 0],
               "end_mm": [0, 0, 200], "caliper_start_mm": 40, "caliper_end_mm": 20}BRANCHES]}
            """
                .replace("BRANCHES", round));
    Ran ran = few(file);
    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(ran.words()).contains("Measuring cannot tell it from fronts 2, 3, 4 and 5.");
    JsonNode fronts = few(file, "--json").json().get("fronts");
    double first = azimuth(fronts.get(0));
    for (JsonNode front : fronts) {
      assertThat(Math.IEEEremainder(azimuth(front) - first, 60)).isCloseTo(0, within(ROUNDING));
      assertThat(front.get("score").asDouble())
          .isCloseTo(fronts.get(0).get("score").asDouble(), within(1e-6));
      assertThat(front.get("reasons")).isEmpty();
    }
  }
}
