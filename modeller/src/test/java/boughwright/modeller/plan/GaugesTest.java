// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class GaugesTest {
  /** The table prints a tenth of a mil, for small gauges; half of it [m]. */
  private static final double PRINTED = 0.05 * 2.54e-5 + 1e-12;

  /** Nominal diameters in mils of ASTM B258-02, table 1 (from memory). */
  @ParameterizedTest
  @CsvSource({
    "-3, 460.0", "0, 324.9", "1, 289.3", "2, 257.6", "4, 204.3", "6, 162.0", "8, 128.5",
    "10, 101.9", "12, 80.8", "14, 64.1", "16, 50.8", "18, 40.3", "20, 32.0", "24, 20.1",
    "30, 10.0", "36, 5.0"
  })
  void awg_isThePublishedDiameter(int number, double mils) {
    assertThat(Gauges.fromAwg(number)).isCloseTo(mils * 2.54e-5, within(PRINTED));
  }

  @ParameterizedTest
  @ValueSource(ints = {-4, 41})
  void awg_thatDoesNotExist_isRefused(int number) {
    assertThatThrownBy(() -> Gauges.fromAwg(number))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(String.valueOf(number));
  }

  @ParameterizedTest
  @EnumSource(Material.class)
  void everyMaterial_isSoldInGrowingThicknesses(Material material) {
    assertThat(Gauges.sold(material)).isSorted().doesNotHaveDuplicates().hasSizeGreaterThan(5);
    assertThat(Gauges.sold(material)).allMatch(one -> Gauges.isSold(material, one));
  }

  @Test
  void gauges_betweenAndBeyondWhatIsSold_areTold() {
    assertThat(Gauges.isSold(Material.ALUMINIUM, 2.25e-3)).isFalse();
    assertThat(Gauges.nearest(Material.ALUMINIUM, 2.3e-3)).isEqualTo(2.5e-3);
    assertThat(Gauges.isFarFromSold(Material.ALUMINIUM, 2.25e-3)).isFalse();
    assertThat(Gauges.isFarFromSold(Material.ALUMINIUM, 40e-3)).isTrue();
    assertThat(Gauges.isFarFromSold(Material.COPPER_ANNEALED, 0.1e-3)).isTrue();
  }

  @Test
  void copper_isSoldByTheGaugeNumberToo() {
    assertThat(Gauges.isSold(Material.COPPER_ANNEALED, Gauges.fromAwg(6))).isTrue();
    assertThat(Gauges.isSold(Material.ALUMINIUM, Gauges.fromAwg(6))).isFalse();
  }
}
