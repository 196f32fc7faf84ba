// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

/**
 * Whether a rod solve found a pose that holds, and if not, how far it came.
 *
 * @param converged whether an equilibrium under the full loads was found
 * @param stable whether it is stable and was reached without a jump; under {@link
 *     RodLoads.DeadMoment moments} only the jump is judged
 * @param unstableModes independent ways to fall away just beyond the last pose that held, where
 *     known
 * @param stage the stage of loading it was in, counted from 0
 * @param part how much of that stage's change of load was on [1]
 * @param span the span that moved most when it failed
 * @param s where on it [m]
 * @param reason why it failed; empty when it holds
 * @param iterations Newton steps in all, over all meshes
 */
public record RodStatus(
    boolean converged,
    boolean stable,
    int unstableModes,
    int stage,
    double part,
    int span,
    double s,
    String reason,
    int iterations) {
  public boolean holds() {
    return converged && stable;
  }

  /** The same solve, whose pose does not hold after all. */
  RodStatus refused(int atSpan, double at, String why) {
    return new RodStatus(false, false, 0, stage, part, atSpan, at, why, iterations);
  }
}
