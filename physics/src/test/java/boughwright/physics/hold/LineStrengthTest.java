// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.plan.Material;
import boughwright.modeller.plan.Strand;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LineStrengthTest {
  private static Strand strand(Material material, double millimetres, int count) {
    return new Strand(material, millimetres / 1000, count, Map.of());
  }

  /**
   * Strong and weak ends of published ranges [MPa]: C10800 annealed 220; JIS H 4040 1050-O 60 to
   * 100; bright annealed low-carbon wire 350 to 500; annealed 304 wire 515 to 700; 16-plait
   * polyester of 6 to 14 mm, 208 to 290 from a rope maker's table. A bare line without knots breaks
   * in there.
   */
  @ParameterizedTest
  @CsvSource({
    "COPPER_ANNEALED, 220, 250, 0.7",
    "ALUMINIUM, 60, 100, 0.7",
    "STEEL_SOFT, 350, 500, 0.7",
    "STAINLESS, 515, 700, 0.7",
    "CORD, 190, 290, 0.5"
  })
  void breakingLoad_isWithinWhatIsPublished(
      Material material, double low, double high, double ends) {
    double area = Math.PI / 4 * 4;
    double bare = LineStrength.breaking(strand(material, 2, 1), 0) / ends;
    assertThat(bare).isBetween(low * area * (1 - 1e-9), high * area);
    assertThat(LineStrength.source(material)).isNotBlank();
  }

  @Test
  void twoStrands_bearTwice_andLessWhenTwisted() {
    double one = LineStrength.safe(strand(Material.STAINLESS, 0.8, 1), 0);
    assertThat(LineStrength.safe(strand(Material.STAINLESS, 0.8, 2), 0))
        .isCloseTo(2 * one, within(1e-9));
    assertThat(LineStrength.safe(strand(Material.STAINLESS, 0.8, 2), Math.PI / 4))
        .isCloseTo(Math.sqrt(2) * one, within(1e-9));
    assertThat(one).isLessThan(LineStrength.yielding(strand(Material.STAINLESS, 0.8, 1), 0));
  }

  /** A metre of steel wire of 1 mm² is 1 / 205 000 of its length longer per newton. */
  @Test
  void compliance_isLengthOverModulusAndArea() {
    double gauge = Math.sqrt(4 / Math.PI);
    assertThat(LineStrength.compliance(strand(Material.STEEL_SOFT, gauge, 1), 1))
        .isCloseTo(1 / 205_000.0, within(1e-12));
  }

  @Test
  void thinnest_isSold_andBearsTheLoad_whereTheNextThinnerDoesNot() {
    Strand found = LineStrength.thinnest(Material.CORD, 2, 100).orElseThrow();
    assertThat(LineStrength.safe(found, 0)).isGreaterThanOrEqualTo(100);
    assertThat(LineStrength.safe(strand(Material.CORD, 1e3 * found.gauge() - 0.5, 2), 0))
        .isLessThan(100);
    assertThat(LineStrength.thinnest(Material.CORD, 1, 1e6)).isEmpty();
  }
}
