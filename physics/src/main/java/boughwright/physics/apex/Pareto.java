// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.apex;

import java.util.List;

/** Which of several offers no other beats. */
public final class Pareto {
  private Pareto() {}

  /**
   * For each offer, whether no other is at least as good in everything and better in something.
   *
   * @param costs what each offer costs in each respect, less is better; all of one length
   */
  public static List<Boolean> of(List<double[]> costs) {
    return costs.stream()
        .map(one -> costs.stream().noneMatch(other -> isBeaten(one, other)))
        .toList();
  }

  private static boolean isBeaten(double[] one, double[] other) {
    boolean better = false;
    for (int k = 0; k < one.length; k++) {
      if (other[k] > one[k]) {
        return false;
      }
      better |= other[k] < one[k];
    }
    return better;
  }
}
