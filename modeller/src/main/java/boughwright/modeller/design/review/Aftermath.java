// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What cuts leave.
 *
 * @param cuts the cuts, and the wound each leaves
 * @param lost share of the tree's foliage that goes, by {@link Foliage} [1]
 * @param mostLost the most that goes in one session [1]
 * @param leftOnBranch share of its foliage that is left on the shoot; empty where the whole shoot
 *     goes [1]
 * @param balance where the middle of the wood stood, then stands
 * @param taper the trunk's taper before and after
 */
public record Aftermath(
    List<AdvisedCut> cuts,
    double lost,
    double mostLost,
    OptionalDouble leftOnBranch,
    Change<Balance> balance,
    Change<Double> taper) {
  /**
   * Before and after.
   *
   * @param <T> of what
   */
  public record Change<T>(T before, T after) {
    public Change {
      Objects.requireNonNull(before, "before");
      Objects.requireNonNull(after, "after");
    }
  }

  public Aftermath {
    cuts = List.copyOf(cuts);
    if (cuts.isEmpty() || !(lost >= 0 && lost <= 1 + 1e-9)) {
      throw new IllegalArgumentException("no cuts, or " + lost + " lost");
    }
    Objects.requireNonNull(leftOnBranch, "leftOnBranch");
    Objects.requireNonNull(balance, "balance");
    Objects.requireNonNull(taper, "taper");
  }

  /** In how many sessions it is done, so that each takes no more than it may. */
  public int sessions() {
    return Math.max(1, (int) Math.ceil(lost / mostLost - 1e-9));
  }
}
