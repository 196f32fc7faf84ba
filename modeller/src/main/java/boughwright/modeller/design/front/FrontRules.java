// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import boughwright.modeller.plan.FrontMeasure;
import boughwright.modeller.plan.FrontWishes;
import boughwright.modeller.plan.TreeStyle;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * By what fronts are judged: of each measure how much it counts and what is wanted of it.
 * Immutable.
 */
public final class FrontRules {
  private static final FrontMeasure[] MEASURES = FrontMeasure.values();

  private final TreeStyle style;
  private final Map<FrontMeasure, Rule> rules;

  /** Shape: one per measure. */
  private final double[] weights;

  private final MeritCurve[] curves;

  /**
   * What is wanted of one measure.
   *
   * @param weight how much it counts, 0 or more [1]
   * @param curve how good a value is
   */
  public record Rule(double weight, MeritCurve curve) {
    public Rule {
      if (!(weight >= 0) || Double.isInfinite(weight)) {
        throw new IllegalArgumentException("a weight is 0 or more, not " + weight);
      }
    }

    private Rule weighing(double other) {
      return new Rule(other, curve);
    }
  }

  private FrontRules(TreeStyle style, Map<FrontMeasure, Rule> rules) {
    this.style = style;
    this.rules = Collections.unmodifiableMap(new EnumMap<>(rules));
    weights = new double[FrontMeasure.values().length];
    curves = new MeritCurve[weights.length];
    rules.forEach(
        (measure, rule) -> {
          weights[measure.ordinal()] = rule.weight();
          curves[measure.ordinal()] = rule.curve();
        });
  }

  /** The rules of a style, as they are without a person's wishes. */
  public static FrontRules of(TreeStyle style) {
    return new FrontRules(style, StyleRules.of(style));
  }

  /** The rules a person wishes; upright where no style is said. */
  public static FrontRules of(FrontWishes wishes) {
    TreeStyle style = wishes.style().orElse(TreeStyle.UPRIGHT);
    Map<FrontMeasure, Rule> rules = new EnumMap<>(StyleRules.of(style));
    wishes
        .weights()
        .forEach(
            (measure, weight) -> rules.computeIfPresent(measure, (m, r) -> r.weighing(weight)));
    return new FrontRules(style, rules);
  }

  public TreeStyle style() {
    return style;
  }

  /** What is wanted of a measure. */
  public Rule rule(FrontMeasure measure) {
    return rules.get(measure);
  }

  /** Whether anything counts. */
  public boolean countsAnything() {
    return rules.values().stream().anyMatch(rule -> rule.weight() > 0);
  }

  /** The score alone, NaN where nothing that counts can be said; for loops over many poses [1]. */
  double total(FrontReading reading) {
    return total(reading.values());
  }

  /** The same of a reading as plain numbers, one per measure [1]. */
  double total(double[] values) {
    double sum = 0;
    double all = 0;
    for (int m = 0; m < values.length; m++) {
      if (weights[m] > 0 && !Double.isNaN(values[m])) {
        sum += weights[m] * curves[m].merit(values[m]);
        all += weights[m];
      }
    }
    return sum / all;
  }

  /** The score with all that it is made of. */
  public FrontScore score(FrontReading reading) {
    List<FrontScore.Part> parts = new ArrayList<>();
    List<FrontMeasure> unsaid = new ArrayList<>();
    double all = 0;
    for (FrontMeasure measure : MEASURES) {
      all += reading.value(measure).isPresent() ? rule(measure).weight() : 0;
    }
    for (FrontMeasure measure : MEASURES) {
      if (reading.value(measure).isEmpty()) {
        unsaid.add(measure);
        continue;
      }
      double value = reading.value(measure).getAsDouble();
      double merit = rule(measure).curve().merit(value);
      double share = all > 0 ? rule(measure).weight() / all : 0;
      parts.add(new FrontScore.Part(measure, value, merit, share));
    }
    return new FrontScore(reading.pose(), total(reading), parts, unsaid);
  }
}
