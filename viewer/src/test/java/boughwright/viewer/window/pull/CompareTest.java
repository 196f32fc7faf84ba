// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.pull;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.viewer.command.Ran;
import boughwright.viewer.window.OnScreen;
import boughwright.viewer.window.WindowRobot;
import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Plans beside one another in the window of the program. */
@OnScreen
class CompareTest {
  @TempDir private Path folder;

  private static String shown(double value, int decimals, String unit) {
    return new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP) + " " + unit;
  }

  @Test
  void twoPlansCompared_areTheTwoSingleAnswers() {
    try (PullFrame window = new PullFrame(folder)) {
      window.compare();
      window.robot.patiently("both are known", window.comparison()::isComplete);
      for (int column = 0; column < 2; column++) {
        isTheAnswer(window, List.of("a", "b").get(column), column);
      }
    }
  }

  private static void isTheAnswer(PullFrame window, String plan, int column) {
    JsonNode trial = window.bend(plan);
    String told = Ran.command("bend", window.file, "--plan", plan).out().replaceAll("\\s+", " ");
    JsonNode hardest = null;
    for (JsonNode line : trial.get("guy_lines")) {
      if (hardest == null
          || line.get("tension_N").asDouble() > hardest.get("tension_N").asDouble()) {
        hardest = line;
      }
    }
    assertThat(row(window, "pull", column))
        .isEqualTo(shown(hardest.get("tension_N").asDouble(), 1, "N"));
    assertThat(row(window, "drawn", column))
        .isEqualTo(shown(hardest.get("shortening_mm").asDouble(), 1, "mm"));
    JsonNode peak = trial.get("peak");
    assertThat(row(window, "strain", column))
        .isEqualTo(shown(100 * peak.get("bending_strain").asDouble(), 2, "%"));
    assertThat(row(window, "place", column))
        .contains(peak.get("segment").asText())
        .contains(peak.get("side").asText())
        .contains(shown(peak.get("from_union_mm").asDouble(), 1, "mm"));
    assertThat(row(window, "verdict", column))
        .isEqualTo(trial.get("verdict").get("words").asText());
    assertThat(told).contains("Kink on the inside: " + row(window, "kink", column) + " ");
    assertThat(row(window, "height", column))
        .isEqualTo(shown(trial.get("apex").get("above_soil_mm").asDouble(), 1, "mm"));
    assertThat(row(window, "apex", column)).isNotEqualTo("not said");
    assertThat(row(window, "breaking", column)).containsPattern("1 in|in [0-9]|certain");
    assertThat(row(window, "stays", column)).containsPattern("[0-9]+ weeks|not within two years");
  }

  private static String row(PullFrame window, String row, int column) {
    return WindowRobot.onEvents(() -> window.comparison().words(row, column));
  }
}
