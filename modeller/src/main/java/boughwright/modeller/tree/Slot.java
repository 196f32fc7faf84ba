// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import java.util.Map;

/**
 * A groove cut along a segment, whose wood is gone.
 *
 * @param round where its middle lies round the segment ({@link RoundAngle}) [rad]
 * @param width its width across [m]
 * @param depth how deep it goes from the surface of the wood [m]
 * @param extras fields of the file that this version does not know
 */
public record Slot(double round, double width, double depth, Map<String, Object> extras) {
  public Slot {
    if (!Double.isFinite(round) || !(width > 0 && depth > 0)) {
      throw new IllegalArgumentException("a slot lies somewhere and has a width and a depth");
    }
    extras = Extras.copyOf(extras);
  }

  /** A slot of which nothing more is said. */
  public Slot(double round, double width, double depth) {
    this(round, width, depth, Map.of());
  }
}
