// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

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
 * @param extras top-level fields of the file that this version does not know
 */
public record Document(Tree tree, List<Plan> plans, Map<String, Object> extras) {

  /**
   * @throws IllegalArgumentException if two plans share an id
   */
  public Document {
    Objects.requireNonNull(tree, "tree");
    plans = List.copyOf(plans);
    UniqueIds.require(plans.stream().map(Plan::id), "plan");
    extras = Extras.copyOf(extras);
  }

  public Optional<Plan> plan(String id) {
    return plans.stream().filter(plan -> plan.id().equals(id)).findFirst();
  }
}
