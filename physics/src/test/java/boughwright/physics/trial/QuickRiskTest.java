// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.species.Species;
import boughwright.modeller.species.SpeciesTable;
import boughwright.physics.rod.RodOptions;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The guess from margins against many draws of whole trials, which share nothing but margins. */
class QuickRiskTest {
  /** The guess is for comparing poses; it stays within this factor of the odds drawn. */
  private static final double FACTOR = 1.6;

  /** Draws: the drawn odds themselves are sure to about a tenth. */
  private static final int DRAWS = 2000;

  @TempDir private Path folder;

  private static final Species HORNBEAM = SpeciesTable.bundled().find("Carpinus betulus").get(0);

  private TrialRequest request(double along, double shorten, String more) {
    TreeText text = new TreeText("\"carpinus-betulus\"").unions("surface");
    if (!more.isEmpty()) {
      text.tree(more);
    }
    Document document =
        text.segment(
                "\"id\": \"t1\", \"parent\": null, \"kind\": \"trunk\", \"start_mm\": [0,0,0],"
                    + " \"end_mm\": [0,0,200], \"caliper_start_mm\": 50, \"caliper_end_mm\": 40")
            .segment(
                "\"id\": \"b1\", \"parent\": \"t1\", \"kind\": \"branch\", \"along\": 0.6,"
                    + " \"end_mm\": [120,20,150], \"caliper_start_mm\": 12, \"caliper_end_mm\": 9")
            .segment(
                "\"id\": \"b2\", \"parent\": \"b1\", \"kind\": \"branch\","
                    + " \"end_mm\": [230,10,190], \"caliper_start_mm\": 9, \"caliper_end_mm\": 5")
            .proposal(
                TreeText.text(
                    "\"guy_lines\": [{\"id\": \"g\", \"segment\": \"b2\", \"along\": %s,"
                        + " \"anchor_mm\": [190,0,-10], \"shorten_mm\": %s}]",
                    along, shorten))
            .read(folder);
    return TrialRequest.of(document.tree(), document.plans().get(0), HORNBEAM);
  }

  private static RiskGuess guess(TrialRequest request) {
    Plan plan = request.plan();
    return new TreeStand(request.tree(), plan, HORNBEAM, RodOptions.DEFAULT)
        .with(request.proposals())
        .risk();
  }

  @ParameterizedTest
  @CsvSource({
    "0.9, 20, ''",
    "0.9, 14, ''",
    "0.9, 28, ''",
    "0.4, 6, ''",
    "0.4, 12, ''",
    "0.9, 25, '\"wood\": {\"b*\": {\"moe_GPa\": 9}}'",
  })
  void guess_isNearTheOddsDrawn(double along, double shorten, String more) {
    TrialRequest request = request(along, shorten, more);
    Risk drawn = RiskTrial.run(request, new RiskOptions(DRAWS, 7, part -> {})).risk().orElseThrow();
    double breaking = drawn.breaking().p();
    double guessed = guess(request).breaking();
    if (Boolean.getBoolean("boughwright.measured")) {
      System.out.printf(
          Locale.ROOT,
          "QuickRiskTest: along %.1f by %.0f mm%s: guessed %.4f, drawn %.4f%n",
          along,
          shorten,
          more.isEmpty() ? "" : " with a given modulus",
          guessed,
          breaking);
    }
    assertThat(breaking).isBetween(0.001, 0.7);
    assertThat(odds(guessed) / odds(breaking)).isBetween(1 / FACTOR, FACTOR);
  }

  private static double odds(double p) {
    return p / (1 - p);
  }

  @Test
  void guess_growsWithTheBend() {
    assertThat(guess(request(0.9, 40, "")).breaking())
        .isGreaterThan(guess(request(0.9, 20, "")).breaking());
    assertThat(guess(request(0.9, 40, "")).kink())
        .isGreaterThan(guess(request(0.9, 20, "")).kink());
  }
}
