// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.species.Species;
import boughwright.modeller.tree.Tree;
import boughwright.physics.rod.RodOptions;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;

/**
 * What to try.
 *
 * @param tree the tree as measured
 * @param plan the plan, which fits the tree
 * @param proposals the proposals of that plan to try together
 * @param species values for the tree's species, or what stands in for it
 * @param options how to solve
 */
public record TrialRequest(
    Tree tree, Plan plan, List<Proposal> proposals, Species species, RodOptions options) {
  public TrialRequest {
    Objects.requireNonNull(tree, "tree");
    Objects.requireNonNull(plan, "plan");
    proposals = List.copyOf(proposals);
    Objects.requireNonNull(species, "species");
    Objects.requireNonNull(options, "options");
    if (!plan.proposals().containsAll(proposals)) {
      throw new IllegalArgumentException("a proposal is not of plan " + plan.id());
    }
  }

  /** All proposals of a plan, solved with the usual accuracy. */
  public static TrialRequest of(Tree tree, Plan plan, Species species) {
    return new TrialRequest(tree, plan, plan.proposals(), species, RodOptions.DEFAULT);
  }

  /** The same request with each proposal of its plan changed, those tried and the others. */
  TrialRequest changing(UnaryOperator<Proposal> change) {
    List<Proposal> all = new ArrayList<>();
    List<Proposal> tried = new ArrayList<>();
    for (Proposal proposal : plan.proposals()) {
      Proposal changed = change.apply(proposal);
      all.add(changed);
      if (proposals.contains(proposal)) {
        tried.add(changed);
      }
    }
    return new TrialRequest(tree, plan.withProposals(all), tried, species, options);
  }
}
