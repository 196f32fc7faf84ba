// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.viewer.gl.Graphics;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ApexVerbTest {
  @TempDir private Path folder;

  /** An invented trunk whose top died, with a thinner leader beside it and a screw. */
  private Path tree() {
    return written("two-leaders", 30);
  }

  private Path written(String name, double leaderAside) {
    return TreeFixture.write(
        folder,
        name + ".tree.json",
        String.format(
            Locale.ROOT,
            """
            {"format": "boughwright-tree", "version": 1, "name": "Two leaders (invented)",
             "species": "carpinus-betulus", "bark_mm": 0.5, "growing": {"where": "box"},
             "anchors": [{"id": "s1", "at_mm": [-120, 0, 0], "kind": "screw"}],
             "segments": [
              {"id": "t1", "parent": null, "kind": "trunk", "start_mm": [0, 0, 0],
               "end_mm": [0, 0, 100], "caliper_start_mm": 50, "caliper_end_mm": 44},
              {"id": "t2", "parent": "t1", "kind": "trunk", "end_mm": [-120, 0, 200], "live": false,
               "caliper_start_mm": 40, "caliper_end_mm": 30},
              {"id": "a1", "parent": "t1", "kind": "branch", "along": 0.9,
               "end_mm": [%s, 0, 300], "caliper_start_mm": 12, "caliper_end_mm": 7}],
             "plans": [{"id": "a", "cuts": [{"segment": "t2", "along": 0.5}], "proposals": []}]}
            """,
            leaderAside));
  }

  /** With one anchor to tie to, the screw, which is enough for all that is asked here. */
  private static Ran apex(Path file, Object... more) {
    List<Object> words =
        new ArrayList<>(List.of("apex", file, "--on", "2026-03-05", "--anchors", "point"));
    words.addAll(List.of(more));
    return Ran.command(words.toArray());
  }

  private static JsonNode option(JsonNode answer, String segment) {
    for (JsonNode choice : answer.get("choices")) {
      if (choice.get("segment").asText().equals(segment)) {
        return choice;
      }
    }
    throw new AssertionError("no " + segment + " in " + answer);
  }

  @Test
  void leaderThatStandsOverTheBase_isSaidSoAndCuts() {
    Ran ran = apex(tree(), "--no-risk");
    assertThat(ran.err()).isEmpty();
    assertThat(ran.code()).isZero();
    assertThat(ran.words())
        .contains("What each leaves, and the years it takes")
        .contains("Or: chop the trunk to a bud and grow a new leader")
        .contains("common practice, no source")
        .contains("in a training box");
    assertThat(ran.out().lines()).allSatisfy(line -> assertThat(line.length()).isLessThan(80));
  }

  /** The screw stands to the left, where the leader has to go. */
  @Test
  void answer_isWhatReachAndBendSayOfTheKeptPlan() throws IOException {
    Path file = written("aside", 70);
    Ran ran = apex(file, "--no-risk", "--no-course", "--json", "--add-to-plan", "k");
    assertThat(ran.code()).as(ran.err()).isZero();
    JsonNode told = ran.json().get("told").get("option");
    assertThat(told.get("segment").asText()).isEqualTo("a1");
    assertThat(ran.json().get("added_to_plan").asText()).isEqualTo("k");
    assertThat(Files.exists(folder.resolve("aside.tree.json~"))).isTrue();
    JsonNode line = told.get("bent").get("guy_lines").get(0);
    JsonNode trial =
        Ran.command("bend", file, "--plan", "k", "--no-risk", "--no-course", "--json")
            .json()
            .get("trials")
            .get(0);
    double pull = trial.get("guy_lines").get(0).get("tension_N").asDouble();
    assertThat(line.get("tension_N").asDouble()).isCloseTo(pull, within(1e-6 * pull));
    assertThat(trial.get("apex").get("above_soil_mm").asDouble())
        .isCloseTo(told.get("height_mm").asDouble(), within(1e-3));
    JsonNode reach =
        Ran.command(
                "reach",
                file,
                "--plan",
                "k",
                "--segment",
                "a1",
                "--upright",
                "--anchors",
                "point",
                "--no-risk",
                "--no-course",
                "--json")
            .json();
    List<Double> pulls = new ArrayList<>();
    reach
        .get("choices")
        .forEach(one -> pulls.add(one.get("guy_lines").get(0).get("tension_N").asDouble()));
    assertThat(pulls).anySatisfy(one -> assertThat(one).isCloseTo(pull, within(1e-6 * pull)));
  }

  /** By hand: 12 mm on a trunk of 50 to 44 mm at 0.9 of it; t2 starts with 40 mm. */
  @Test
  void json_holdsStepWoundAndYears() {
    JsonNode answer = apex(tree(), "--no-risk", "--json").json();
    JsonNode leader = option(answer, "a1");
    assertThat(leader.get("takeover").get("ratio").asDouble()).isCloseTo(12 / 44.6, within(1e-6));
    assertThat(leader.get("cuts").get(0).get("width_mm").asDouble()).isBetween(40.0, 44.6);
    JsonNode years = leader.get("cuts").get(0).get("years_to_close");
    assertThat(years.get("low").asDouble()).isLessThan(years.get("likely").asDouble());
    assertThat(years.get("likely").asDouble()).isLessThan(years.get("high").asDouble());
    assertThat(leader.get("years_to_thicken").get("likely").asDouble()).isPositive();
    assertThat(answer.get("chop").get("wound").get("late").asBoolean()).isTrue();
  }

  @Test
  void told_drawsTheRiskAndTellsStages() {
    Ran ran = apex(written("aside", 70), "--choice", "1", "--samples", "100");
    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(ran.words())
        .contains("Choice 1, a1; verdict:")
        .contains("Cut t2 at 0 % of its length")
        .contains("Tighten by")
        .contains("In stages")
        .contains("Wear eye protection");
  }

  /** The screw stands to the left, a leader that leans to the left has to go to the right. */
  @Test
  void leaderThatNoLineHelps_isSaidSoOnceWithoutCounts() {
    Path file = written("wrong-side", -70);
    Ran ran = apex(file, "--no-risk");
    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(ran.words())
        .contains("a1: from nowhere could a line pull the tip there; most lines would pull")
        .doesNotContain("times the line", "times the anchor");
    JsonNode leader = option(apex(file, "--no-risk", "--json").json(), "a1");
    assertThat(leader.get("state").asText()).isEqualTo("cannot");
    assertThat(leader.get("refused").get("wrong_way").asInt()).isPositive();
  }

  @Test
  void picture_isWritten() {
    Graphics.require();
    Path out = folder.resolve("top.png");
    Ran ran = apex(tree(), "--no-risk", "--no-course", "--picture", out, "--size", "800x600");
    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(out).isRegularFile();
    assertThat(ran.words()).contains("Picture:");
  }

  @Test
  void oneSegment_standsByItselfOrSaysWhyNot() {
    Path stick =
        TreeFixture.write(
            folder,
            "stick.tree.json",
            """
            {"format": "boughwright-tree", "version": 1, "name": "Stick", "bark_mm": 0,
             "species": "carpinus-betulus",
             "segments": [{"id": "t1", "parent": null, "kind": "trunk", "start_mm": [0, 0, 0],
               "end_mm": [0, 0, 300], "caliper_start_mm": 12, "caliper_end_mm": 8}],
             "plans": [{"id": "stump", "cuts": [{"segment": "t1", "along": 0.05}],
               "proposals": []}]}
            """);
    assertThat(apex(stick, "--no-risk").words())
        .startsWith("t1 stands over the root base as it is.");
    Ran none = apex(stick, "--no-risk", "--plan", "stump");
    assertThat(none.code()).as(none.err()).isZero();
    assertThat(none.words()).startsWith("No shoot of this tree is long and thick enough");
    Ran asked = apex(stick, "--no-risk", "--plan", "stump", "--choice", "1");
    assertThat(asked.code()).isEqualTo(2);
    assertThat(asked.err()).contains("no leader of this tree could become its top");
  }

  @Test
  void whatMeansNothing_isRefusedWithOneLineEach() throws IOException {
    Path file = tree();
    String before = Files.readString(file);
    assertThat(apex(file, "--plan", "z").err()).contains("there is no plan \"z\"");
    assertThat(apex(file, "--leaders", "0").err()).contains("--leaders");
    assertThat(Ran.command("apex", file, "--anchors", "sky").err())
        .contains("\"sky\" is nothing to tie a line to")
        .contains("Choose from ");
    assertThat(apex(file, "--add-to-plan", "a").err()).contains("there is a plan \"a\" already");
    assertThat(apex(file, "--size", "800x600").err()).contains("there is no picture");
    Ran far = apex(file, "--choice", "9", "--no-risk");
    assertThat(far.code()).isEqualTo(2);
    assertThat(far.err()).contains("Give a number up to that");
    assertThat(Files.readString(file)).isEqualTo(before);
  }
}
