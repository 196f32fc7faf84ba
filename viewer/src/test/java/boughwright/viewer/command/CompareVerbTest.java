// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.viewer.gl.Graphics;
import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CompareVerbTest {
  @TempDir private Path folder;

  private Path tree() {
    return TreeFixture.branched(folder, "Hornbeam (invented)");
  }

  private static Ran compare(Path file, Object... more) {
    List<Object> words = new ArrayList<>(List.of("compare", file, "--on", "2026-03-05"));
    words.addAll(List.of(more));
    return Ran.command(words.toArray());
  }

  /** The same draws of the same plans, told by another verb. */
  @Test
  void numbers_areThoseOfBend() {
    Path file = tree();
    JsonNode plans =
        compare(file, "--plans", "a,b", "--samples", "200", "--json").json().get("plans");
    assertThat(plans).hasSize(2);
    for (JsonNode plan : plans) {
      JsonNode trial =
          Ran.command(
                  "bend",
                  file,
                  "--plan",
                  plan.get("plan").asText(),
                  "--samples",
                  "200",
                  "--on",
                  "2026-03-05",
                  "--json")
              .json()
              .get("trials")
              .get(0);
      assertThat(plan.get("risk")).isEqualTo(trial.get("risk"));
      assertThat(plan.get("verdict")).isEqualTo(trial.get("verdict"));
      double most = 0;
      for (JsonNode line : trial.get("guy_lines")) {
        most = Math.max(most, line.get("tension_N").asDouble());
      }
      assertThat(plan.get("hardest_pull").get("tension_N").asDouble()).isEqualTo(most);
      if (trial.has("apex")) {
        assertThat(plan.get("height_mm").asDouble())
            .isCloseTo(trial.get("apex").get("above_soil_mm").asDouble(), within(1e-6));
      }
      assertThat(plan.get("breaking").get("low").asDouble())
          .isLessThanOrEqualTo(plan.get("breaking").get("high").asDouble());
    }
  }

  @Test
  void text_laysPlansSideBySideAndTellsWhatCannotBeUndone() {
    Ran ran = compare(tree(), "--samples", "100", "--no-course");
    assertThat(ran.err()).isEmpty();
    assertThat(ran.code()).isZero();
    assertThat(ran.out()).startsWith("Plan a: ");
    assertThat(ran.words())
        .contains("plan a b")
        .contains("hardest pull")
        .contains("What can be undone - a: 1 line, untied; 1 weight, taken off.")
        .contains("b: 1 line, untied.")
        .contains("What cannot");
    assertThat(ran.out().lines()).allSatisfy(line -> assertThat(line.length()).isLessThan(80));
  }

  @Test
  void planThatBendsNothing_isToldSo() {
    Path file =
        TreeFixture.write(
            folder,
            "idle.tree.json",
            TreeFixture.branchedText("Hornbeam (invented)")
                .replaceFirst("(?s)\\{\"id\": \"b\", \"proposals\".*", "{\"id\": \"b\"}]}"));
    Ran ran = compare(file, "--samples", "100", "--no-course");
    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(ran.words()).contains("Plan b: it bends nothing.").contains("- b: nothing.");
  }

  @Test
  void longNames_areToldWholeAndNumberedInTheTable() {
    Path file =
        TreeFixture.write(
            folder,
            "long.tree.json",
            TreeFixture.branchedText("Hornbeam (invented)")
                .replace("{\"id\": \"a\", ", "{\"id\": \"second leader bent upright (1)\", ")
                .replace("{\"id\": \"b\", ", "{\"id\": \"second leader bent upright (2)\", "));
    Ran ran = compare(file, "--no-risk", "--no-course");
    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(ran.words())
        .startsWith("Plan 1, second leader bent upright (1): ")
        .contains("plan 1 2 breaking")
        .contains("- 2, second leader bent upright (2): 1 line, untied.");
    assertThat(ran.out().lines()).allSatisfy(line -> assertThat(line.length()).isLessThan(80));
  }

  /** A score of 100, as the verb fronts has it. */
  @Test
  void front_isOfAHundred() {
    Ran ran = compare(tree(), "--no-risk", "--no-course");
    JsonNode plans = compare(tree(), "--no-risk", "--no-course", "--json").json().get("plans");
    StringBuilder row = new StringBuilder("front");
    for (JsonNode plan : plans) {
      double score = 100 * plan.get("front").get("score").asDouble();
      row.append(' ').append(String.format(Locale.ROOT, "%.1f", score));
    }
    assertThat(ran.words()).contains(row);
  }

  @Test
  void withoutRisk_nothingIsMadeUp() {
    JsonNode plan =
        compare(tree(), "--no-risk", "--no-course", "--json").json().get("plans").get(0);
    assertThat(plan.has("risk")).isFalse();
    assertThat(plan.has("breaking")).isFalse();
    assertThat(plan.has("verdict")).isFalse();
    assertThat(plan.has("stays_after_days")).isFalse();
    assertThat(plan.get("front").get("score").asDouble()).isBetween(0.0, 1.0);
  }

  @Test
  void picture_holdsAllFronts() throws Exception {
    Graphics.require();
    Path out = folder.resolve("both.png");
    Ran ran = compare(tree(), "--no-risk", "--no-course", "--picture", out, "--size", "1400x700");
    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(ImageIO.read(out.toFile()).getWidth()).isEqualTo(1400);
  }

  @Test
  void planThatHoldsNoPose_isSaidSo() {
    Path file =
        TreeFixture.write(
            folder,
            "fallen.tree.json",
            TreeFixture.branchedText("Hornbeam (invented)")
                .replace("\"tension_N\": 12", "\"tension_N\": 90000"));
    Ran ran = compare(file, "--no-risk", "--no-course");
    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(ran.words()).startsWith("Plan a: no pose holds.");
    JsonNode plan = compare(file, "--no-risk", "--no-course", "--json").json().get("plans").get(0);
    assertThat(plan.get("holds").asBoolean()).isFalse();
    assertThat(plan.has("height_mm")).isFalse();
    assertThat(plan.has("front")).isFalse();
  }

  @Test
  void onePlanAndUnknownPlans_areRefused() {
    Path file = tree();
    Ran one = compare(file, "--plans", "a");
    assertThat(one.code()).isEqualTo(2);
    assertThat(one.err()).contains("--plans: it names 1 plan").contains("such as --plans a,b");
    assertThat(compare(file, "--plans", "a,z").err()).startsWith("--plans: there is no plan \"z\"");
    assertThat(compare(file, "--plans", "a,a").err()).contains("plan \"a\" is named twice");
    Path single =
        TreeFixture.write(
            folder,
            "single.tree.json",
            TreeFixture.branchedText("One")
                .replaceFirst("(?s),\\s*\\{\"id\": \"b\", \"proposals\".*", "]}"));
    assertThat(compare(single).err()).contains("the file has 1 plan").contains("Add a second plan");
  }
}
