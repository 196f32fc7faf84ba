// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.physics.wood.DiscBending;
import boughwright.physics.wood.FibreStrains;
import boughwright.physics.wood.SegmentWood;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** Outermost strains and instant springback of the round section, summed numerically by others. */
class SectionTableTest {
  /** Half the last printed digit, and the other sum's own error. */
  private static final double PRINTED_DIGITS = 0.012;

  @Test
  void roundSection_agreesWithATableOfOthers() {
    for (CSVRecord row : Published.rows("section.csv")) {
      double radius = 0.005;
      double geometric = Published.number(row, "geometric_percent") / 100;
      SegmentWood wood =
          new SegmentWood(6e9, 4e8, Published.number(row, "yield_percent") / 100, "table");
      DiscBending disc = new DiscBending(wood, radius);
      double curvature = geometric / radius;
      FibreStrains strains = disc.strains(curvature);
      double elastic = 6e9 * Math.PI * Math.pow(radius, 4) / 4 * curvature;
      agree(row, "tension_percent", 100 * strains.tension());
      agree(row, "compression_percent", 100 * strains.compression());
      agree(row, "springback", disc.moment(curvature) / elastic);
    }
  }

  private static void agree(CSVRecord row, String column, double found) {
    assertThat(found)
        .as("%s", row)
        .isCloseTo(Published.number(row, column), within(PRINTED_DIGITS));
  }
}
