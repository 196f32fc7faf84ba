// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.apex;

import boughwright.modeller.plan.Plan;
import boughwright.modeller.species.Species;
import boughwright.modeller.tree.Tree;
import boughwright.physics.reach.ReachRequest;
import boughwright.physics.stage.Trying;
import java.util.Objects;

/**
 * For which tree a top is sought, and how.
 *
 * @param tree the tree as measured
 * @param plan its cuts, clamp, planting, weight and stance count; its bends do not
 * @param species values for the tree's species, or what stands in for it
 * @param wishes what the person allows of a bend
 * @param trying how the risk of each is drawn, and the day
 * @param most so many leaders are bent, the thickest, at least one
 */
public record ApexRequest(
    Tree tree, Plan plan, Species species, ReachRequest.Wishes wishes, Trying trying, int most) {
  /** Leaders that are bent where nothing is said (a choice). */
  public static final int USUAL_MOST = 6;

  /** Draws for each of them: enough to rank by (a choice). */
  public static final int USUAL_DRAWS = 200;

  public ApexRequest {
    Objects.requireNonNull(tree, "tree");
    Objects.requireNonNull(plan, "plan");
    Objects.requireNonNull(species, "species");
    Objects.requireNonNull(wishes, "wishes");
    Objects.requireNonNull(trying, "trying");
    if (most < 1) {
      throw new IllegalArgumentException("at least one leader is bent, not " + most);
    }
  }
}
