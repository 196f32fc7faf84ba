// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.apex;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What could become the top of a tree.
 *
 * @param options leaders, the best first
 * @param chop to start anew; empty where the trunk is too low for it
 * @param chopIsBest whether no leader is as good as the chop in all respects and better in one
 * @param height how high the highest wood is now, at the planting angle [m]
 * @param baseCaliper diameter of the trunk at its base over bark [m]
 * @param leftOut leaders that were not bent, being thinner than those that were
 */
public record Apexes(
    List<ApexOption> options,
    Optional<Chop> chop,
    boolean chopIsBest,
    double height,
    double baseCaliper,
    int leftOut) {
  public Apexes {
    options = List.copyOf(options);
    Objects.requireNonNull(chop, "chop");
  }
}
