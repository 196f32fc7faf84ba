// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import java.util.OptionalDouble;

/**
 * The place where the wood is bent hardest.
 *
 * @param segment segment id
 * @param along fraction of the segment's length from its start [1]
 * @param fromUnion distance from where the branch starts to bend; empty on a segment that does not
 *     start with a union [m]
 * @param round where round the segment at rest the stretched side lies, clockwise looking from its
 *     start to its end, from its upper side, 0 to 2 pi [rad]
 * @param side {@code top}, {@code underside}, {@code left} or {@code right}, seen from the front
 * @param bendingStrain wood radius times added curvature [1]
 * @param tensionStrain strain of the most stretched fibre there [1]
 * @param compressionStrain strain of the most compressed fibre there, without sign [1]
 * @param moment bending moment of the wood there, without what coils carry [N m]
 */
public record Peak(
    String segment,
    double along,
    OptionalDouble fromUnion,
    double round,
    String side,
    double bendingStrain,
    double tensionStrain,
    double compressionStrain,
    double moment) {
  /**
   * No number means anything beyond this [1]: half as much again as the most that was measured on
   * living branches when they broke, 6.6 % on mangroves (docs/theory/risk.md).
   */
  private static final double BEYOND_WOOD = 0.1;

  /**
   * Whether no living wood bears it. Wood of one's own that never flows bears everything: it is
   * squeezed as much as it is stretched.
   */
  public boolean isBeyondWood() {
    return bendingStrain > BEYOND_WOOD && compressionStrain > tensionStrain;
  }
}
