// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.apex;

import boughwright.modeller.design.shape.WoodLeft;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Skeleton;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A step of caliper where a thinner shoot takes over from thicker wood.
 *
 * @param at where the thinner wood starts, on the thicker
 * @param thin diameter over bark above the step [m]
 * @param thick diameter over bark below the step [m]
 */
public record Takeover(Spot at, double thin, double thick) {
  public Takeover {
    Objects.requireNonNull(at, "at");
    if (!(thin > 0 && thick > 0)) {
      throw new IllegalArgumentException("calipers of " + thin + " and " + thick);
    }
  }

  /** Caliper above the step over that below it [1]. */
  public double ratio() {
    return thin / thick;
  }

  /**
   * The largest step at a union on a way outward; empty where the way is one limb.
   *
   * @param way segments from the base outward, each the parent of the next
   */
  public static Optional<Takeover> largest(WoodLeft wood, List<Integer> way) {
    Skeleton skeleton = wood.skeleton();
    return way.stream()
        .skip(1)
        .filter(i -> !wood.limbOf(i).equals(wood.limbOf(skeleton.parent(i))))
        .map(i -> at(skeleton, i))
        .min(Comparator.comparingDouble(Takeover::ratio));
  }

  private static Takeover at(Skeleton skeleton, int i) {
    int parent = skeleton.parent(i);
    double along = skeleton.segment(i).along();
    return new Takeover(
        new Spot(skeleton.segment(parent).id(), along),
        skeleton.segment(i).caliperStart(),
        skeleton.caliper(parent, along));
  }
}
