// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.species.Species;
import boughwright.modeller.tree.PullResults;
import boughwright.modeller.tree.PullTest;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;
import java.util.ArrayList;
import java.util.List;

/** What the pull tests of a tree say of its wood. */
final class PullObservations {
  private PullObservations() {}

  /**
   * All pull tests of a tree that can tell something, made linear around a point.
   *
   * @param tree the tree; its tests are predicted on it as measured, uncut
   * @param wood the point: what is taken for true of the wood and the calipers
   * @return one observation for each such test, in file order
   */
  static List<PullObservation> of(Tree tree, TrialWood wood) {
    Skeleton skeleton = new Skeleton(tree);
    List<PullObservation> out = new ArrayList<>();
    for (PullTest test : telling(skeleton, wood)) {
      out.add(new PullPoint(skeleton, test, wood).observation());
    }
    return List.copyOf(out);
  }

  /** The tests that pull a branch where, and the way, it can bend. */
  static List<PullTest> telling(Skeleton skeleton, TrialWood wood) {
    return skeleton.tree().pullTests().stream()
        .filter(test -> new PulledBranch(skeleton, test, wood).whyNot().isEmpty())
        .toList();
  }

  /**
   * The same, with tests that do not agree believed less.
   *
   * @param tree the tree, with or without the results of its tests
   * @param species values for its wood
   * @param wood the point
   */
  static List<PullObservation> agreed(Tree tree, Species species, TrialWood wood) {
    double more =
        tree.pullTests().size() > 1
            ? new PullUpdate(PullResults.without(tree), species).widening()
            : 0;
    return of(tree, wood).stream().map(one -> one.withNoise(one.noiseVariance() + more)).toList();
  }
}
