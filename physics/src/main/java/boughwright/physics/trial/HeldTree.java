// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.plan.Cutting;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.rod.RodLoads;
import boughwright.physics.rod.RodSolution;
import boughwright.physics.rod.RodSolver;
import boughwright.physics.rod.RodStart;
import boughwright.physics.wood.Spell;

/**
 * A tree in the course of being bent, held and let go: each step starts from the pose before, and
 * from what its sections remember. Not changed once made; each step makes another.
 *
 * <p>Within a step all fibres are taken to go one way.
 */
public final class HeldTree {
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
   */
  public record Grip(double lines, double hands) {
    /** Everything acts. */
    public static final Grip ALL = new Grip(1, 1);

    /** The hands are off. */
    public static final Grip HELD = new Grip(1, 0);

    /** Nothing acts. */
    public static final Grip NOTHING = new Grip(0, 0);

    public Grip {
      if (!(lines >= 0 && hands >= 0) || Double.isInfinite(lines + hands)) {
        throw new IllegalArgumentException("parts are 0 or more, not " + lines + ", " + hands);
      }
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

  private HeldTree(TrialRequest request, Rigging rigging, Grip grip, Aging aging) {
    this.request = request;
    this.rigging = rigging;
    this.grip = grip;
    this.aging = aging;
    rods = rigging.rods();
    loads = rigging.part(grip.lines());
    solution = RodSolver.solve(rigging.model(rods), loads, request.options());
  }

  /** A tree that was never bent before, brought into a grip; its wood creeps as most does. */
  public static HeldTree of(TrialRequest request, Grip grip) {
    return of(request, grip, Aging.MIDDLE);
  }

  /** A tree that was never bent before, brought into a grip. */
  public static HeldTree of(TrialRequest request, Grip grip, Aging aging) {
    Skeleton skeleton = new Skeleton(request.tree());
    Timber timber =
        new Timber(
            new Cutting(skeleton, request.plan().cuts()),
            TrialWood.best(skeleton, request.species()));
    Rigging rigging =
        Rigging.of(
            request.plan(), new TreeRods(timber, request.plan().clamp()), request.proposals());
    return new HeldTree(request, rigging, grip, aging);
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
    return next.equals(grip) ? this : solved(rods.after(solution.pose(), Spell.NONE), next);
  }

  /** The tree with everything taken off, once all that creeps back has crept back. */
  public HeldTree freed() {
    requireHolding();
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
    return solved(remembering, next, rigging.part(next.lines()));
  }

  private HeldTree solved(TreeRods remembering, Grip next, RodLoads acting) {
    RodSolution found =
        RodSolver.solve(
            rigging.model(remembering), new RodStart(solution, loads), acting, request.options());
    return new HeldTree(this, remembering, next, acting, found);
  }

  TreeRods rods() {
    return rods;
  }

  RodSolution solution() {
    return solution;
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

  /** What the wood does in this pose, or why there is none. */
  public TrialResult result() {
    return new Trial(request, new Attempt(rods, rigging.loads(), solution)).result();
  }
}
