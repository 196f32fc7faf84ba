// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.plan.Material;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.species.Species;
import boughwright.modeller.tree.Tree;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;

/**
 * What is to be reached, and with what.
 *
 * @param tree the tree as measured
 * @param plan its cuts, clamp, planting, weight and stance count
 * @param kept proposals of the plan that act besides what is sought
 * @param species values for the tree's species, or what stands in for it
 * @param target what is wanted; its place is left by the cuts
 * @param wishes what the person allows
 */
public record ReachRequest(
    Tree tree, Plan plan, List<Proposal> kept, Species species, Target target, Wishes wishes) {

  /**
   * What the person allows.
   *
   * @param anchors what lines may be tied to, at least one sort
   * @param mostRisk most that any breaking may risk, more than 0, up to 1 [1]
   * @param lines most lines at once, 1 or 2; a coil counts as one
   * @param metals metals of coils, in which wire is sold; empty if nothing is coiled
   */
  public record Wishes(Set<AnchorSort> anchors, double mostRisk, int lines, Set<Material> metals) {
    /** Anything that is there, one in twenty, two lines. */
    public static final Wishes USUAL = new Wishes(Set.of(AnchorSort.values()), 0.05, 2);

    /** Without coils. */
    public Wishes(Set<AnchorSort> anchors, double mostRisk, int lines) {
      this(anchors, mostRisk, lines, Set.of());
    }

    public Wishes {
      anchors = Set.copyOf(anchors);
      metals = Collections.unmodifiableSet(new TreeSet<>(metals));
      if (anchors.isEmpty() || !(mostRisk > 0 && mostRisk <= 1) || lines < 1 || lines > 2) {
        throw new IllegalArgumentException("some anchor, a risk and 1 or 2 lines are allowed");
      }
      if (!metals.stream().allMatch(Material::isWire)) {
        throw new IllegalArgumentException("only wire is coiled");
      }
    }
  }

  public ReachRequest {
    Objects.requireNonNull(tree, "tree");
    Objects.requireNonNull(plan, "plan");
    kept = List.copyOf(kept);
    Objects.requireNonNull(species, "species");
    Objects.requireNonNull(target, "target");
    Objects.requireNonNull(wishes, "wishes");
    if (!plan.proposals().containsAll(kept)) {
      throw new IllegalArgumentException("a proposal is not of plan " + plan.id());
    }
  }
}
