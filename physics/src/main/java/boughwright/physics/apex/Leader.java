// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.apex;

import boughwright.modeller.plan.Spot;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A shoot that could become the top.
 *
 * @param tip its end
 * @param first the segment it starts with
 * @param caliper its diameter over bark where it starts [m]
 * @param takeover where it takes over from thicker wood; empty where it is the trunk itself
 * @param cuts what is cut so that nothing stands above it, from the base outward
 * @param couldStand how high its tip would be were it upright from its start, over the soil [m]
 */
public record Leader(
    Spot tip,
    String first,
    double caliper,
    Optional<Takeover> takeover,
    List<TopCut> cuts,
    double couldStand) {

  /**
   * A cut that makes way for a leader.
   *
   * @param at where
   * @param width size of the wound across the grain: the caliper there [m]
   */
  public record TopCut(Spot at, double width) {
    public TopCut {
      Objects.requireNonNull(at, "at");
      if (!(width > 0)) {
        throw new IllegalArgumentException("a cut of width " + width);
      }
    }
  }

  public Leader {
    Objects.requireNonNull(tip, "tip");
    Objects.requireNonNull(first, "first");
    Objects.requireNonNull(takeover, "takeover");
    cuts = List.copyOf(cuts);
  }
}
