// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.physics.trial.AidEffect;
import boughwright.physics.trial.Hardware;
import boughwright.physics.trial.HardwareFinding;
import boughwright.physics.trial.HardwareFinding.Level;
import boughwright.physics.trial.HardwareFinding.Topic;
import boughwright.physics.trial.LineHardware;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Words and JSON of tackle and aids that were set down by hand. */
class TackleWordsTest {
  private static final Hardware HARDWARE =
      new Hardware(
          List.of(
              new LineHardware(
                  "g1",
                  25,
                  OptionalDouble.of(60.25),
                  OptionalDouble.of(180.75),
                  0.0004,
                  Optional.of(new LineHardware.Turns(1, 7.5, OptionalDouble.of(12))),
                  OptionalDouble.empty(),
                  0.0125,
                  Math.toRadians(20),
                  List.of(
                      new HardwareFinding(Level.FINE, Topic.STRAND, "Wire is strong enough."),
                      new HardwareFinding(Level.FINE, Topic.TIGHTENING, "Put in 7.5 turns."),
                      new HardwareFinding(Level.LOOK, Topic.PAD, "Stop the pad."),
                      new HardwareFinding(Level.NO, Topic.ANCHOR, "The screw comes out.")))),
          List.of(new HardwareFinding(Level.NO, Topic.STANDING, "It tips.")));

  private static final AidEffect CUTS =
      new AidEffect(
          "relief-cut",
          "b1",
          Optional.of(
              new AidEffect.Figures(
                  40, 0.03, 0.012, OptionalDouble.of(0.8), OptionalDouble.empty())),
          Optional.empty(),
          List.of(
              new AidEffect.Cut(0.25, Math.toRadians(1), Math.toRadians(4)),
              new AidEffect.Cut(0.5, Math.toRadians(5), Math.toRadians(4))),
          List.of("It closes."),
          "It heals slowly.");

  private static String words(boolean details) {
    TextPage page = new TextPage();
    HardwareText.write(page, HARDWARE, details);
    AidText.write(page, List.of(CUTS));
    return page.toString().replaceAll("\\s+", " ");
  }

  @Test
  void text_hasTheWorstFirst_andWhatIsFineInOneLine() {
    assertThat(words(false))
        .containsSubsequence(
            "Tackle g1: strand fine.",
            "No. The screw comes out.",
            "Look: Stop the pad.",
            "Put in 7.5 turns.",
            "standing:",
            "No. It tips.",
            "Relief cuts on b1",
            "It closes.",
            "Price: It heals slowly.")
        .doesNotContain("strong enough");
    assertThat(words(true)).contains("Wire is strong enough.").doesNotContain("strand fine");
  }

  @Test
  void nothingHeld_saysNothing() {
    TextPage page = new TextPage();
    HardwareText.write(page, new Hardware(List.of(), List.of()), true);
    AidText.write(page, List.of());
    assertThat(page.toString()).isBlank();
  }

  @Test
  void json_hasUnitsInItsNames_andLeavesOutWhatIsNotKnown() throws Exception {
    JsonNode node = new ObjectMapper().readTree(HardwareJson.of(HARDWARE).toString());
    JsonNode line = node.at("/lines/0");
    assertThat(line.get("id").asText()).isEqualTo("g1");
    assertThat(line.get("pull_N").asDouble()).isEqualTo(25);
    assertThat(line.get("safe_load_N").asDouble()).isEqualTo(60.25);
    assertThat(line.get("stretch_mm").asDouble()).isEqualTo(0.4);
    assertThat(line.at("/turns/to_add").asDouble()).isEqualTo(7.5);
    assertThat(line.at("/turns/left").asDouble()).isEqualTo(12);
    assertThat(line.at("/pad/length_needed_mm").asDouble()).isEqualTo(12.5);
    assertThat(line.at("/pad/off_square_deg").asDouble()).isEqualTo(20);
    assertThat(line.get("pad").has("pressure_MPa")).isFalse();
    assertThat(line.at("/findings/3/level").asText()).isEqualTo("no");
    assertThat(node.at("/standing/0/about").asText()).isEqualTo("standing");
  }

  @Test
  void aidJson_tellsWithAndWithout_andWhichCutIsShut() throws Exception {
    JsonNode aid = new ObjectMapper().readTree(AidJson.of(List.of(CUTS)).toString()).get(0);
    assertThat(aid.at("/without/moved_mm").asDouble()).isEqualTo(30);
    assertThat(aid.at("/without/of_crack_limit").asDouble()).isEqualTo(0.8);
    assertThat(aid.get("without").has("of_split_limit")).isFalse();
    assertThat(aid.has("with")).isFalse();
    assertThat(aid.at("/cuts/0/shut").asBoolean()).isFalse();
    assertThat(aid.at("/cuts/1/shut").asBoolean()).isTrue();
    assertThat(aid.at("/cuts/1/shut_at_deg").asDouble()).isEqualTo(4);
    assertThat(aid.get("price").asText()).isEqualTo("It heals slowly.");
  }
}
