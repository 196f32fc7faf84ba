// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.plan.Cutting;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.rod.RodLoads;
import boughwright.physics.rod.RodSolution;
import boughwright.physics.rod.RodSolver;
import boughwright.physics.rod.RodStart;

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
      TrialRequest request, Rigging rigging, TreeRods rods, Grip grip, RodSolution solution) {
    this.request = request;
    this.rigging = rigging;
    this.rods = rods;
    this.grip = grip;
    this.solution = solution;
    loads = rigging.part(grip.lines());
  }

  /** A tree that was never bent before, brought into a grip. */
  public static HeldTree of(TrialRequest request, Grip grip) {
    Skeleton skeleton = new Skeleton(request.tree());
    Timber timber =
        new Timber(
            new Cutting(skeleton, request.plan().cuts()),
            TrialWood.best(skeleton, request.species()),
            AidWork.of(skeleton, request.proposals()));
    Rigging rigging =
        Rigging.of(
            request.plan(), new TreeRods(timber, request.plan().clamp()), request.proposals());
    TreeRods rods = rigging.rods();
    RodSolution solution =
        RodSolver.solve(rigging.model(rods), rigging.part(grip.lines()), request.options());
    return new HeldTree(request, rigging, rods, grip, solution);
  }

  /**
   * The tree after it stayed as it is for a time and then came into another grip.
   *
   * @param seconds how long it was held as it is [s]
   * @param next what acts afterwards
   */
  public HeldTree then(double seconds, Grip next) {
    if (!holds()) {
      throw new IllegalStateException("nothing comes after a pose that does not hold");
    }
    TreeRods remembering = rods.after(solution.pose(), seconds);
    RodSolution found =
        RodSolver.solve(
            rigging.model(remembering),
            new RodStart(solution, loads),
            rigging.part(next.lines()),
            request.options());
    return new HeldTree(request, rigging, remembering, next, found);
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
