// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

/**
 * A groove cut along a segment, whose wood is gone.
 *
 * @param round where its middle lies round the segment ({@link RoundAngle}) [rad]
 * @param width its width across [m]
 * @param depth how deep it goes from the surface of the wood [m]
 */
public record Slot(double round, double width, double depth) {
  public Slot {
    if (!Double.isFinite(round) || !(width > 0 && depth > 0)) {
      throw new IllegalArgumentException("a slot lies somewhere and has a width and a depth");
    }
  }
}
