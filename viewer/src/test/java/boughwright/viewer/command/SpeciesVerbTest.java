// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import boughwright.modeller.species.Species;
import boughwright.modeller.species.SpeciesTable;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
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
        .containsPattern("Spread .* its own: MOE 10 %, MOR 9 %, crushing 11 %, shear 12 %")
        .containsPattern("crushing strain .* +0\\.28 %")
        .contains("Missing here: tension across the grain", "times 0.75", "Rosell et al. 2014")
        .containsPattern(
            "the outside cracks, at 10 mm thick +[0-9.]+ % +\\([0-9.]+ to [0-9.]+ %\\)");
  }

  /** White pine across the grain, printed as 250 and 220 psi (FPL-GTR-282, from memory). */
  @Test
  void woodOfTheHandbook_hasStrengthAcrossTheGrain_andTheAverageSpread() {
    Ran ran = Ran.command("species", "pinus-strobus");
    assertThat(ran.words())
        .containsPattern("tension strength across the grain +1\\.7 MPa")
        .containsPattern("compression across the grain, where it yields +1\\.5 MPa")
        .containsPattern("Spread .* the average of many woods, .* MOE 22 %, .* Table 5-6");
  }

  @Test
  void everyWood_fitsTheTerminal_andSaysWhatIsMissing() {
    for (Species wood : SpeciesTable.bundled().all()) {
      String text = SpeciesText.one(wood);
      assertThat(text.lines()).allSatisfy(line -> assertThat(line.length()).isLessThan(80));
      assertThat(text).containsAnyOf("Missing here: ", "No figure of the table is missing.");
    }
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
    assertThat(wood.get("work_to_max_load_kJ_m3").doubleValue()).isCloseTo(169, within(1e-9));
    assertThat(wood.at("/coefficients_of_variation/whose").textValue()).isEqualTo("its own");
    assertThat(wood.at("/missing").toString()).contains("tension across the grain");
    assertThat(wood.has("tension_perp_MPa")).isFalse();
  }

  /** Nine in ten: the range is as wide on both sides of the median, on a scale of ratios. */
  @Test
  void json_ofLiveWood_hasMedianAndRange() {
    JsonNode live =
        Ran.command("species", "carpinus-betulus", "--json")
            .json()
            .at("/species/0/live_branch_wood");
    assertThat(live.at("/moe_GPa/median").doubleValue()).isCloseTo(0.75 * 9.7, within(1e-9));
    for (String limit : List.of("/moe_GPa", "/yield_strain", "/kink_strain", "/crack_strain/0")) {
      double median = live.at(limit + "/median").doubleValue();
      double low = live.at(limit + "/low").doubleValue();
      assertThat(low).as(limit).isLessThan(median);
      assertThat(live.at(limit + "/high").doubleValue() * low)
          .as(limit)
          .isCloseTo(median * median, withinPercentage(0.001));
    }
  }

  @Test
  void json_ofAll_hasAtLeastEightyWoods() {
    assertThat(Ran.command("species", "--json").json().get("species").size())
        .isGreaterThanOrEqualTo(80);
  }
}
