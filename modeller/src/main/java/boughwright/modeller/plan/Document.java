// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

import boughwright.modeller.tree.Backdrop;
import boughwright.modeller.tree.Extras;
import boughwright.modeller.tree.Tree;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Everything that is saved: a tree and the plans for it.
 *
 * @param tree the tree as measured
 * @param plans plans in file order
 * @param backdrops photos to trace over, in file order
 * @param extras top-level fields of the file that this version does not know
 */
public record Document(
    Tree tree, List<Plan> plans, List<Backdrop> backdrops, Map<String, Object> extras) {

  /**
   * @throws IllegalArgumentException if two plans share an id
   */
  public Document {
    Objects.requireNonNull(tree, "tree");
    plans = List.copyOf(plans);
    UniqueIds.require(plans.stream().map(Plan::id), "plan");
    backdrops = List.copyOf(backdrops);
    extras = Extras.copyOf(extras);
  }

  /** A document without photos. */
  public Document(Tree tree, List<Plan> plans, Map<String, Object> extras) {
    this(tree, plans, List.of(), extras);
  }

  /** The same document with another tree. */
  public Document withTree(Tree other) {
    return new Document(other, plans, backdrops, extras);
  }

  /** The same document with other plans. */
  public Document withPlans(List<Plan> others) {
    return new Document(tree, others, backdrops, extras);
  }

  /** The same document with other photos. */
  public Document withBackdrops(List<Backdrop> others) {
    return new Document(tree, plans, others, extras);
  }

  public Optional<Plan> plan(String id) {
    return plans.stream().filter(plan -> plan.id().equals(id)).findFirst();
  }
}
