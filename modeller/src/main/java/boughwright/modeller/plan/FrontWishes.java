// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

import boughwright.modeller.tree.Extras;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * By what a person judges the fronts of a tree, as far as they said.
 *
 * @param style the style the tree is to have
 * @param eyeHeight height of the eye above the soil line [m]
 * @param eyeDistance distance of the eye from the trunk [m]
 * @param weights what counts how much, in place of the style's own weight: 0 for not at all [1]
 * @param extras fields of the file that this version does not know
 */
public record FrontWishes(
    Optional<TreeStyle> style,
    OptionalDouble eyeHeight,
    OptionalDouble eyeDistance,
    Map<FrontMeasure, Double> weights,
    Map<String, Object> extras) {
  /** Nothing is said. */
  public static final FrontWishes UNSAID =
      new FrontWishes(
          Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty(), Map.of(), Map.of());

  public FrontWishes {
    Objects.requireNonNull(style, "style");
    if (eyeHeight.isPresent() && !Double.isFinite(eyeHeight.getAsDouble())) {
      throw new IllegalArgumentException("the eye is at " + eyeHeight.getAsDouble());
    }
    if (eyeDistance.isPresent()
        && !(eyeDistance.getAsDouble() > 0 && Double.isFinite(eyeDistance.getAsDouble()))) {
      throw new IllegalArgumentException("the eye is " + eyeDistance.getAsDouble() + " away");
    }
    for (double weight : weights.values()) {
      if (!(weight >= 0 && Double.isFinite(weight))) {
        throw new IllegalArgumentException("a weight is 0 or more, not " + weight);
      }
    }
    Map<FrontMeasure, Double> copy = new EnumMap<>(FrontMeasure.class);
    copy.putAll(weights);
    weights = Collections.unmodifiableMap(copy);
    extras = Extras.copyOf(extras);
  }
}
