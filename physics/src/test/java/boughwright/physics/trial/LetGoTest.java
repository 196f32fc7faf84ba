// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.plan.Document;
import boughwright.modeller.species.Species;
import boughwright.modeller.species.SpeciesTable;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LetGoTest {
  private static final Species BEECH = SpeciesTable.bundled().woodFor("fagus-sylvatica");
  private static final double LENGTH = 0.3;

  @TempDir Path folder;

  private Optional<LetGo> after(double newtons) {
    TreeText text =
        new TreeText("\"fagus-sylvatica\"")
            .segment(
                "\"id\": \"t\", \"parent\": null, \"kind\": \"trunk\", \"start_mm\": [0,0,0],"
                    + " \"end_mm\": [0,0,300], \"caliper_start_mm\": 12, \"caliper_end_mm\": 12")
            .proposal(
                TreeText.text(
                    "\"guy_lines\": [{\"id\": \"g\", \"segment\": \"t\", \"along\": 1,"
                        + " \"anchor_mm\": [100000, 0, 300], \"tension_N\": %s}]",
                    newtons));
    Document document = text.read(folder);
    return LetGo.of(TrialRequest.of(document.tree(), document.plans().get(0), BEECH));
  }

  @Test
  void bendBelowFlow_springsBackWhole() {
    LetGo found = after(4).orElseThrow();
    assertThat(found.segment()).isEqualTo("t");
    assertThat(found.moved()).isGreaterThan(0.004);
    assertThat(found.stays()).isLessThan(1e-3 * found.moved());
  }

  /**
   * Unloading is elastic: what comes back is what elastic wood would have moved, P L^3 / (3 E I)
   * (Gere and Timoshenko, Mechanics of Materials; from memory), as far as deflections are small.
   */
  @Test
  void bendIntoFlow_comesBackByItsElasticPart() {
    double force = 22;
    LetGo found = after(force).orElseThrow();
    double moe = 0.75 * BEECH.trueMoe();
    double inertia = Math.PI / 4 * Math.pow(0.006, 4);
    double elastic = force * Math.pow(LENGTH, 3) / (3 * moe * inertia);
    assertThat(found.stays()).isGreaterThan(0.02 * found.moved());
    assertThat(found.moved() - found.stays()).isCloseTo(elastic, within(0.05 * elastic));
  }

  @Test
  void harderBend_keepsMore() {
    double soft = after(18).orElseThrow().stays();
    double hard = after(24).orElseThrow().stays();
    assertThat(hard).isGreaterThan(2 * soft);
  }
}
