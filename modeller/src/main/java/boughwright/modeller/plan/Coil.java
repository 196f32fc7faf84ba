// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

import boughwright.modeller.tree.Extras;
import java.util.Map;
import java.util.Objects;

/**
 * Wire coiled round a branch.
 *
 * @param from where the coil starts
 * @param to where it ends
 * @param metal a material that can be coiled
 * @param gauge diameter of the wire [m]
 * @param strands wires side by side, 1 or more
 * @param angleToAxis angle between wire and branch axis [rad]
 * @param hand which way it winds
 * @param extras fields of the file that this version does not know
 */
public record Coil(
    Spot from,
    Spot to,
    Material metal,
    double gauge,
    int strands,
    double angleToAxis,
    Hand hand,
    Map<String, Object> extras) {
  public Coil {
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
    Objects.requireNonNull(metal, "metal");
    Objects.requireNonNull(hand, "hand");
    if (!(gauge > 0) || strands < 1 || !(angleToAxis > 0 && angleToAxis < Math.PI / 2)) {
      throw new IllegalArgumentException("a coil has a gauge, a strand and a slant");
    }
    if (!metal.isWire()) {
      throw new IllegalArgumentException(metal.word() + " cannot be coiled");
    }
    extras = Extras.copyOf(extras);
  }
}
