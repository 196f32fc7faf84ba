// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.rod.RodLoads;
import boughwright.physics.rod.RodSolution;
import boughwright.physics.rod.RodSolver;
import boughwright.physics.rod.RodStart;
import boughwright.physics.wood.Spell;
import java.util.Map;
import java.util.TreeMap;

/**
 * A tree in the course of being bent, held and let go: each step starts from the pose before, and
 * from what its sections remember. Not changed once made; each step makes another.
 *
 * <p>Within a step all fibres are taken to go one way.
 */
public final class HeldTree {
  /** Most steps in which coils are taken off. */
  private static final int MOST_STEPS = 32;

  private final TrialRequest request;
  private final Rigging rigging;
  private final TreeRods rods;
  private final RodLoads loads;
  private final RodSolution solution;
  private final Grip grip;
  private final Aging aging;

  /**
   * How much of a plan acts.
   *
   * @param lines part of its lines and weights: at 0 lines are as long as measured, or without
   *     tension, and weights are taken down; at 1 all of them act [1]
   * @param hands part of its pulls by hand, the same way [1]
   * @param coils whether its coils are on; once off they stay off
   */
  public record Grip(double lines, double hands, boolean coils) {
    /** Everything acts. */
    public static final Grip ALL = new Grip(1, 1);

    /** The hands are off. */
    public static final Grip HELD = new Grip(1, 0);

    /** Nothing acts, and the coils are taken off. */
    public static final Grip NOTHING = new Grip(0, 0, false);

    public Grip {
      if (!(lines >= 0 && hands >= 0) || Double.isInfinite(lines + hands)) {
        throw new IllegalArgumentException("parts are 0 or more, not " + lines + ", " + hands);
      }
    }

    /** A grip with the coils on. */
    public Grip(double lines, double hands) {
      this(lines, hands, true);
    }
  }

  private HeldTree(
      HeldTree before, TreeRods rods, Grip grip, RodLoads loads, RodSolution solution) {
    request = before.request;
    rigging = before.rigging;
    aging = before.aging;
    this.rods = rods;
    this.grip = grip;
    this.solution = solution;
    this.loads = loads;
  }

  private HeldTree(TrialRequest request, Rigging rigging, TreeRods rods, Grip grip, Aging aging) {
    this.request = request;
    this.rigging = rigging;
    this.rods = rods;
    this.grip = grip;
    this.aging = aging;
    loads = rigging.part(grip);
    solution = RodSolver.solve(rigging.model(rods), loads, request.options());
  }

  /** A tree that was never bent before, brought into a grip; its wood creeps as most does. */
  public static HeldTree of(TrialRequest request, Grip grip) {
    return of(request, grip, Aging.MIDDLE);
  }

  /** A tree that was never bent before, brought into a grip. */
  public static HeldTree of(TrialRequest request, Grip grip, Aging aging) {
    Skeleton skeleton = new Skeleton(request.tree());
    return of(
        request,
        grip,
        aging,
        new Windings.Made(TrialWood.best(skeleton, request.species()), Windings.Wire.BEST));
  }

  /**
   * The same tree of other wood and wire.
   *
   * @param made what is taken for true of both
   */
  static HeldTree of(TrialRequest request, Grip grip, Windings.Made made) {
    return of(request, grip, Aging.MIDDLE, made);
  }

  private static HeldTree of(TrialRequest request, Grip grip, Aging aging, Windings.Made made) {
    Skeleton skeleton = new Skeleton(request.tree());
    Timber timber =
        new Timber(
            new Cutting(skeleton, request.plan().cuts()),
            made.wood(),
            AidWork.of(skeleton, request.proposals()));
    Windings windings = Windings.of(skeleton, request.proposals()).of(made.wire());
    TreeRods whole = new TreeRods(timber, request.plan().clamp(), windings);
    Rigging rigging = Rigging.of(request.plan(), whole, request.proposals());
    TreeRods rods = grip.coils() ? rigging.rods() : rigging.rods().thinned(0);
    return new HeldTree(request, rigging, rods, grip, aging);
  }

  /**
   * The tree after it stayed as it is for a time and then came into another grip.
   *
   * @param seconds how long it was held as it is [s]
   * @param next what acts afterwards
   */
  public HeldTree then(double seconds, Grip next) {
    return waited(seconds, 0).gripped(next);
  }

  /**
   * The tree after it stayed in its grip for a time. Wood creeps and new wood is laid meanwhile;
   * where the tree moves as it does, the time is walked through in steps ({@link Wait}).
   *
   * @param seconds how long [s]
   * @param ring new wood laid on all round, one side, evenly over that time [m]
   */
  public HeldTree waited(double seconds, double ring) {
    requireHolding();
    return seconds == 0 && ring == 0 ? this : new Wait(this, seconds, ring).over();
  }

  /** The tree brought into another grip at once. */
  public HeldTree gripped(Grip next) {
    requireHolding();
    if (next.equals(grip)) {
      return this;
    }
    TreeRods remembering = rods.after(solution.pose(), Spell.NONE);
    return grip.coils() && !next.coils() && rods.isCoiled()
        ? unwired(remembering, next)
        : solved(remembering, next);
  }

  /** The tree with everything taken off, once all that creeps back has crept back. */
  public HeldTree freed() {
    requireHolding();
    if (grip.coils() && rods.isCoiled()) {
      HeldTree unwired = gripped(Grip.NOTHING);
      return unwired.holds() ? unwired.freed() : unwired;
    }
    TreeRods free = rods.after(solution.pose(), Spell.NONE).freed();
    return solved(free, Grip.NOTHING, rigging.loose());
  }

  private void requireHolding() {
    if (!holds()) {
      throw new IllegalStateException("nothing comes after a pose that does not hold");
    }
  }

  /** Rods that remember this pose, in a grip. */
  HeldTree solved(TreeRods remembering, Grip next) {
    return solved(remembering, next, rigging.part(next));
  }

  private HeldTree solved(TreeRods remembering, Grip next, RodLoads acting) {
    RodSolution found =
        RodSolver.solve(
            rigging.model(remembering), new RodStart(solution, loads), acting, request.options());
    return new HeldTree(this, remembering, next, acting, found);
  }

  /** Loads come off first, then the coils bit by bit, in smaller bits where that fails. */
  private HeldTree unwired(TreeRods remembering, Grip next) {
    HeldTree first = solved(remembering, next);
    HeldTree last = first;
    for (int steps = 1; steps <= MOST_STEPS && first.holds(); steps *= 4) {
      last = first;
      for (int k = steps - 1; k >= 0 && last.holds(); k--) {
        last = last.solved(remembering.thinned((double) k / steps), next);
      }
      if (last.holds()) {
        break;
      }
    }
    return new HeldTree(last, remembering.thinned(0), next, last.loads, last.solution);
  }

  Aging aging() {
    return aging;
  }

  public boolean holds() {
    return solution.status().holds();
  }

  public Grip grip() {
    return grip;
  }

  /** Where a place on the axis of a segment has come to [m, tree frame]. */
  Point3 point(int segment, double s) {
    return reader().placeOf(segment, s);
  }

  /** Where a place on the axis has come to [m, tree frame]. */
  public Point3 point(Spot spot) {
    Skeleton skeleton = rods.timber().skeleton();
    int i = skeleton.indexOf(spot.segment());
    return point(i, spot.along() * skeleton.length(i));
  }

  /** Which way the axis runs at a place, from the segment's start to its end. */
  public Direction3 direction(Spot spot) {
    Skeleton skeleton = rods.timber().skeleton();
    int i = skeleton.indexOf(spot.segment());
    return reader().directionAt(i, spot.along() * skeleton.length(i));
  }

  /** Pull of each line by its id; less to find than {@link #result} [N]. */
  public Map<String, Double> tensions() {
    Map<String, Double> found = new TreeMap<>();
    for (int i = 0; i < rigging.loads().lines().size(); i++) {
      found.put(rigging.loads().lines().get(i).id(), solution.lines().get(i).tension());
    }
    return found;
  }

  PoseReader reader() {
    return new PoseReader(rods, solution.pose());
  }

  TreeRods rods() {
    return rods;
  }

  RodSolution solution() {
    return solution;
  }

  /** Force of a pull by hand, counted in plan order [N]. */
  public double handForce(int hand) {
    return solution.lines().get(rigging.loads().lines().size() + hand).tension();
  }

  /** What the wood does in this pose, or why there is none. */
  public TrialResult result() {
    return new Trial(request, attempt()).result();
  }

  Attempt attempt() {
    return new Attempt(rods, rigging.loads(), solution);
  }
}
