// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import java.util.Arrays;

/**
 * What the draws that share one guess of species and tree gave.
 *
 * @param margins ln of demand over limit, the limit's part that goes with the modulus taken in,
 *     shape (draws that hold, ways of failing, limbs)
 * @param fallen how many draws found no pose
 * @param tensions pull of each line [N], shape (draws that hold, lines)
 * @param tally for what decides
 */
record Draws(double[][][] margins, int fallen, double[][] tensions, DrawTally tally) {
  /** How many draws there are. */
  int count() {
    return margins.length + fallen;
  }

  /** True if some limb of some draw works in a way. */
  boolean works(FailureMode mode) {
    return Arrays.stream(margins)
        .flatMapToDouble(limbs -> Arrays.stream(limbs[mode.ordinal()]))
        .anyMatch(margin -> margin > Double.NEGATIVE_INFINITY);
  }
}
