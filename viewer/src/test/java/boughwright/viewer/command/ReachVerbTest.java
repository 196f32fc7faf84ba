// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReachVerbTest {
  /** A tenth of a millimetre that a line is rounded to moves the tip by a few. */
  private static final double ROUNDED = 1e-6;

  @TempDir private Path folder;

  /** An invented tree with two screws in its soil. */
  private Path tree() {
    return TreeFixture.write(
        folder,
        "reach.tree.json",
        TreeFixture.branchedText("Hornbeam (invented)")
            .replace(
                "\"bark_mm\": 0.5,",
                "\"bark_mm\": 0.5, \"anchors\": [{\"id\": \"s1\", \"at_mm\": [170, 0, -10],"
                    + " \"kind\": \"screw\"}, {\"id\": \"s2\", \"at_mm\": [120, 60, -10], \"kind\":"
                    + " \"peg\"}],"));
  }

  private Ran reach(Path file, Object... more) {
    List<Object> words = new ArrayList<>(List.of("reach", file, "--segment", "b1"));
    words.addAll(List.of(more));
    words.addAll(List.of("--on", "2026-03-05"));
    return Ran.command(words.toArray());
  }

  @Test
  void reach_saysFirstHowNearThenWhereToTie() {
    Ran ran = reach(tree(), "--to-mm", "203,0,145", "--samples", "100", "--most-risk", "0.2");
    assertThat(ran.err()).isEmpty();
    assertThat(ran.code()).isZero();
    assertThat(ran.out().lines().findFirst().orElseThrow())
        .startsWith("One line brings the end of b1 there. Breaking:");
    assertThat(ran.words())
        .contains("comes nearest")
        .contains("mm from the union of its limb, the pad on the")
        .contains("Tighten by")
        .contains("on a balance")
        .contains("Wear eye protection");
  }

  @Test
  void reachJson_holdsALineThatBendConfirms() throws IOException {
    Path file = tree();
    JsonNode answer = reach(file, "--to-mm", "203,0,145", "--no-risk", "--json").json();
    JsonNode first = answer.get("choices").get(0);
    assertThat(answer.get("start_miss_mm").asDouble()).isCloseTo(15.3, within(0.1));
    assertThat(first.get("miss_mm").asDouble()).isLessThan(1);
    assertThat(first.get("risk_guess").get("breaking").asDouble()).isLessThan(0.05);
    Ran added = reach(file, "--to-mm", "203,0,145", "--no-risk", "--json", "--add-to-plan", "r");
    assertThat(added.code()).as(added.err()).isZero();
    assertThat(added.json().get("added_to_plan").asText()).isEqualTo("r");
    JsonNode bent = Ran.command("bend", file, "--plan", "r", "--no-risk", "--json").json();
    JsonNode end = bent.get("trials").get(0).get("pose").get(1).get("end_mm");
    for (int k = 0; k < 3; k++) {
      assertThat(end.get(k).asDouble())
          .isCloseTo(first.get("comes_to_mm").get(k).asDouble(), within(ROUNDED));
    }
    assertThat(Files.exists(folder.resolve("reach.tree.json~"))).isTrue();
  }

  @Test
  void planThatIsThere_isNotReplaced() throws IOException {
    Path file = tree();
    String before = Files.readString(file);
    Ran ran = reach(file, "--to-mm", "203,0,145", "--add-to-plan", "a");
    assertThat(ran.code()).isEqualTo(2);
    assertThat(ran.err()).contains("there is a plan \"a\" already").contains("--keep");
    assertThat(Files.readString(file)).isEqualTo(before);
  }

  @Test
  void keptPlan_takesTheChoiceBesideItsOwn() {
    Path file = tree();
    Ran ran =
        reach(
            file,
            "--to-mm",
            "198,25,145",
            "--plan",
            "b",
            "--keep",
            "--add-to-plan",
            "b",
            "--no-risk",
            "--most-risk",
            "0.3");
    assertThat(ran.code()).as(ran.err()).isZero();
    JsonNode bent = Ran.command("bend", file, "--plan", "b", "--no-risk", "--json").json();
    assertThat(bent.get("trials").get(0).get("proposals")).hasSize(2);
  }

  @Test
  void targetTooFar_isRefusedWithANearerPoint() throws IOException {
    Path file = tree();
    String before = Files.readString(file);
    Ran ran = reach(file, "--to-mm", "500,0,100");
    assertThat(ran.code()).isEqualTo(2);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err().lines()).hasSize(1);
    assertThat(ran.err()).startsWith("--to-mm: ").contains("Give a nearer point, such as");
    assertThat(Files.readString(file)).isEqualTo(before);
  }

  @Test
  void nothingWanted_isRefused() {
    assertThat(reach(tree()).err()).contains("it is not said what is wanted");
    assertThat(reach(tree(), "--upright", "--to-mm", "1,2,3").err())
        .contains("more than one thing is wanted");
  }

  @Test
  void wordsThatMeanNothing_areRefusedTogether() {
    Ran ran =
        Ran.command(
            "reach",
            tree(),
            "--segment",
            "b",
            "--to-mm",
            "1,2",
            "--anchors",
            "cloud",
            "--most-risk",
            "2",
            "--lines",
            "3");
    assertThat(ran.code()).isEqualTo(2);
    assertThat(ran.err())
        .contains("there is no segment \"b\"")
        .contains("is not three numbers")
        .contains("\"cloud\" is nothing to tie a line to")
        .contains("--most-risk")
        .contains("--lines");
  }

  @Test
  void choiceWithoutUse_isRefused() {
    assertThat(
            reach(tree(), "--to-mm", "203,0,145", "--choice", "2", "--no-risk", "--no-course")
                .err())
        .contains("nothing is done with a choice");
  }

  @Test
  void direction_isToldInDegrees() {
    Ran ran = reach(tree(), "--direction", "1,0,0.2", "--no-risk");
    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(ran.words()).contains("degrees off");
  }

  @Test
  void chosenChoice_tellsTackleAndStages() {
    Ran ran = reach(tree(), "--to-mm", "203,0,150", "--samples", "100");
    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(ran.words()).contains("Tackle line1:").contains("In stages").contains("guessed");
    Ran without = reach(tree(), "--to-mm", "203,0,150", "--no-risk", "--no-course");
    assertThat(without.words()).contains("Tackle line1:").doesNotContain("In stages");
  }

  /** Number of the first choice with a coil, counted from 1. */
  private static int wired(JsonNode answer) {
    int number = 1;
    for (JsonNode choice : answer.get("choices")) {
      if (choice.has("coil")) {
        return number;
      }
      number++;
    }
    throw new AssertionError("no choice with a coil in " + answer);
  }

  @Test
  void coilAddedToAPlan_bendsAndRestsAsReachSaid() throws IOException {
    Path file = folder.resolve("hornbeam.tree.json");
    Files.copy(Path.of("../examples/hedge-hornbeam.tree.json"), file);
    List<Object> asked =
        new ArrayList<>(List.of("reach", file, "--segment", "b1c", "--to-mm", "156,-6,150"));
    asked.addAll(List.of("--plan", "a", "--coil", "--lines", "1", "--most-risk", "0.3"));
    asked.addAll(List.of("--no-risk", "--no-course", "--json"));
    String number = String.valueOf(wired(Ran.command(asked.toArray()).json()));
    asked.addAll(List.of("--choice", number, "--add-to-plan", "r"));
    Ran added = Ran.command(asked.toArray());
    assertThat(added.code()).as(added.err()).isZero();
    JsonNode choice = added.json().get("choices").get(Integer.parseInt(number) - 1);
    assertThat(choice.get("hand_bend").get("move_mm").asDouble()).isPositive();
    assertThat(choice.get("coil").get("anchorage").asText()).contains("the fork it crosses");
    JsonNode bent =
        Ran.command("bend", file, "--plan", "r", "--no-risk", "--no-course", "--json").json();
    JsonNode held = bent.get("trials").get(0).get("coils").get(0);
    for (String figure : List.of("forced_mm", "held_mm", "unwired_mm")) {
      assertThat(held.get(figure).asDouble())
          .isCloseTo(choice.get("coils").get(0).get(figure).asDouble(), within(ROUNDED));
    }
  }

  @Test
  void metalThatIsNoWire_isRefused() throws IOException {
    Path file = tree();
    String before = Files.readString(file);
    Ran ran =
        reach(file, "--to-mm", "203,0,150", "--coil", "--metal", "gold", "--add-to-plan", "r");
    assertThat(ran.code()).isEqualTo(2);
    assertThat(ran.err().lines()).hasSize(1);
    assertThat(ran.err()).contains("no wire that can be coiled").contains("copper-annealed");
    assertThat(Files.readString(file)).isEqualTo(before);
    assertThat(reach(file, "--to-mm", "203,0,150", "--metal", "aluminium").err())
        .contains("nothing is coiled");
  }
}
