// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

import boughwright.modeller.tree.Extras;
import java.util.Map;
import java.util.Objects;

/**
 * What a guy-line is made of.
 *
 * @param material its material
 * @param gauge diameter of one strand [m]
 * @param count strands side by side from pad to anchor, 1 or more; 2 for a loop that is twisted [1]
 * @param extras fields of the file that this version does not know
 */
public record Strand(Material material, double gauge, int count, Map<String, Object> extras) {
  public Strand {
    Objects.requireNonNull(material, "material");
    if (!(gauge > 0) || Double.isInfinite(gauge) || count < 1) {
      throw new IllegalArgumentException("a line has a gauge and a strand");
    }
    extras = Extras.copyOf(extras);
  }
}
