// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.plan.FrontMeasure;
import boughwright.modeller.plan.TreeStyle;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class FrontScoreTest {
  private static final double EXACT = 1e-12;
  private static final FrontRules UPRIGHT = FrontRules.of(TreeStyle.UPRIGHT);

  private static FrontScore score(double azimuth, Map<FrontMeasure, Double> values) {
    return UPRIGHT.score(new FrontReading(FrontPose.upright(azimuth), values));
  }

  /** The weighted mean by hand, from the merits and weights of what can be said. */
  @Test
  void total_isTheWeightedMeanOfWhatCanBeSaid() {
    Map<FrontMeasure, Double> values =
        Map.of(
            FrontMeasure.TRUNK_MOVEMENT, 0.05,
            FrontMeasure.WOUNDS, 0.02,
            FrontMeasure.DEPTH, 0.3);
    double sum = 0;
    double weights = 0;
    for (Map.Entry<FrontMeasure, Double> entry : values.entrySet()) {
      FrontRules.Rule rule = UPRIGHT.rule(entry.getKey());
      sum += rule.weight() * rule.curve().merit(entry.getValue());
      weights += rule.weight();
    }
    FrontScore score = score(0, values);
    assertThat(score.total()).isCloseTo(sum / weights, within(EXACT));
    assertThat(score.parts().stream().mapToDouble(FrontScore.Part::contribution).sum())
        .isCloseTo(score.total(), within(EXACT));
    assertThat(score.unsaid())
        .hasSize(FrontMeasure.values().length - 3)
        .contains(FrontMeasure.ROOT_BASE_WIDTH)
        .doesNotContain(FrontMeasure.WOUNDS);
  }

  @Test
  void nothingSaid_isNoScore() {
    assertThat(score(0, Map.of()).isSaid()).isFalse();
    assertThat(score(0, Map.of(FrontMeasure.TAPER, 0.5)).isSaid()).isTrue();
  }

  @Test
  void reasons_sayWhatTellsAFrontFromTheOthers_andWhichWay() {
    FrontScore moved =
        score(0, Map.of(FrontMeasure.TRUNK_MOVEMENT, 0.06, FrontMeasure.WOUNDS, 0.04));
    FrontScore clean =
        score(2, Map.of(FrontMeasure.TRUNK_MOVEMENT, 0.02, FrontMeasure.WOUNDS, 0.0));
    List<FrontReason> reasons = FrontReason.of(UPRIGHT, moved, List.of(clean));
    assertThat(reasons).hasSize(2);
    assertThat(reasons).anyMatch(r -> r.measure() == FrontMeasure.TRUNK_MOVEMENT && r.isFor());
    assertThat(reasons).anyMatch(r -> r.measure() == FrontMeasure.WOUNDS && !r.isFor());
    assertThat(reasons).allMatch(FrontReason::more);
    double gains = reasons.stream().mapToDouble(FrontReason::gain).sum();
    assertThat(gains).isCloseTo(moved.total() - clean.total(), within(EXACT));
    assertThat(FrontReason.of(UPRIGHT, moved, List.of())).isEmpty();
  }
}
