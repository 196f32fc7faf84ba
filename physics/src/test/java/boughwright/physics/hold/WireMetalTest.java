// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.plan.Material;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class WireMetalTest {
  /**
   * Tensile strength by Considere's construction, K n^n / e^n, beside published strengths [MPa]:
   * C10800 copper OS050 220; 1050-O wire 60-100 (JIS H 4040-2015); bright annealed low-carbon wire
   * 350-500 (a vendor's sheet); 304 annealed wire 515-700 (ASTM A580, from memory).
   */
  @ParameterizedTest
  @CsvSource({
    "copper-annealed, 200, 247",
    "aluminium, 60, 100",
    "steel-soft, 350, 500",
    "stainless, 515, 700"
  })
  void hardening_givesAPublishedTensileStrength(String word, double least, double most) {
    WireMetal metal = WireMetal.of(Material.of(word).orElseThrow());
    double n = metal.exponent();
    double strength = metal.hardening() * Math.pow(n / Math.E, n);
    assertThat(strength / 1e6).isBetween(least, most);
  }

  @ParameterizedTest
  @EnumSource(
      value = Material.class,
      names = {"CORD"},
      mode = EnumSource.Mode.EXCLUDE)
  void everyWire_hasASourceAndFlowsHarderWhenStrained(Material material) {
    WireMetal metal = WireMetal.of(material);
    assertThat(metal.material()).isEqualTo(material);
    assertThat(metal.source()).hasSizeGreaterThan(30);
    assertThat(metal.flowStress(0)).isEqualTo(metal.yield());
    assertThat(metal.flowStress(0.15)).isGreaterThan(1.2 * metal.yield());
    assertThat(metal.flowStress(-0.15)).isEqualTo(metal.flowStress(0.15));
  }

  /** Copper hardens two and a half times over when it is wound at 45 degrees (reference notes). */
  @Test
  void copper_isHardenedByWinding() {
    WireMetal copper = WireMetal.of(Material.COPPER_ANNEALED);
    assertThat(copper.flowStress(0.125)).isCloseTo(212e6, within(1e6));
  }

  @Test
  void cord_isNoWire() {
    assertThatThrownBy(() -> WireMetal.of(Material.CORD))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("cord");
  }
}
