// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import java.util.Map;

/**
 * A side of a segment that is dead or stripped of its bark.
 *
 * @param round where its middle lies round the segment ({@link RoundAngle}) [rad]
 * @param width angle it takes up round the segment, more than 0 and at most 2 pi [rad]
 * @param depth how deep the dead wood goes from the surface of the wood [m]
 * @param extras fields of the file that this version does not know
 */
public record DeadFace(double round, double width, double depth, Map<String, Object> extras) {
  public DeadFace {
    if (!Double.isFinite(round) || !(width > 0 && width <= 2 * Math.PI * (1 + 1e-12))) {
      throw new IllegalArgumentException("a dead face lies somewhere and has a width");
    }
    if (!(depth > 0) || Double.isInfinite(depth)) {
      throw new IllegalArgumentException("a dead face is some depth deep, not " + depth + " m");
    }
    extras = Extras.copyOf(extras);
  }

  /** A dead face of which nothing more is said. */
  public DeadFace(double round, double width, double depth) {
    this(round, width, depth, Map.of());
  }
}
