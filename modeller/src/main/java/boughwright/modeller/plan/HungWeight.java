// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

import boughwright.modeller.tree.Extras;
import java.util.Map;
import java.util.Objects;

/**
 * A weight hung on a branch.
 *
 * @param at where
 * @param mass mass [kg]
 * @param extras fields of the file that this version does not know
 */
public record HungWeight(Spot at, double mass, Map<String, Object> extras) {
  public HungWeight {
    Objects.requireNonNull(at, "at");
    if (!(mass > 0) || Double.isInfinite(mass)) {
      throw new IllegalArgumentException("mass is " + mass + " kg, a positive number is expected");
    }
    extras = Extras.copyOf(extras);
  }
}
