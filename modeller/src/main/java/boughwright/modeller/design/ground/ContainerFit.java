// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.ground;

import boughwright.modeller.tree.Container;
import java.util.Objects;

/**
 * A container beside what the tree asks for.
 *
 * @param container the container [tree frame]
 * @param trunk diameter of the trunk base [m]
 * @param height height of the tree over the soil [m]
 * @param holdsTrunk whether the trunk base is over its floor
 */
public record ContainerFit(Container container, double trunk, double height, boolean holdsTrunk) {
  /** Length of a container over the height of the tree [1]. Common practice, no source. */
  public static final double LENGTH = 2.0 / 3;

  /** Depth of a container over the diameter of the trunk [1]. Common practice, no source. */
  public static final double DEPTH = 1;

  public ContainerFit {
    Objects.requireNonNull(container, "container");
    if (!(trunk > 0)) {
      throw new IllegalArgumentException("trunk of " + trunk);
    }
  }

  /** Length the trade would give it [m]. */
  public double usualLength() {
    return LENGTH * height;
  }

  /** Depth the trade would give it [m]. */
  public double usualDepth() {
    return DEPTH * trunk;
  }

  /**
   * Depth of soil from the soil line at the trunk to the floor; less than 0 if it ends above [m].
   */
  public double soilDepth() {
    return container.size().depth() - container.rim();
  }
}
