// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.species.Species;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;
import boughwright.physics.rod.RodLoads;
import boughwright.physics.rod.RodModel;
import boughwright.physics.rod.RodOptions;
import boughwright.physics.rod.RodPlace;
import boughwright.physics.rod.RodSolution;
import boughwright.physics.rod.RodSolver;
import java.util.ArrayList;
import java.util.List;

/** A tree set up once, to be tried with one proposal after another. */
public final class TreeStand {
  private final Tree tree;
  private final Plan plan;
  private final Species species;
  private final RodOptions options;
  private final Timber timber;
  private final TreeRods rods;
  private final QuickRisk risks;

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
    risks = new QuickRisk(new TrialRequest(tree, plan, List.of(), species, options), rods);
  }

  private TreeStand(TreeStand other, RodOptions options) {
    tree = other.tree;
    plan = other.plan;
    species = other.species;
    this.options = options;
    timber = other.timber;
    rods = other.rods;
    risks = other.risks;
  }

  /** The same tree, solved otherwise. */
  public TreeStand with(RodOptions others) {
    return new TreeStand(this, others);
  }

  /** How it is solved. */
  public RodOptions options() {
    return options;
  }

  /** The tree, its shape worked out. */
  public Skeleton skeleton() {
    return rods.timber().skeleton();
  }

  /** What the cuts of the plan leave. */
  public Cutting cutting() {
    return rods.timber().cutting();
  }

  private double along(Spot spot) {
    return spot.along() * skeleton().length(skeleton().indexOf(spot.segment()));
  }

  /** Whether a place cannot move, whatever pulls it: the trunk base, or where the tree is held. */
  public boolean isHeld(Spot spot) {
    return rods.isHeld(skeleton().indexOf(spot.segment()), along(spot));
  }

  /**
   * How far a place gives way sideways to a small force there, by straight-line beams along the
   * wood that carries it, as if every part of it stood square to the force [m/N].
   */
  public double compliance(Spot spot) {
    return Compliance.of(rods, skeleton().indexOf(spot.segment()), along(spot));
  }

  /**
   * The word for a side of a branch as measured, seen from the front of the plan: {@code top},
   * {@code underside}, {@code left}, {@code right}, {@code front} or {@code back}.
   *
   * @param side away from the axis [tree frame]
   */
  public String side(Vector3 side) {
    return SideWord.of(side, plan.frontAzimuth().orElse(0));
  }

  /** Tries proposals together, under the best guess of the wood. */
  public Stood with(List<Proposal> proposals) {
    return new Stood(proposals, Attempt.of(plan, wound(proposals), proposals, options));
  }

  /** What a pose of this tree risks that was bent for the first time and holds, without draws. */
  public RiskGuess risk(HeldTree bent) {
    return risks.of(bent.attempt());
  }

  /** The rods with the coils and aids of some proposals. */
  private TreeRods wound(List<Proposal> proposals) {
    Windings windings = Windings.of(skeleton(), proposals);
    AidWork aids = AidWork.of(skeleton(), proposals);
    boolean bare = windings.coils().isEmpty() && aids.isNone();
    return bare ? rods : new TreeRods(timber.with(aids), plan.clamp(), windings);
  }

  /** Tries proposals together with a force that keeps its size and direction [N]. */
  public Stood pulled(List<Proposal> proposals, Spot at, Vector3 force) {
    return gripped(proposals, at).pulled(force);
  }

  /**
   * The tree under some proposals, set up once, to be pulled at a place by one force after another.
   */
  public Gripped gripped(List<Proposal> proposals, Spot at) {
    return new Gripped(proposals, at);
  }

  /** A place of the tree that forces pull at. */
  public final class Gripped {
    private final List<Proposal> proposals;
    private final Rigging rigging;
    private final RodLoads loads;
    private final RodModel model;
    private final RodPlace place;

    private Gripped(List<Proposal> proposals, Spot at) {
      this.proposals = List.copyOf(proposals);
      rigging = Rigging.of(plan, wound(proposals), proposals);
      loads = rigging.part(HeldTree.Grip.ALL);
      model = rigging.model(rigging.rods());
      place = rigging.rods().place(skeleton().indexOf(at.segment()), along(at), Vector3.ZERO);
    }

    /** The pose under a force that keeps its size and direction [N, tree frame]. */
    public Stood pulled(Vector3 force) {
      List<RodLoads.DeadForce> forces = new ArrayList<>(loads.forces());
      forces.add(new RodLoads.DeadForce(place, force));
      RodLoads all = new RodLoads(forces, loads.moments(), loads.weights(), loads.lines());
      RodSolution solution = RodSolver.solve(model, all, options);
      return new Stood(proposals, new Attempt(rigging.rods(), rigging.loads(), solution));
    }
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
      return reader.placeOf(skeleton().indexOf(spot.segment()), along(spot));
    }

    /** Which way the axis runs there, from the segment's start to its end. */
    public Direction3 direction(Spot spot) {
      return reader.directionAt(skeleton().indexOf(spot.segment()), along(spot));
    }

    /** Pull of a line, in plan order [N]. */
    public double tension(int line) {
      return attempt.solution().lines().get(line).tension();
    }

    /** What the pose risks, without draws; of a pose that holds. */
    public RiskGuess risk() {
      return risks.of(attempt);
    }

    /** Everything that is known of the pose, at more cost. */
    public TrialResult result() {
      Plan tried = plan.withProposals(proposals);
      return new Trial(new TrialRequest(tree, tried, proposals, species, options), attempt)
          .result();
    }
  }
}
