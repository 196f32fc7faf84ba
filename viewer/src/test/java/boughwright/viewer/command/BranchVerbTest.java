// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The answer for a plain branch, against the elastica. */
class BranchVerbTest {
  /** Promised for positions, of the length; force and moment follow with it. */
  private static final double ERROR = 1e-5;

  /**
   * Drop and shortening over length for P L2 / EI, from elliptic integrals (Bisshopp and Drucker
   * 1945; digits computed with an independent library).
   */
  @ParameterizedTest
  @CsvSource({
    "0.5, 0.162143575658, 0.0159189624708",
    "1, 0.3017207738, 0.0564332362834",
    "2, 0.493457480397, 0.160641720825",
    "3, 0.60325344113, 0.254420184564"
  })
  void force_isThatOfTheElastica(double load, double drop, double shortening) {
    double length = TreeFixture.LENGTH;
    JsonNode answer =
        Ran.command(
                "branch",
                "--species",
                "larch",
                "--moe-GPa",
                "8",
                "--length-mm",
                "400",
                "--calipers-mm",
                "10,10",
                "--tip-mm",
                Double.toString(drop * length),
                "--json")
            .json();
    double force = load * TreeFixture.STIFFNESS / Math.pow(length / 1000, 2);
    double moment = force * (1 - shortening) * length / 1000;
    assertThat(answer.get("force_N").doubleValue()).isCloseTo(force, within(10 * ERROR * force));
    assertThat(answer.get("tip_in_mm").doubleValue())
        .isCloseTo(shortening * length, within(ERROR * length));
    JsonNode peak = answer.get("peak");
    assertThat(peak.get("moment_Nm").doubleValue()).isCloseTo(moment, within(0.005 * moment));
    assertThat(peak.get("bending_strain").doubleValue())
        .isCloseTo(
            moment / TreeFixture.STIFFNESS * 0.005,
            within(0.005 * moment / TreeFixture.STIFFNESS * 0.005));
    assertThat(peak.get("along").doubleValue()).isCloseTo(0, within(1e-3));
    assertThat(peak.get("side").textValue()).isEqualTo("top");
  }

  /**
   * Small movement of a cone held at its thick end: d = 4 P L3 / (3 pi E r1 r0^3), from integrating
   * P x2 / EI along a linear radius (virtual work).
   */
  @Test
  void smallMovement_isThatOfACone() {
    JsonNode answer =
        Ran.command(
                "branch",
                "--species",
                "larch",
                "--moe-GPa",
                "8",
                "--length-mm",
                "300",
                "--calipers-mm",
                "16,10",
                "--tip-mm",
                "1",
                "--json")
            .json();
    double stiffness = 3 * Math.PI * 8e9 * 0.005 * Math.pow(0.008, 3) / (4 * Math.pow(0.3, 3));
    assertThat(answer.get("force_N").doubleValue())
        .isCloseTo(stiffness * 0.001, within(1e-3 * stiffness * 0.001));
  }

  @Test
  void bark_takesWoodAway() {
    JsonNode answer =
        Ran.command(
                "branch",
                "--species",
                "larch",
                "--moe-GPa",
                "8",
                "--length-mm",
                "300",
                "--calipers-mm",
                "17,11",
                "--tip-mm",
                "1",
                "--bark-mm",
                "0.5",
                "--json")
            .json();
    double stiffness = 3 * Math.PI * 8e9 * 0.005 * Math.pow(0.008, 3) / (4 * Math.pow(0.3, 3));
    assertThat(answer.get("force_N").doubleValue())
        .isCloseTo(stiffness * 0.001, within(1e-3 * stiffness * 0.001));
  }

  @Test
  void deepestMovement_isStillReached() {
    JsonNode answer =
        Ran.command(
                "branch",
                "--species",
                "larch",
                "--length-mm",
                "400",
                "--calipers-mm",
                "16,4",
                "--tip-mm",
                "360",
                "--json")
            .json();
    assertThat(answer.get("converged").booleanValue()).isTrue();
    assertThat(answer.get("force_N").doubleValue()).isPositive();
  }

  @Test
  void speciesModulus_isTakenForLiveBranchWood() {
    String[] words = {
      "branch",
      "--species",
      "carpinus betulus",
      "--length-mm",
      "300",
      "--calipers-mm",
      "10,10",
      "--tip-mm",
      "30",
      "--json"
    };
    double table = Ran.command((Object[]) words).json().get("force_N").doubleValue();
    words = Arrays.copyOf(words, words.length + 2);
    words[words.length - 2] = "--moe-GPa";
    words[words.length - 1] = "9.7";
    double printed = Ran.command((Object[]) words).json().get("force_N").doubleValue();
    assertThat(table / printed).isCloseTo(0.75, within(1e-6));
  }

  @Test
  void text_namesForceDirectionStrainAndLimits() {
    Ran ran =
        Ran.command(
            "branch",
            "--species",
            "hornbeam",
            "--length-mm",
            "14in",
            "--calipers-mm",
            "16.5;11",
            "--tip-mm",
            "6 cm",
            "--bark-mm",
            "0,8");
    assertThat(ran.code()).isZero();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.words())
        .contains("355.6 mm long, calipers 16.5 and 11 mm, bark 0.8 mm")
        .contains("To bring the tip 60.0 mm down", "like a hung weight")
        .containsPattern("pull at the tip, straight down +[0-9.]+ N")
        .containsPattern("bending strain there +[0-9.]+ %")
        .containsPattern("the inside starts to flow at +0\\.28 %")
        .contains("eye protection");
    assertThat(ran.out().lines().findFirst().orElseThrow()).contains("straight-line elastic");
    assertThat(ran.out().lines()).allSatisfy(line -> assertThat(line.length()).isLessThan(80));
  }
}
