// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.physics.trial.TrialResult;
import boughwright.viewer.scene.Bending;
import boughwright.viewer.scene.InventedRisks;
import boughwright.viewer.scene.InventedTrees;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class HeadingTest {
  private static final Document HEDGE = InventedTrees.hedgeDocument();

  @Test
  void heading_namesTreePlanAndProposals() {
    Heading heading = Heading.of(HEDGE, Optional.of(HEDGE.plans().get(0)), Optional.empty());
    assertThat(heading.name()).isEqualTo("Hedge hornbeam");
    assertThat(heading.about())
        .isEqualTo(
            "Plan a  ·  proposal p1  ·  planting angle 5° toward azimuth 90°"
                + "  ·  Carpinus betulus  ·  measured 2026-03-02");
  }

  @Test
  void heading_withoutPlan_saysAsMeasured() {
    assertThat(Heading.of(HEDGE, Optional.empty(), Optional.empty()).about())
        .startsWith("As measured  ·  ");
  }

  @Test
  void heading_withoutProposals_saysSo() {
    Plan plan = InventedTrees.plan(List.of(), List.of(), Optional.empty(), Optional.empty());
    assertThat(Heading.of(HEDGE, Optional.of(plan), Optional.empty()).about())
        .startsWith("Plan a  ·  no proposal  ·  ");
  }

  @Test
  void controlCharacters_areShownByTheirCode() {
    Document document = new Document(InventedTrees.hedge("a\u202Eb\u0007"), List.of(), Map.of());
    assertThat(Heading.of(document, Optional.empty(), Optional.empty()).name())
        .isEqualTo("a<U+202E>b<U+0007>");
  }

  @Test
  void heading_holdsTheVerdict_itsReason_andTheFirstChange() {
    Plan plan = HEDGE.plans().get(0);
    TrialResult plain = Bending.drawnIn(HEDGE.tree(), plan);
    TrialResult risky = InventedRisks.with(plain);
    Heading heading = Heading.of(HEDGE, Optional.of(plan), Optional.of(risky));
    assertThat(heading.verdict()).isEqualTo("Take it slowly, in stages.");
    assertThat(heading.reason()).contains("1 in 30");
    assertThat(heading.change()).contains("six weeks");
    assertThat(Heading.of(HEDGE, Optional.of(plan), Optional.of(plain)).verdict()).isEmpty();
  }
}
