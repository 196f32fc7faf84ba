// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.plan.Document;
import boughwright.modeller.species.SpeciesTable;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A load at a part a of the length L bends the clamped end by 6 d / (a (3 L - a)) for a movement d
 * of the tip (Gere and Timoshenko, Mechanics of Materials; from memory): from half-way out almost
 * twice as much as from the tip.
 */
class MovedLineTest {
  @TempDir Path folder;

  private TrialRequest request(double along, double shorten) {
    TreeText text =
        new TreeText("\"fagus-sylvatica\"")
            .segment(
                "\"id\": \"a\", \"parent\": null, \"kind\": \"trunk\", \"start_mm\": [0,0,0],"
                    + " \"end_mm\": [0,0,150], \"caliper_start_mm\": 14, \"caliper_end_mm\": 14")
            .segment(
                "\"id\": \"b\", \"parent\": \"a\", \"kind\": \"trunk\","
                    + " \"end_mm\": [0,0,300], \"caliper_start_mm\": 14, \"caliper_end_mm\": 14")
            .proposal(
                TreeText.text(
                    "\"guy_lines\": [{\"id\": \"g\", \"segment\": \"a\", \"along\": %s,"
                        + " \"anchor_mm\": [600, 0, 200], \"shorten_mm\": %s}]",
                    along, shorten));
    Document document = text.read(folder);
    return TrialRequest.of(
        document.tree(),
        document.plans().get(0),
        SpeciesTable.bundled().woodFor("fagus-sylvatica"));
  }

  private static Optional<String> moved(TrialRequest request, Verdict.Level level) {
    TrialResult result = RiskTrial.run(request, new RiskOptions(500, 1, part -> {}));
    return new MovedLine(request, result, result.risk().orElseThrow()).words(level);
  }

  @Test
  void lineTiedNearTheClamp_isBetterTiedFurtherOut() {
    String words = moved(request(0.9, 14), Verdict.Level.NO).orElseThrow();
    Matcher place = Pattern.compile("Line g moved to (\\d+) % along b, .*").matcher(words);
    assertThat(place.matches()).as(words).isTrue();
    assertThat(Integer.parseInt(place.group(1))).isGreaterThanOrEqualTo(30);
    assertThat(words).contains("the end of b comes as far");
  }

  @Test
  void lineThatCannotBeBettered_isLeftAlone() {
    assertThat(moved(request(0.9, 14), Verdict.Level.TAKES_IT)).isEmpty();
  }
}
