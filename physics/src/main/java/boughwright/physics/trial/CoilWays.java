// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.plan.Proposal;
import boughwright.modeller.tree.Skeleton;
import java.util.List;

/** The coils of a proposal that lie along something. */
final class CoilWays {
  private CoilWays() {}

  static List<CoilPath> of(Skeleton skeleton, Proposal proposal) {
    return proposal.coils().stream()
        .map(coil -> CoilPath.of(skeleton, coil))
        .filter(path -> !path.stretches().isEmpty())
        .toList();
  }
}
