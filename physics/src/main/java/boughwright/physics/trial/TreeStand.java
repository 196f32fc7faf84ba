// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.species.Species;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;
import boughwright.physics.rod.RodOptions;
import java.util.List;

/** A tree set up once, to be tried with one proposal after another. */
public final class TreeStand {
  private final Tree tree;
  private final Plan plan;
  private final Species species;
  private final RodOptions options;
  private final Timber timber;
  private final TreeRods rods;

  /**
   * Sets a tree up.
   *
   * @param tree the tree as measured
   * @param plan its cuts, clamp, weight and stance count; its own proposals do not
   * @param species values for the tree's species, or what stands in for it
   * @param options how to solve
   */
  public TreeStand(Tree tree, Plan plan, Species species, RodOptions options) {
    this.tree = tree;
    this.plan = plan;
    this.species = species;
    this.options = options;
    Skeleton skeleton = new Skeleton(tree);
    Cutting cutting = new Cutting(skeleton, plan.cuts());
    timber = new Timber(cutting, TrialWood.best(skeleton, species));
    rods = new TreeRods(timber, plan.clamp());
  }

  private Skeleton skeleton() {
    return rods.timber().skeleton();
  }

  /** Tries proposals together, under the best guess of the wood. */
  public Stood with(List<Proposal> proposals) {
    Windings windings = Windings.of(skeleton(), proposals);
    TreeRods with =
        windings.coils().isEmpty() ? rods : new TreeRods(timber, plan.clamp(), windings);
    return new Stood(proposals, Attempt.of(plan, with, proposals, options));
  }

  /** What came of some proposals; points are asked for one by one, which is cheap. */
  public final class Stood {
    private final List<Proposal> proposals;
    private final Attempt attempt;
    private final PoseReader reader;

    private Stood(List<Proposal> proposals, Attempt attempt) {
      this.proposals = proposals;
      this.attempt = attempt;
      reader = new PoseReader(attempt.rods(), attempt.solution().pose());
    }

    public boolean holds() {
      return attempt.holds();
    }

    /** Where a place on the axis has come to [m, tree frame]. */
    public Point3 point(Spot spot) {
      int i = skeleton().indexOf(spot.segment());
      return reader.placeOf(i, spot.along() * skeleton().length(i));
    }

    /** Which way the axis runs there, from the segment's start to its end. */
    public Direction3 direction(Spot spot) {
      int i = skeleton().indexOf(spot.segment());
      return reader.directionAt(i, spot.along() * skeleton().length(i));
    }

    /** Pull of a line, in plan order [N]. */
    public double tension(int line) {
      return attempt.solution().lines().get(line).tension();
    }

    /** Everything that is known of the pose, at more cost. */
    public TrialResult result() {
      Plan tried = plan.withProposals(proposals);
      return new Trial(new TrialRequest(tree, tried, proposals, species, options), attempt)
          .result();
    }
  }
}
