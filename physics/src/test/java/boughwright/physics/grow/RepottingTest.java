// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.grow;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.design.ground.RootCare;
import boughwright.modeller.species.SpeciesTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RepottingTest {
  @ParameterizedTest
  @CsvSource({
    "carpinus-betulus, DECIDUOUS",
    "ulmus-americana, DECIDUOUS",
    "larix-decidua, CONIFER",
    "pinus-sylvestris, CONIFER",
    "buxus-sempervirens, OTHER",
    "unknown, OTHER"
  })
  void roots_areTreatedByKind(String key, RootCare care) {
    assertThat(Repotting.care(SpeciesTable.bundled().woodFor(key))).isEqualTo(care);
  }

  /**
   * rules.csv: 1/3, at most 1/2 of vigorous deciduous; 1/4 to 1/3 of conifers; 2-3 and 3-5 years.
   */
  @Test
  void conifers_loseLess_andRestLonger() {
    assertThat(RootCare.CONIFER.careful()).isEqualTo(0.25);
    assertThat(RootCare.CONIFER.most()).isEqualTo(RootCare.DECIDUOUS.careful());
    assertThat(RootCare.DECIDUOUS.most()).isEqualTo(0.5);
    assertThat(RootCare.CONIFER.fewestYears()).isEqualTo(RootCare.DECIDUOUS.mostYears());
  }
}
