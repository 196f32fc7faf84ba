// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.ground;

import java.util.List;
import java.util.Objects;

/**
 * What roots lose at a planting angle.
 *
 * @param cuts cuts that make them fit the container, in file order; none without a container
 * @param lifted roots of which every end comes out of the soil that was in it as measured: what is
 *     left of them dries
 * @param cut volume that the cuts take [m3]
 * @param dry volume left of the lifted roots [m3]
 * @param whole volume of all roots outside the trunk, more than 0 [m3]
 */
public record RootLoss(
    List<RootCut> cuts, List<Root> lifted, double cut, double dry, double whole) {
  public RootLoss {
    cuts = List.copyOf(cuts);
    lifted = List.copyOf(lifted);
    Objects.requireNonNull(cuts, "cuts");
    if (!(whole > 0) || !(cut >= 0 && dry >= 0)) {
      throw new IllegalArgumentException("roots of " + whole + " lose " + cut + " and " + dry);
    }
  }

  /** Share of the volume that goes, cut or dry [1]. */
  public double share() {
    return Math.min(1, (cut + dry) / whole);
  }

  /** Share of the volume that is cut [1]. */
  public double cutShare() {
    return Math.min(1, cut / whole);
  }
}
