// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a bend risks, from many draws of everything that is not known.
 *
 * @param failures ways of failing, the likeliest first
 * @param tensions pull of each guy-line by line id [N]
 * @param noPose part of the draws in which no pose held; they count as cracked [1]
 * @param shares inputs by their share in the doubt about cracking, the largest first
 * @param limits what the wood bears along the segments that are bent, in order
 * @param samples draws made
 * @param seed the seed; the same seed gives the same numbers
 */
public record Risk(
    List<FailureRisk> failures,
    Map<String, Range> tensions,
    double noPose,
    List<InputShare> shares,
    List<LimitSample> limits,
    int samples,
    long seed) {
  public Risk {
    failures = List.copyOf(failures);
    tensions = Map.copyOf(tensions);
    shares = List.copyOf(shares);
    limits = List.copyOf(limits);
  }

  public Optional<FailureRisk> of(FailureMode mode) {
    return failures.stream().filter(risk -> risk.mode() == mode).findFirst();
  }

  /** Breaking in any way, crack, split, shear or tear; never too low. */
  public Probability breaking() {
    return RiskSum.of(this).probability();
  }
}
