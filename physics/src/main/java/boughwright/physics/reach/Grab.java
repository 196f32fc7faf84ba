// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.species.Species;
import boughwright.modeller.tree.Tree;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * A place that a hand has taken hold of, to be brought elsewhere.
 *
 * @param tree the tree as measured
 * @param plan its cuts, clamp, weight and stance count; its own proposals do not
 * @param kept proposals that act besides what is sought
 * @param species values for the tree's species, or what stands in for it
 * @param spot the place; the cuts leave it
 * @param anchors what lines may be tied to, at least one sort
 * @param line the line that is changed, with its tackle and its place; empty for a new one
 */
public record Grab(
    Tree tree,
    Plan plan,
    List<Proposal> kept,
    Species species,
    Spot spot,
    Set<AnchorSort> anchors,
    Optional<GuyLine> line) {
  public Grab {
    Objects.requireNonNull(tree, "tree");
    Objects.requireNonNull(plan, "plan");
    kept = List.copyOf(kept);
    Objects.requireNonNull(species, "species");
    Objects.requireNonNull(spot, "spot");
    anchors = Set.copyOf(anchors);
    Objects.requireNonNull(line, "line");
    if (anchors.isEmpty()) {
      throw new IllegalArgumentException("some anchor is allowed");
    }
  }

  /** A place of a tree as it is under all proposals of a plan, pulled anew to any anchor. */
  public static Grab anew(Tree tree, Plan plan, Species species, Spot spot) {
    return new Grab(
        tree, plan, plan.proposals(), species, spot, Set.of(AnchorSort.values()), Optional.empty());
  }
}
