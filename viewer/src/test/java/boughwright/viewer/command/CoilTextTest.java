// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.plan.Coil;
import boughwright.modeller.plan.Hand;
import boughwright.modeller.plan.Material;
import boughwright.modeller.plan.Spot;
import boughwright.physics.trial.CoilHold;
import boughwright.physics.trial.CoilWork;
import boughwright.physics.trial.FailurePlace;
import boughwright.physics.trial.Range;
import boughwright.physics.trial.WireChoice;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Words and JSON of coils that were set down by hand. */
class CoilTextTest {
  private static final Coil COIL =
      new Coil(
          new Spot("t1", 0.5),
          new Spot("b1", 0.9),
          Material.ALUMINIUM,
          3e-3,
          2,
          Math.toRadians(50),
          Hand.RIGHT,
          Map.of());

  private static CoilHold hold(Range kept, Optional<CoilHold.Overbend> over) {
    FailurePlace outside = new FailurePlace("b1", 0.1, OptionalDouble.of(0.014), 0, "top");
    CoilWork work =
        new CoilWork(
            COIL,
            0.3,
            7.25,
            new CoilWork.Pitch(0.042, 0.035),
            0.029,
            0.61,
            "held by 2.0 turns on t1 and the fork it crosses",
            true,
            -0.2,
            Optional.of(Hand.LEFT),
            Optional.of(outside));
    return new CoilHold(
        "p1",
        "b1",
        0.08,
        0.05,
        0.03,
        kept,
        0.75,
        List.of(new CoilHold.HandPull("h1", 0.08, 12.5)),
        over,
        List.of(work));
  }

  private static String text(CoilHold hold) {
    TextPage page = new TextPage();
    CoilText.write(page, List.of(hold));
    return page.toString().replaceAll("\\s+", " ");
  }

  private static Optional<CoilHold.Overbend> further() {
    return Optional.of(
        new CoilHold.Overbend(1.5, List.of(new CoilHold.HandPull("h1", 0.12, 15)), 1.6));
  }

  @Test
  void coilThatDoesNotHold_saysWhatStaysAndHowFarToGo() {
    assertThat(text(hold(new Range(0.5, 0.62, 0.7), further())))
        .contains("bent 80 mm")
        .contains("held by the coils 50 mm")
        .contains("unwired at once 30 mm")
        .contains("Not strong enough by itself", "about 62 % of the movement stays", "up to 70 %")
        .contains("0.75 times the pull of the bent wood")
        .contains("hand bend h1 to 120 mm (15 N)", "bend further than you want it to stay")
        .contains("strains the wood 1.6 times")
        .contains("cut, each strand 610 mm", "one turn every 42 mm, 35 mm at the end")
        .contains("wind it left-handed; the twist of this bend opens a right-handed coil")
        .contains("Let a turn cross the outside of the bend: b1: top, 14");
  }

  @Test
  void coilThatSpringsBackNothing_asksForNoMore() {
    assertThat(text(hold(new Range(0.97, 0.98, 0.99), further())))
        .contains("eye protection", "Cut each end off flush")
        .doesNotContain("hand bend");
  }

  @Test
  void bendThatCannotRestThere_sendsToALine() {
    assertThat(text(hold(new Range(0.1, 0.2, 0.3), Optional.empty()))).contains("use a guy-line");
  }

  @Test
  void json_hasTheSameInItsUnits() {
    JsonNode node = CoilJson.of(List.of(hold(new Range(0.5, 0.62, 0.7), further()))).get(0);
    assertThat(node.get("forced_mm").doubleValue()).isCloseTo(80, within(1e-9));
    assertThat(node.get("holds").booleanValue()).isFalse();
    assertThat(node.at("/kept/low").doubleValue()).isEqualTo(0.5);
    assertThat(node.at("/overbend/hand_bends/0/move_mm").doubleValue())
        .isCloseTo(120, within(1e-9));
    assertThat(node.at("/coils/0/cut_mm").doubleValue()).isCloseTo(610, within(1e-9));
    assertThat(node.at("/coils/0/tightens").textValue()).isEqualTo("left");
    assertThat(node.at("/coils/0/wrong_hand").booleanValue()).isTrue();
    assertThat(node.at("/coils/0/outside/from_union_mm").doubleValue()).isCloseTo(14, within(1e-9));
  }

  @Test
  void choice_showsGaugesBesideTheRule() {
    WireChoice.Row one =
        new WireChoice.Row(
            Material.ALUMINIUM, 1, OptionalDouble.empty(), 0.6, OptionalDouble.empty());
    WireChoice.Row two =
        new WireChoice.Row(
            Material.ALUMINIUM, 2, OptionalDouble.of(4.5e-3), 1.1, OptionalDouble.of(0.076));
    WireChoice choice =
        new WireChoice("p1", "b1", 0.03, 0.04, 0.01, Math.toRadians(50), List.of(one, two));
    TextPage page = new TextPage();
    CoilText.choices(page, List.of(choice));
    assertThat(page.toString().replaceAll("\\s+", " "))
        .contains("Wire that would hold it (b1, 30 mm)")
        .contains("aluminium none 4.5 mm none 76 mm")
        .contains("One third of the branch would be 3.3 mm")
        .contains("common practice, no source");
    JsonNode json = CoilJson.choices(List.of(choice)).get(0);
    assertThat(json.at("/wires/0").has("gauge_mm")).isFalse();
    assertThat(json.at("/wires/1/gauge_mm").doubleValue()).isCloseTo(4.5, within(1e-9));
    assertThat(json.at("/wires/1/bend_to_mm").doubleValue()).isCloseTo(76, within(1e-9));
  }

  /** The ten-second answer names wire too. */
  @Test
  void branchVerb_saysWhichWireWouldHoldIt() {
    Object[] asked = {
      "branch",
      "--species",
      "red maple",
      "--length-mm",
      "300",
      "--calipers-mm",
      "10,7",
      "--tip-mm",
      "30",
      "--no-risk"
    };
    assertThat(Ran.command(asked).out()).contains("Wire that would hold it").contains("3 strands");
    Object[] json = Arrays.copyOf(asked, asked.length + 1);
    json[asked.length] = "--json";
    JsonNode wire = Ran.command(json).json().get("wire");
    assertThat(wire.get("one_third_mm").doubleValue()).isBetween(3.0, 3.4);
    assertThat(wire.get("wires")).hasSize(12);
  }
}
