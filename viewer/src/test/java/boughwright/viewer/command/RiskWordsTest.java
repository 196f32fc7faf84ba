// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.file.TreeFile;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.physics.trial.FailureMode;
import boughwright.physics.trial.FailurePlace;
import boughwright.physics.trial.FailureRisk;
import boughwright.physics.trial.LimitSample;
import boughwright.physics.trial.Probability;
import boughwright.physics.trial.Range;
import boughwright.physics.trial.Risk;
import boughwright.physics.trial.TrialResult;
import boughwright.viewer.scene.Bending;
import boughwright.viewer.scene.InventedRisks;
import boughwright.viewer.scene.InventedTrees;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Words and JSON of a risk that was set down by hand. */
class RiskWordsTest {
  private static final Document HEDGE = InventedTrees.hedgeDocument();
  private static final Plan PLAN = HEDGE.plans().get(0);
  private static final TrialResult BENT = Bending.drawnIn(HEDGE.tree(), PLAN);
  private static final TrialResult RISKY = InventedRisks.with(BENT);

  private static BendAnswer answer(TrialResult... trials) {
    List<BendAnswer.Tried> tried =
        List.of(trials).stream()
            .map(trial -> BendAnswer.Tried.of(HEDGE, PlanChoice.whole(PLAN), trial))
            .toList();
    return new BendAnswer(
        new TreeFile(HEDGE, List.of()),
        tried,
        Optional.empty(),
        new OccasionOptions().read(new Faults()),
        true);
  }

  private static String words(TrialResult... trials) {
    return BendText.of(answer(trials)).replaceAll("\\s+", " ");
  }

  private static TrialResult with(Risk risk) {
    return InventedRisks.with(BENT, Optional.of(risk), Optional.empty());
  }

  private static Risk risk(List<FailureRisk> failures, double noPose) {
    Risk usual = InventedRisks.risk(BENT);
    return new Risk(
        failures, Map.of(), noPose, List.of(), usual.limits(), usual.samples(), usual.seed());
  }

  @Test
  void verdict_comesFirst_thenRanges_thenPlaces() {
    String text = words(RISKY);
    assertThat(text)
        .startsWith("Take it slowly, in stages. Hedge hornbeam")
        .contains("Crack on the outside: about 1 in 30, could be 1 in 14")
        .contains("mark l2: top, 14 mm from the union (0 degrees round it)")
        .contains("mark l2: underside, 14 mm from the union (180 degrees round it)")
        .contains("caliper of l2, 31 % of the doubt: measure it again.")
        .contains("Split along the middle, shear along the grain, tear at the union: each less")
        .doesNotContain("stiffness of branch wood");
    assertThat(text.indexOf("g1: pull 40 to 94 N, most likely 62 N"))
        .isPositive()
        .isLessThan(text.indexOf("Crack on the outside"))
        .isLessThan(text.indexOf("Bent hardest"));
  }

  @Test
  void severalPlans_haveALineEach() {
    assertThat(words(RISKY, RISKY)).startsWith("Plan a: Take it slowly, in stages. Hedge");
  }

  @Test
  void drawsWithoutAPose_areTold() {
    assertThat(words(with(risk(List.of(), 0.04))))
        .contains("No pose held at all in about 1 in 25 of the draws", "count as cracked");
    assertThat(words(with(risk(List.of(), 0)))).doesNotContain("No pose held");
  }

  @Test
  void stressModes_sayHowMuchOfTheLimitIsUsed() {
    FailureRisk tear =
        new FailureRisk(
            FailureMode.TEAR,
            new Probability(0.1, 0.05, 0.2),
            Optional.of(new FailurePlace("b1", 0.3, OptionalDouble.of(0), 0, "top")),
            0.4,
            new Range(0.5, 0.8, 1));
    assertThat(words(with(risk(List.of(tear), 0))))
        .contains("Tear at the union: about 1 in 10, could be 1 in 5")
        .contains("works at 40 to 80 % of what it bears, most likely 50 %");
  }

  @Test
  void yielding_isWorkNotDanger_untilItNearsTheKink() {
    double squeezed = BENT.peak().orElseThrow().compressionStrain();
    assertThat(words(with(yieldingAt(2 * squeezed)))).contains("springs back whole");
    assertThat(words(with(yieldingAt(squeezed / 2))))
        .contains("The inside yields slightly", "normal working range of a bend, no danger");
  }

  /** Wood that yields at a strain and kinks far beyond the bend. */
  private static Risk yieldingAt(double strain) {
    Range far = new Range(0.5, 0.6, 0.7);
    LimitSample limit = new LimitSample(BENT.peak().orElseThrow().segment(), 0.1, far, far, strain);
    return new Risk(List.of(), Map.of(), 0, List.of(), List.of(limit), 100, 1);
  }

  @Test
  void json_keepsPlaceLimitAndRanges_andLeavesOutWhatIsNotKnown() throws Exception {
    JsonNode trial = new ObjectMapper().readTree(BendJson.of(answer(RISKY))).get("trials").get(0);
    JsonNode crack = trial.get("risk").get("crack");
    assertThat(crack.get("from_union_mm").doubleValue()).isEqualTo(14);
    assertThat(crack.get("side").textValue()).isEqualTo("top");
    assertThat(crack.get("limit").get("middle").doubleValue())
        .isGreaterThan(crack.get("demand").doubleValue());
    assertThat(BendJsonTest.names(trial.get("risk").get("split")))
        .containsExactly("p", "low", "high");
    assertThat(trial.get("verdict").get("level").textValue()).isEqualTo("in-stages");
    assertThat(trial.get("risk").get("limits_along").size()).isGreaterThan(10);
    assertThat(trial.get("risk").get("sensitivity").get(2).has("advice")).isFalse();
  }
}
