// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static boughwright.viewer.command.MovedTrunk.azimuth;
import static boughwright.viewer.command.MovedTrunk.degreesApart;
import static boughwright.viewer.command.MovedTrunk.few;
import static boughwright.viewer.command.MovedTrunk.fronts;
import static boughwright.viewer.command.MovedTrunk.measure;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the verb tells of the fronts it finds, and of one it explains. */
class FrontsToldTest {
  private static final double ROUNDING = 1e-9;

  @TempDir private Path folder;

  private static final String AS_GOOD = "As good as front 1";

  private static String score(JsonNode front) {
    return String.format(Locale.ROOT, "%.1f", 100 * front.get("score").asDouble());
  }

  @Test
  void fiveFronts_areToldTheBestFirst_andAgreeWithTheJson() {
    Path file = MovedTrunk.write(folder);
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

  /** The sum of a score is what its measures add; worked out here from weights and merits. */
  @Test
  void json_addsUp_withUnitsInItsKeys() {
    JsonNode answer = few(MovedTrunk.write(folder), "--json").json();
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
    Ran ran = few(MovedTrunk.write(folder));
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
    Path file = MovedTrunk.write(folder);
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
    Path file = MovedTrunk.write(folder);
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
    Path file = MovedTrunk.write(folder);
    String wishes =
        "\"fronts\": {\"style\": \"broom\", \"eye_mm\": 300, \"eye_distance_mm\": 500,"
            + " \"weights\": {\"taper\": 7}}, \"bark_mm\"";
    TreeFixture.write(
        folder,
        file.getFileName().toString(),
        Files.readString(file).replace("\"bark_mm\"", wishes));
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
    Path file = MovedTrunk.write(folder);
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
  void treeWithoutRoots_isJudgedWithoutThem() throws IOException {
    Path file = MovedTrunk.write(folder);
    TreeFixture.write(
        folder,
        file.getFileName().toString(),
        Files.readString(file).replaceAll("(?s),\\s*\\{\"id\": \"r[123]\".*?\\}", ""));
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
        TreeFixture.write(
            folder,
            "even.tree.json",
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
