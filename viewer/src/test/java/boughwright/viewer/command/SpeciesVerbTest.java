// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.species.SpeciesTable;
import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SpeciesVerbTest {
  @ParameterizedTest
  @ValueSource(strings = {"carpinus-betulus", "Carpinus betulus", "european hornbeam", "HORNBEAM"})
  void wood_isFound_byAnyOfItsNames(String name) {
    Ran ran = Ran.command("species", name);
    assertThat(ran.code()).isZero();
    // BRE Report BR 241, green hornbeam.
    assertThat(ran.words())
        .contains("Carpinus betulus (carpinus-betulus)", "BRE Report BR 241")
        .containsPattern("modulus of elasticity \\(MOE\\), as published +9\\.70 GPa")
        .containsPattern("modulus of rupture \\(MOR\\) +66\\.0 MPa")
        .containsPattern("Spread .* MOE 22 %");
  }

  @Test
  void severalWords_areOneName() {
    assertThat(Ran.command("species", "carpinus", "betulus").out()).startsWith("Carpinus betulus");
  }

  @Test
  void list_hasEveryWood_andFitsTheTerminal() {
    Ran ran = Ran.command("species");
    assertThat(ran.code()).isZero();
    SpeciesTable.bundled().all().forEach(wood -> assertThat(ran.out()).contains(wood.key()));
    assertThat(ran.out().lines()).allSatisfy(line -> assertThat(line.length()).isLessThan(80));
  }

  @Test
  void proxy_saysSo() {
    assertThat(Ran.command("species", "acer-palmatum").out()).contains("No values of its own");
  }

  @Test
  void partOfAName_listsTheWoodsThatHoldIt() {
    assertThat(Ran.command("species", "acer").err()).contains("acer-rubrum", "acer-palmatum");
  }

  @Test
  void json_isInGigapascalsAndMegapascals() {
    JsonNode wood = Ran.command("species", "carpinus-betulus", "--json").json().at("/species/0");
    assertThat(wood.get("moe_GPa").doubleValue()).isCloseTo(9.7, within(1e-9));
    assertThat(wood.get("mor_MPa").doubleValue()).isCloseTo(66, within(1e-9));
    assertThat(wood.get("crushing_MPa").doubleValue()).isCloseTo(27, within(1e-9));
    assertThat(wood.get("density_kg_m3").doubleValue()).isCloseTo(570, within(1e-9));
    assertThat(wood.has("proxy")).isFalse();
  }

  @Test
  void json_ofAll_hasAtLeastEightyWoods() {
    assertThat(Ran.command("species", "--json").json().get("species").size())
        .isGreaterThanOrEqualTo(80);
  }
}
