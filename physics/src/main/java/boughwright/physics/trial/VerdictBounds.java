// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import java.util.List;

/**
 * How much risk each level of a verdict allows. Set down for growers in docs/user/verdicts.md.
 *
 * <p>Breaking is any of crack, split, shear and tear. The numbers are our choice; what they rest on
 * stands beside each.
 *
 * @param level the level
 * @param breaking most that the best probability of breaking may be [1]
 * @param breakingHigh most that its 95 % point may be [1]
 * @param kink most that the best probability of a kink may be [1]
 */
record VerdictBounds(Verdict.Level level, double breaking, double breakingHigh, double kink) {
  /**
   * From good to bad.
   *
   * <p>Takes it: a limb of ten years is worth fifty bends like this one, and even where this tree
   * turns out the worst of twenty it still holds in nine bends of ten. A kink is damage that the
   * limb outlives and grows over: one in five.
   *
   * <p>In stages: stages do not make the wood stronger (relaxation hardly raises the strain it
   * bears); they let a person hear the first sound and stop, which is worth a few times the risk.
   * On the worst tree of twenty it is an even bet.
   *
   * <p>With protection: wrapping keeps bark on and a crack from running, so that one limb in five
   * may crack and most of those live. That the worst tree of twenty cracks is then taken as given;
   * so is a kink.
   */
  static final List<VerdictBounds> LEVELS =
      List.of(
          new VerdictBounds(Verdict.Level.TAKES_IT, 1 / 50.0, 1 / 10.0, 1 / 5.0),
          new VerdictBounds(Verdict.Level.IN_STAGES, 1 / 15.0, 1 / 2.0, 1 / 2.0),
          new VerdictBounds(Verdict.Level.WITH_PROTECTION, 1 / 5.0, 1, 1));

  /** The best level that a risk keeps within. */
  static Verdict.Level level(RiskSum sum) {
    return LEVELS.stream()
        .filter(bounds -> bounds.allow(sum))
        .map(VerdictBounds::level)
        .findFirst()
        .orElse(Verdict.Level.NO);
  }

  private boolean allow(RiskSum sum) {
    return sum.breaking() <= breaking && sum.breakingHigh() <= breakingHigh && sum.kink() <= kink;
  }
}
