// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.plan.Material;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PaletteTest {
  private static final List<Material> METALS =
      Arrays.stream(Material.values()).filter(Material::isWire).toList();

  /** Light and shade change a colour far more than a flat patch of it; so metals lie further. */
  private static final double PLAIN_IN_SHADE = 1.7 * Vision.PLAIN;

  @ParameterizedTest
  @EnumSource(Vision.class)
  void metals_areToldApart_fromEachOtherAndFromBark_byEveryVision(Vision vision) {
    for (Material one : METALS) {
      Lab seen = vision.sees(Palette.metal(one));
      for (Material other : METALS) {
        if (one != other) {
          assertThat(seen.difference(vision.sees(Palette.metal(other))))
              .as("%s, %s", one, other)
              .isGreaterThan(PLAIN_IN_SHADE);
        }
      }
      assertThat(seen.difference(vision.sees(Palette.BARK)))
          .as("%s", one)
          .isGreaterThan(PLAIN_IN_SHADE);
    }
  }

  @ParameterizedTest
  @EnumSource(Vision.class)
  void fiveStages_areToldApart_byEveryVision(Vision vision) {
    for (int n = 1; n < 5; n++) {
      Lab before = vision.sees(Palette.stage(n - 1, 5));
      assertThat(vision.sees(Palette.stage(n, 5)).difference(before)).isGreaterThan(Vision.PLAIN);
    }
  }
}
