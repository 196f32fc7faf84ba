// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The risk of a bend from the command line, drawn for real. */
class BendRiskTest {
  private static final String FEW = "200";

  @TempDir private Path folder;

  private Ran bend(Path file, Object... more) {
    Object[] words = new Object[6 + more.length];
    List.of("bend", file, "--plan", "b", "--samples", FEW).toArray(words);
    System.arraycopy(more, 0, words, 6, more.length);
    return Ran.command(words);
  }

  private Path tree() {
    return TreeFixture.branched(folder, "Risk (invented)");
  }

  @Test
  void json_hasTheAgreedKeys_andProbabilities() {
    JsonNode trial = bend(tree(), "--json", "--seed", "7").json().get("trials").get(0);
    assertThat(trial.get("response").textValue()).isEqualTo("fibre");
    JsonNode risk = trial.get("risk");
    for (String mode : List.of("crack", "kink")) {
      JsonNode failure = risk.get(mode);
      for (String key : List.of("p", "low", "high")) {
        assertThat(failure.get(key).doubleValue()).isBetween(0.0, 1.0);
      }
      assertThat(failure.get("low").doubleValue())
          .isLessThanOrEqualTo(failure.get("high").doubleValue());
      assertThat(BendJsonTest.names(failure))
          .contains("segment", "along", "from_union_mm", "round_deg", "side", "demand");
      assertThat(BendJsonTest.names(failure.get("limit"))).containsExactly("low", "middle", "high");
    }
    assertThat(risk.get("samples").intValue()).isEqualTo(200);
    assertThat(risk.get("seed").intValue()).isEqualTo(7);
    assertThat(risk.get("tensions_N").get("g1").get("low").doubleValue())
        .isLessThan(risk.get("tensions_N").get("g1").get("high").doubleValue());
    assertThat(risk.get("sensitivity").get(0).get("share").doubleValue()).isBetween(0.0, 1.0);
    assertThat(trial.get("verdict").get("level").textValue())
        .isIn("takes-it", "in-stages", "with-protection", "no");
    assertThat(trial.get("peak").get("compression_strain").doubleValue())
        .isGreaterThanOrEqualTo(trial.get("peak").get("tension_strain").doubleValue());
  }

  @Test
  void sameSeed_givesTheSameAnswer_andAnotherSeedAnother() {
    Path file = tree();
    String first = bend(file, "--json", "--on", "2026-03-01").out();
    assertThat(bend(file, "--json", "--on", "2026-03-01").out()).isEqualTo(first);
    assertThat(bend(file, "--json", "--on", "2026-03-01", "--seed", "2").out()).isNotEqualTo(first);
  }

  @Test
  void noRisk_leavesRiskAndVerdictOut() {
    Ran ran = Ran.command("bend", tree(), "--no-risk", "--json");
    assertThat(BendJsonTest.names(ran.json().get("trials").get(0)))
        .contains("peak")
        .doesNotContain("risk", "verdict");
  }

  @Test
  void firstLine_isTheVerdict_andTheWordsSayWhereToMark() {
    Ran ran = bend(tree());
    assertThat(ran.out().lines().findFirst().orElseThrow())
        .matches("(The wood takes it|Take it|Only with|No,).*\\.");
    assertThat(ran.words())
        .containsPattern("g1: pull [0-9.]+ to [0-9.]+ N, most likely [0-9.]+ N\\.")
        .containsPattern("Crack on the outside: (about|less|almost)")
        .containsPattern("mark b1: [a-z ]+, [0-9]+ mm from the union \\([0-9]+ degrees round it")
        .contains("Drawn 200 times, seed 1.")
        .doesNotContain("What decides most");
    assertThat(bend(tree(), "--details").words()).contains("What decides most", "Bent hardest");
    assertThat(ran.out().lines()).allSatisfy(line -> assertThat(line.length()).isLessThan(80));
  }

  @Test
  void proxy_isNamedInTheFirstLines() {
    String text =
        TreeFixture.branchedText("Proxy (invented)").replace("carpinus-betulus", "acer-palmatum");
    Ran ran = bend(TreeFixture.write(folder, "proxy.tree.json", text));
    assertThat(ran.words().split("=====")[0]).contains("Acer palmatum", "red maple", "stand in");
  }

  @Test
  void dayAndFrost_reachTheVerdict() {
    Path file = tree();
    String winter = season(file, "--on", "2026-01-20", "--hemisphere", "north");
    String spring = season(file, "--on", "2026-04-20", "--hemisphere", "north");
    String turned = season(file, "--on", "2026-04-20", "--hemisphere", "south");
    String frozen = season(file, "--on", "2026-01-20", "--hemisphere", "north", "--frost");
    assertThat(List.of(winter, spring, frozen)).doesNotHaveDuplicates();
    assertThat(turned).isNotEqualTo(spring);
  }

  @Test
  void monthsSinceHardWork_countBeforeTheFile() {
    Path file = tree();
    String fresh = season(file, "--on", "2026-01-20", "--months-since-repotting", "1");
    String rooted = season(file, "--on", "2026-01-20", "--months-since-repotting", "40");
    assertThat(fresh).isNotEqualTo(rooted);
  }

  private String season(Path file, Object... said) {
    Object[] words = new Object[said.length + 1];
    words[0] = "--json";
    System.arraycopy(said, 0, words, 1, said.length);
    return bend(file, words).json().findValue("verdict").toString();
  }

  @Test
  void temperature_tellsHowMuchLessPull_orThatItIsTooCold() {
    Ran warm = bend(tree(), "--temperature", "32");
    // Wood Handbook FPL-GTR-282, Table 5-16, green: 13.12 - 0.1793 x 89.6 degrees Fahrenheit
    assertThat(warm.words()).contains("2.9 % less stiff", "so much less pull");
    Ran cold = bend(tree(), "--temperature", "-3");
    assertThat(cold.out().lines().findFirst().orElseThrow()).startsWith("No");
    assertThat(bend(tree(), "--temperature", "90").code()).isEqualTo(2);
  }
}
