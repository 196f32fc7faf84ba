// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import boughwright.modeller.plan.TreeStyle;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;

/**
 * By what a tree is judged.
 *
 * @param style the style it is to have, which decides what is a fault
 * @param wood how it bears cuts
 * @param limits the value of every limit, SI
 */
public record ReviewRules(TreeStyle style, WoodKind wood, Map<Limit, Double> limits) {
  public ReviewRules {
    Objects.requireNonNull(style, "style");
    Objects.requireNonNull(wood, "wood");
    Map<Limit, Double> all = new EnumMap<>(Limit.class);
    for (Limit limit : Limit.values()) {
      double value = limits.getOrDefault(limit, limit.usual());
      if (!(value > 0 && value <= limit.largest())) {
        throw new IllegalArgumentException(limit + " is " + value);
      }
      all.put(limit, value);
    }
    limits = Collections.unmodifiableMap(all);
  }

  /** The usual limits. */
  public static ReviewRules of(TreeStyle style, WoodKind wood) {
    return new ReviewRules(style, wood, Map.of());
  }

  /** The value of a limit, SI. */
  public double value(Limit limit) {
    return limits.get(limit);
  }

  /** The same with another value of a limit, SI. */
  public ReviewRules with(Limit limit, double value) {
    Map<Limit, Double> changed = new EnumMap<>(limits);
    changed.put(limit, value);
    return new ReviewRules(style, wood, changed);
  }

  /** The most of the foliage that is taken in one session [1]. */
  public double mostLost() {
    return switch (wood) {
      case CONIFER -> value(Limit.LOST_CONIFER);
      case BROADLEAF -> value(Limit.LOST_BROADLEAF);
      case UNKNOWN -> Math.min(value(Limit.LOST_CONIFER), value(Limit.LOST_BROADLEAF));
    };
  }

  /** Whether the style has one trunk with branches up its side. */
  boolean hasOneTrunk() {
    return style == TreeStyle.UPRIGHT || style == TreeStyle.SLANTING || style == TreeStyle.CASCADE;
  }
}
