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
 * @param fronts by what fronts are judged, and which are marked
 * @param extras top-level fields of the file that this version does not know
 */
public record Document(
    Tree tree,
    List<Plan> plans,
    List<Backdrop> backdrops,
    FrontChoice fronts,
    Map<String, Object> extras) {

  /**
   * @throws IllegalArgumentException if two plans share an id
   */
  public Document {
    Objects.requireNonNull(tree, "tree");
    plans = List.copyOf(plans);
    UniqueIds.require(plans.stream().map(Plan::id), "plan");
    backdrops = List.copyOf(backdrops);
    Objects.requireNonNull(fronts, "fronts");
    extras = Extras.copyOf(extras);
  }

  /** A document without photos, in which nothing is said about fronts. */
  public Document(Tree tree, List<Plan> plans, Map<String, Object> extras) {
    this(tree, plans, List.of(), FrontChoice.UNSAID, extras);
  }

  /** The same document with another tree. */
  public Document withTree(Tree other) {
    return new Document(other, plans, backdrops, fronts, extras);
  }

  /** The same document with other plans. */
  public Document withPlans(List<Plan> others) {
    return new Document(tree, others, backdrops, fronts, extras);
  }

  /** The same document with other photos. */
  public Document withBackdrops(List<Backdrop> others) {
    return new Document(tree, plans, others, fronts, extras);
  }

  /** The same document with other wishes and marked fronts. */
  public Document withFronts(FrontChoice others) {
    return new Document(tree, plans, backdrops, others, extras);
  }

  public Optional<Plan> plan(String id) {
    return plans.stream().filter(plan -> plan.id().equals(id)).findFirst();
  }
}
