// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

/**
 * Whether a trial found a pose that holds.
 *
 * @param converged whether the solver found an equilibrium, be it one the tree falls away from
 * @param stable whether that equilibrium is one the tree can stay in, reached without a jump
 * @param unstableModes number of independent ways in which it would fall away
 * @param where the place to look at when it failed, in words; empty otherwise
 */
public record Outcome(boolean converged, boolean stable, int unstableModes, String where) {
  /** True when there is a pose to show. */
  public boolean holds() {
    return converged && stable;
  }
}
