// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.species.Species;
import boughwright.modeller.tree.Response;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.TreeWood;
import boughwright.modeller.tree.WoodOverride;
import boughwright.physics.wood.BranchStiffness;
import boughwright.physics.wood.SegmentWood;
import boughwright.physics.wood.WoodPrior;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What one trial takes for true of the wood: the best guess, or one draw.
 *
 * @param segments the wood of every segment, in file order
 * @param startReading error taken for the caliper at the start of every segment, to be taken off
 *     the reading [m], shape (segments)
 * @param endReading the same at the end [m], shape (segments)
 */
record TrialWood(List<SegmentWood> segments, double[] startReading, double[] endReading) {

  /** The best guess: calipers as read. */
  static TrialWood best(Skeleton skeleton, Species species) {
    List<SegmentWood> segments = new ArrayList<>();
    for (int i = 0; i < skeleton.size(); i++) {
      segments.add(best(skeleton.tree(), skeleton.segment(i).id(), species));
    }
    return new TrialWood(
        List.copyOf(segments), new double[skeleton.size()], new double[skeleton.size()]);
  }

  private static SegmentWood best(Tree tree, String segment, Species species) {
    Optional<WoodOverride> override = tree.overrideFor(segment);
    BranchStiffness stiffness = BranchStiffness.of(override, tree.wood(), species);
    return new SegmentWood(
        stiffness.moe(),
        stiffness.shearModulus(),
        yieldStrain(override, tree.wood(), species),
        stiffness.basis());
  }

  private static double yieldStrain(
      Optional<WoodOverride> override, TreeWood wood, Species species) {
    Response response =
        override
            .flatMap(WoodOverride::response)
            .orElse(
                wood instanceof TreeWood.Own own
                    ? own.response().orElse(Response.FIBRE)
                    : Response.FIBRE);
    return response == Response.ELASTIC
        ? Double.POSITIVE_INFINITY
        : WoodPrior.of(species).yieldStrain();
  }
}
