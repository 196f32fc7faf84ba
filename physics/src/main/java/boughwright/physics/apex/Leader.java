// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.apex;

import boughwright.modeller.design.shape.CutFace;
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
 * @param cuts what is cut so that nothing stands above it, and the faces that leaves, from the base
 *     outward
 * @param couldStand how high its tip would be were it upright from its start, over the soil [m]
 */
public record Leader(
    Spot tip,
    String first,
    double caliper,
    Optional<Takeover> takeover,
    List<CutFace> cuts,
    double couldStand) {
  public Leader {
    Objects.requireNonNull(tip, "tip");
    Objects.requireNonNull(first, "first");
    Objects.requireNonNull(takeover, "takeover");
    cuts = List.copyOf(cuts);
  }
}
