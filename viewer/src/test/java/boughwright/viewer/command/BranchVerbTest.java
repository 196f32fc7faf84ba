// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The answer for a plain branch, against the elastica. */
class BranchVerbTest {
  /** Promised for positions, of the length; force and moment follow with it. */
  private static final double ERROR = 1e-5;

  /** EI of a rod so thin that it never yields: a tenth of the caliper, 1e-4 of the stiffness. */
  private static final double SLENDER = 1e-4 * TreeFixture.STIFFNESS;

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
        Ran.typed(
                "branch --species larch --moe-GPa 8 --length-mm 400 --calipers-mm 1,1 --tip-mm "
                    + Double.toString(drop * length)
                    + " --no-risk --json")
            .json();
    double force = load * SLENDER / Math.pow(length / 1000, 2);
    double moment = force * (1 - shortening) * length / 1000;
    assertThat(answer.get("force_N").doubleValue()).isCloseTo(force, within(10 * ERROR * force));
    assertThat(answer.get("tip_in_mm").doubleValue())
        .isCloseTo(shortening * length, within(ERROR * length));
    JsonNode peak = answer.get("peak");
    assertThat(peak.get("moment_Nm").doubleValue()).isCloseTo(moment, within(0.005 * moment));
    assertThat(peak.get("bending_strain").doubleValue())
        .isCloseTo(moment / SLENDER * 0.0005, within(0.005 * moment / SLENDER * 0.0005));
    assertThat(peak.get("along").doubleValue()).isCloseTo(0, within(1e-3));
    assertThat(peak.get("side").textValue()).isEqualTo("top");
  }

  /**
   * Small movement of a cone held at its thick end: d = 4 P L3 / (3 pi E r1 r0^3), from integrating
   * P x2 / EI along a linear radius (virtual work).
   */
  @ParameterizedTest
  @ValueSource(strings = {"16,10", "17,11 --bark-mm 0.5"})
  void smallMovement_isThatOfTheConeUnderTheBark(String calipers) {
    JsonNode answer =
        Ran.typed(
                "branch --species larch --moe-GPa 8 --length-mm 300 --tip-mm 1 --no-risk --json"
                    + " --calipers-mm "
                    + calipers)
            .json();
    double stiffness = 3 * Math.PI * 8e9 * 0.005 * Math.pow(0.008, 3) / (4 * Math.pow(0.3, 3));
    assertThat(answer.get("force_N").doubleValue())
        .isCloseTo(stiffness * 0.001, within(1e-3 * stiffness * 0.001));
  }

  @Test
  void deepestMovement_isStillReached_whereTheBranchIsThin() {
    JsonNode answer = deepest("8,3");
    assertThat(answer.get("converged").booleanValue()).isTrue();
    assertThat(answer.get("force_N").doubleValue()).isPositive();
  }

  /** It would have to be bent at its start as no wood can be. */
  @Test
  void deepestMovement_ofAStoutBranch_isNoPose() {
    assertThat(deepest("16,4").get("converged").booleanValue()).isFalse();
  }

  private static JsonNode deepest(String calipers) {
    return Ran.typed(
            "branch --species larch --length-mm 400 --calipers-mm "
                + calipers
                + " --tip-mm 360 --no-risk --json")
        .json();
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
      "1",
      "--no-risk",
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
            "0,8",
            "--no-risk");
    assertThat(ran.code()).isZero();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.words())
        .contains("355.6 mm long, calipers 16.5 and 11 mm, bark 0.8 mm")
        .contains("To bring the tip 60.0 mm down", "like a hung weight")
        .containsPattern("pull at the tip, straight down +[0-9.]+ N")
        .containsPattern("bending strain there +[0-9.]+ %")
        .containsPattern("the inside starts to flow at +0\\.28 %")
        .contains("eye protection");
    assertThat(ran.out().lines().findFirst().orElseThrow()).contains("no risk was asked for");
    assertThat(ran.out().lines()).allSatisfy(line -> assertThat(line.length()).isLessThan(80));
  }

  @Test
  void answer_saysVerdict_forceAsARange_strainAndOdds() {
    Ran ran =
        Ran.typed(
            "branch --species hornbeam --length-mm 300 --calipers-mm 14,8 --tip-mm 60"
                + " --samples 200 --on 2026-01-20 --hemisphere north");
    assertThat(ran.code()).isZero();
    assertThat(ran.out().lines().findFirst().orElseThrow()).matches("[A-Z][^.]+\\.");
    assertThat(ran.words())
        .containsPattern("Pull [0-9.]+ to [0-9.]+ N, most likely [0-9.]+ N\\.")
        .containsPattern("kink on the inside +(about|less|almost)")
        .containsPattern("crack on the outside +(about|less|almost)")
        .containsPattern("the stretched side, by +[0-9.]+ %")
        .contains("normal working range")
        .doesNotContain("hemisphere is not given");
    assertThat(ran.out().lines()).allSatisfy(line -> assertThat(line.length()).isLessThan(80));
  }

  @Test
  void caliperReadWorse_widensTheForce() {
    assertThat(width("2")).isGreaterThan(1.05 * width("0.05"));
  }

  /** Width of the range of the force over its middle. */
  private static double width(String caliperError) {
    JsonNode force =
        Ran.typed(
                "branch --species larch --length-mm 300 --calipers-mm 10,8 --tip-mm 30 --json"
                    + " --samples 400 --caliper-error-mm "
                    + caliperError)
            .json()
            .get("force_range_N");
    return (force.get("high").doubleValue() - force.get("low").doubleValue())
        / force.get("middle").doubleValue();
  }
}
