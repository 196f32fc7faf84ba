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

/** The keys and units of {@code bend --json}, against values worked out by hand. */
class BendJsonTest {
  /**
   * Level cantilever with a dead tip load, P L2 / EI = 1, from elliptic integrals: Bisshopp and
   * Drucker, Large deflection of cantilever beams, Quarterly of Applied Mathematics 3 (1945);
   * digits computed with an independent library.
   */
  private static final double DROP = 0.3017207738;

  private static final double SHORTENING = 0.0564332362834;
  private static final double TIP_ANGLE = 0.461351949712;

  /** What is promised for a tip load, of the length. */
  private static final double TIP_ERROR = 1e-5 * TreeFixture.LENGTH;

  /** What is promised for strain. */
  private static final double STRAIN_ERROR = 0.005;

  @TempDir private Path folder;

  private static JsonNode only(Ran ran) {
    assertThat(ran.code()).isZero();
    assertThat(ran.err()).isEmpty();
    JsonNode trials = ran.json().get("trials");
    assertThat(trials).hasSize(1);
    return trials.get(0);
  }

  @Test
  void pose_isInMillimetres_withDirectionsOfLengthOne() {
    JsonNode pose =
        only(Ran.command("bend", TreeFixture.cantilever(folder), "--json")).get("pose").get(0);
    assertThat(names(pose))
        .containsExactly("segment", "start_mm", "end_mm", "start_direction", "end_direction");
    assertThat(pose.get("segment").textValue()).isEqualTo("t1");
    assertVector(pose.get("start_mm"), 0, 0, 0, TIP_ERROR);
    double across = TreeFixture.LENGTH * (1 - SHORTENING);
    assertVector(pose.get("end_mm"), across, 0, -TreeFixture.LENGTH * DROP, TIP_ERROR);
    assertVector(pose.get("start_direction"), 1, 0, 0, 1e-6);
    assertVector(pose.get("end_direction"), Math.cos(TIP_ANGLE), 0, -Math.sin(TIP_ANGLE), 1e-4);
  }

  @Test
  void peak_holdsStrainAndMoment_ofTheClampedEnd() {
    JsonNode peak = only(Ran.command("bend", TreeFixture.cantilever(folder), "--json")).get("peak");
    double force = TreeFixture.STIFFNESS / Math.pow(TreeFixture.LENGTH / 1000, 2);
    double moment = force * (1 - SHORTENING) * TreeFixture.LENGTH / 1000;
    double strain = moment / TreeFixture.STIFFNESS * TreeFixture.CALIPER / 2000;
    assertThat(names(peak))
        .containsExactly(
            "segment",
            "along",
            "round_deg",
            "side",
            "fibre",
            "bending_strain",
            "tension_strain",
            "compression_strain",
            "moment_Nm");
    assertThat(peak.get("along").doubleValue()).isCloseTo(0, within(1e-3));
    assertThat(peak.get("round_deg").doubleValue()).isCloseTo(0, within(1e-6));
    assertThat(peak.get("side").textValue()).isEqualTo("top");
    assertThat(peak.get("fibre").textValue()).isEqualTo("tension");
    assertThat(peak.get("moment_Nm").doubleValue())
        .isCloseTo(moment, within(STRAIN_ERROR * moment));
    for (String key : List.of("bending_strain", "tension_strain", "compression_strain")) {
      assertThat(peak.get(key).doubleValue()).isCloseTo(strain, within(STRAIN_ERROR * strain));
    }
  }

  @Test
  void trial_hasTheAgreedKeys_andNothingThatWasNotComputed() {
    Ran ran = Ran.command("bend", TreeFixture.cantilever(folder), "--json");
    JsonNode trial = only(ran);
    assertThat(names(trial))
        .containsExactly(
            "plan",
            "proposals",
            "converged",
            "stable",
            "response",
            "guy_lines",
            "pose",
            "peak",
            "segments",
            "apex",
            "error_estimate",
            "hardware",
            "course",
            "held",
            "warnings",
            "assumptions");
    assertThat(trial.get("response").textValue()).isEqualTo("elastic");
    assertThat(trial.get("held").textValue()).isEqualTo("weight");
    assertThat(trial.get("assumptions").get(0).textValue()).contains("straight-line elastic");
    assertThat(names(trial.get("error_estimate"))).containsExactly("position_mm", "strain_percent");
    assertThat(ran.out()).doesNotContain("null", "NaN", "risk");
  }

  @Test
  void guyLine_heldByTension_saysHowFarToTighten() {
    Path file = TreeFixture.pulled(folder, "\"tension_N\": 6");
    JsonNode trial = only(Ran.command("bend", file, "--no-risk", "--json"));
    JsonNode line = trial.get("guy_lines").get(0);
    assertThat(names(line))
        .containsExactly("id", "tension_N", "length_mm", "shortening_mm", "slack");
    assertThat(line.get("id").textValue()).isEqualTo("g1");
    assertThat(line.get("tension_N").doubleValue()).isEqualTo(6);
    assertThat(line.get("slack").booleanValue()).isFalse();
    JsonNode tip = trial.get("pose").get(0).get("end_mm");
    double length = Math.hypot(300 - tip.get(0).doubleValue(), tip.get(2).doubleValue());
    assertThat(line.get("length_mm").doubleValue()).isCloseTo(length, within(1e-6));
    assertThat(line.get("shortening_mm").doubleValue()).isCloseTo(500 - length, within(1e-6));
    assertThat(names(trial.get("error_estimate"))).contains("tension_percent");
  }

  @Test
  void guyLine_heldByLength_givesBackTheTensionThatMadeThatLength() {
    Path byTension = TreeFixture.pulled(folder, "\"tension_N\": 6");
    JsonNode first = only(Ran.command("bend", byTension, "--json")).get("guy_lines").get(0);
    String length = first.get("length_mm").decimalValue().toPlainString();
    Path byLength = TreeFixture.pulled(folder, "\"length_mm\": " + length);
    JsonNode trial = only(Ran.command("bend", byLength, "--json"));
    assertThat(trial.get("held").textValue()).isEqualTo("length");
    assertThat(trial.get("guy_lines").get(0).get("tension_N").doubleValue())
        .isCloseTo(6, within(0.002 * 6));
  }

  @Test
  void axialPull_belowTheBucklingLoad_pressesAlongTheWood() throws IOException {
    double buckling =
        Math.pow(Math.PI / 2, 2) * TreeFixture.STIFFNESS / Math.pow(TreeFixture.LENGTH / 1000, 2);
    Path file = TreeFixture.pushed(folder);
    String text = "\"tension_N\": " + 0.5 * buckling;
    Path gentle =
        TreeFixture.write(
            folder,
            "gentle.tree.json",
            Files.readString(file).replace("\"tension_N\": 2000", text));
    JsonNode trial = only(Ran.command("bend", gentle, "--json"));
    assertThat(trial.get("segments").get(0).get("axial_N").doubleValue())
        .isCloseTo(-0.5 * buckling, within(1e-6 * buckling));
    assertThat(trial.has("peak")).isFalse();
  }

  @Test
  void poseThatDoesNotHold_isNotShown() {
    JsonNode trial = only(Ran.command("bend", TreeFixture.pushed(folder), "--json"));
    assertThat(trial.get("stable").booleanValue()).isFalse();
    assertThat(trial.get("unstable_modes").intValue()).isPositive();
    assertThat(trial.get("reason").textValue()).contains("t1");
    assertThat(names(trial))
        .doesNotContain("pose", "peak", "segments", "guy_lines", "error_estimate", "apex");
  }

  @Test
  void everyPlan_isTried_unlessOneIsNamed() {
    Path file = TreeFixture.branched(folder, "Two plans (invented)");
    JsonNode all = Ran.command("bend", file, "--no-risk", "--json").json().get("trials");
    assertThat(all).hasSize(2);
    assertThat(all.get(1).get("plan").textValue()).isEqualTo("b");
    JsonNode one = only(Ran.command("bend", file, "--no-risk", "--json", "--plan", "b"));
    assertThat(one.get("plan").textValue()).isEqualTo("b");
  }

  @Test
  void proposals_arePicked_inTheOrderOfThePlan() {
    Path file = TreeFixture.branched(folder, "Two proposals (invented)");
    JsonNode one =
        only(Ran.command("bend", file, "--no-risk", "--json", "--plan", "a", "--proposal", "p2"));
    assertThat(one.get("proposals")).hasSize(1);
    assertThat(one.get("guy_lines")).isEmpty();
    assertThat(one.get("held").textValue()).isEqualTo("weight");
    JsonNode both =
        only(
            Ran.command(
                "bend", file, "--no-risk", "--json", "--plan", "a", "--proposal", "p2, p1"));
    assertThat(both.get("proposals").get(0).textValue()).isEqualTo("p1");
    assertThat(both.get("held").textValue()).isEqualTo("tension+weight");
  }

  @Test
  void limits_ofTheSpecies_standBesideTheStrain() {
    Path file = TreeFixture.branched(folder, "Limits (invented)");
    JsonNode limits =
        only(Ran.command("bend", file, "--no-risk", "--json", "--plan", "a")).get("limits");
    // BRE Report BR 241, green hornbeam: 27.0 and 66.0 MPa over 9.70 GPa.
    assertThat(limits.get("crushing_strain").doubleValue()).isCloseTo(27.0 / 9700, within(1e-6));
    assertThat(limits.get("rupture_ratio").doubleValue()).isCloseTo(66.0 / 9700, within(1e-6));
    assertThat(limits.get("source").textValue()).contains("BR 241");
  }

  @Test
  void peakOnABranch_isAlsoGivenFromItsUnion() {
    Path file = TreeFixture.branched(folder, "Union (invented)");
    JsonNode peak =
        only(Ran.command("bend", file, "--no-risk", "--json", "--plan", "a")).get("peak");
    assertThat(peak.get("segment").textValue()).isEqualTo("b1");
    double length = Math.hypot(200, 60);
    double fromAxis = peak.get("along").doubleValue() * length;
    assertThat(peak.get("from_union_mm").doubleValue()).isBetween(0.0, fromAxis - 15);
  }

  static List<String> names(JsonNode node) {
    List<String> names = new ArrayList<>();
    node.fieldNames().forEachRemaining(names::add);
    return names;
  }

  private static void assertVector(JsonNode node, double x, double y, double z, double error) {
    assertThat(node).hasSize(3);
    assertThat(node.get(0).doubleValue()).isCloseTo(x, within(error));
    assertThat(node.get(1).doubleValue()).isCloseTo(y, within(error));
    assertThat(node.get(2).doubleValue()).isCloseTo(z, within(error));
  }
}
