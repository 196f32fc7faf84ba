// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.plan.FrontMeasure;
import boughwright.modeller.plan.FrontWishes;
import boughwright.modeller.plan.TreeStyle;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class MeritCurveTest {
  private static final double EXACT = 1e-12;

  @Test
  void curves_areWorthHalfWhereTheySaySo_andAllOrNothingAtTheirEnds() {
    MeritCurve more = new MeritCurve.More(1, 3);
    assertThat(more.merit(0.5)).isZero();
    assertThat(more.merit(3)).isCloseTo(0.5, within(EXACT));
    assertThat(more.merit(1e6)).isCloseTo(1, within(1e-9));
    MeritCurve less = new MeritCurve.Less(0, 0.1);
    assertThat(less.merit(0)).isEqualTo(1);
    assertThat(less.merit(0.1)).isCloseTo(0.5, within(EXACT));
    MeritCurve between = new MeritCurve.Between(-1, 2, 0.5);
    assertThat(between.merit(-1)).isEqualTo(1);
    assertThat(between.merit(2)).isEqualTo(1);
    assertThat(between.merit(-1.5)).isCloseTo(0.5, within(EXACT));
    assertThat(between.merit(2.5)).isCloseTo(0.5, within(EXACT));
  }

  /** No style has a curve that jumps, or whose slope does. */
  @Test
  void everyRule_isSmooth_andStaysWithin0And1() {
    double step = 1e-4;
    double steepest = 1.0;
    for (TreeStyle style : TreeStyle.values()) {
      for (FrontMeasure measure : FrontMeasure.values()) {
        MeritCurve curve = FrontRules.of(style).rule(measure).curve();
        double before = curve.merit(-1);
        double slope = 0;
        double jump = 0;
        boolean within = true;
        for (double value = -1 + step; value < 4; value += step) {
          double merit = curve.merit(value);
          within &= merit >= 0 && merit <= 1;
          jump = Math.max(jump, Math.abs(merit - before - slope));
          slope = merit - before;
          before = merit;
        }
        assertThat(within).as(style + " " + measure).isTrue();
        assertThat(jump).as(style + " " + measure).isLessThan(steepest * step);
      }
    }
  }

  @Test
  void wishes_weighInPlaceOfTheStyle() {
    FrontWishes wishes =
        new FrontWishes(
            Optional.of(TreeStyle.BROOM),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Map.of(FrontMeasure.WOUNDS, 0.0, FrontMeasure.TAPER, 7.5),
            Map.of());
    FrontRules rules = FrontRules.of(wishes);
    assertThat(rules.style()).isEqualTo(TreeStyle.BROOM);
    assertThat(rules.rule(FrontMeasure.WOUNDS).weight()).isZero();
    assertThat(rules.rule(FrontMeasure.TAPER).weight()).isEqualTo(7.5);
    assertThat(rules.rule(FrontMeasure.DEPTH))
        .isEqualTo(FrontRules.of(TreeStyle.BROOM).rule(FrontMeasure.DEPTH));
    assertThat(FrontRules.of(FrontWishes.UNSAID).style()).isEqualTo(TreeStyle.UPRIGHT);
  }

  @Test
  void senselessCurves_areRefused() {
    assertThatThrownBy(() -> new MeritCurve.More(1, 1)).isInstanceOf(RuntimeException.class);
    assertThatThrownBy(() -> new MeritCurve.Less(1, 0)).isInstanceOf(RuntimeException.class);
    assertThatThrownBy(() -> new MeritCurve.Between(1, 0, 1)).isInstanceOf(RuntimeException.class);
    assertThatThrownBy(() -> new FrontRules.Rule(-1, new MeritCurve.Less(0, 1)))
        .isInstanceOf(RuntimeException.class);
  }
}
