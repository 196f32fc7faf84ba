// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.PullTest;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.rod.RodLoads;
import boughwright.physics.rod.RodModel;
import boughwright.physics.rod.RodOptions;
import boughwright.physics.rod.RodPlace;
import boughwright.physics.rod.RodPose;
import boughwright.physics.rod.RodSection;
import boughwright.physics.rod.RodSolution;
import boughwright.physics.rod.RodSolver;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;

/**
 * A branch under the pull of a test: the tree as measured, its own weight left out.
 *
 * <p>Where no reading says that the start of the limb moved, the limb is held there, and nothing
 * else gives way. Where one does, the whole tree bends from its trunk base, and the movement of the
 * limb's start is taken off as it is taken off the reading: what is left holds the turning of the
 * union, which moves the point too.
 */
final class PulledBranch {
  /** A pull keeps its direction, so the pose is the lowest in energy; half a part in 1,000. */
  private static final RodOptions OPTIONS =
      new RodOptions(RodOptions.Route.DIRECT, 5e-4, 1e-3, 1e-2, 3, RodOptions.Doubt.THOROUGH);

  /** A pull that bends no branch much [N]. */
  private static final double FEATHER = 0.01;

  /** A pull that gives way by less than this part of what the softest way gives is none [1]. */
  private static final double LEAST_PART = 0.04;

  private final Skeleton skeleton;
  private final PullTest test;
  private final Direction3 direction;
  private final TreeRods rods;
  private final RodPlace point;
  private final Point3 pointAtRest;
  private final int segment;
  private final int root;

  /**
   * The tree as the readings say that it was held.
   *
   * @param skeleton the tree
   * @param test where it is pulled
   * @param wood what is taken for true of the wood
   */
  PulledBranch(Skeleton skeleton, PullTest test, TrialWood wood) {
    this(skeleton, test, wood, baseMoves(test));
  }

  /**
   * The tree held at the start of the limb, or at its trunk base.
   *
   * @param gives whether what is below the limb gives way
   */
  PulledBranch(Skeleton skeleton, PullTest test, TrialWood wood, boolean gives) {
    this.skeleton = skeleton;
    this.test = test;
    direction = test.direction();
    segment = skeleton.indexOf(test.segment());
    root = Limbs.rootOf(skeleton, segment);
    Timber timber = new Timber(new Cutting(skeleton, List.of()), wood);
    rods = new TreeRods(timber, clamp(gives));
    double s = test.along() * skeleton.length(segment);
    point = rods.isHeld(segment, s) ? null : rods.place(segment, s, Vector3.ZERO);
    pointAtRest = skeleton.point(segment, test.along());
  }

  static boolean baseMoves(PullTest test) {
    return test.readings().stream().anyMatch(reading -> reading.baseMoved() != 0);
  }

  private Optional<Spot> clamp(boolean gives) {
    return gives ? Optional.empty() : Optional.of(new Spot(skeleton.segment(root).id(), 0));
  }

  /** True if the point is part of what is held, so that no pull moves it. */
  boolean isHeld() {
    return point == null;
  }

  /** Why no pull there can tell anything, in words; empty if it can. */
  Optional<String> whyNot() {
    if (isHeld()) {
      return Optional.of("that place is inside the wood its branch grows from, and cannot bend");
    }
    double gives = 0;
    for (Direction3 way : List.of(Direction3.of(1, 0, 0), Direction3.of(0, 1, 0), Direction3.UP)) {
      gives += under(way, FEATHER).movedInAll(way);
    }
    return under(FEATHER).movedInAll(direction) > LEAST_PART * gives
        ? farther()
        : Optional.of("that pull goes along the branch, which hardly bends it");
  }

  /** Whether the point is said to have moved farther than the branch up to it is long. */
  private Optional<String> farther() {
    double most =
        test.readings().stream()
            .mapToDouble(read -> read.moved() - read.baseMoved())
            .max()
            .orElseThrow();
    double length = -(1 - test.along()) * skeleton.length(segment);
    for (int i = segment; ; i = skeleton.parent(i)) {
      length += skeleton.length(i);
      if (i == root) {
        break;
      }
    }
    return most < length
        ? Optional.empty()
        : Optional.of(
            String.format(
                Locale.ROOT,
                "the point is said to have moved %.0f mm, and the branch up to it is %.0f mm long",
                1000 * most,
                1000 * length));
  }

  /**
   * What a pull does.
   *
   * @param force the pull [N]
   */
  Pulled under(double force) {
    return under(direction, force);
  }

  private Pulled under(Direction3 way, double force) {
    RodModel model = new RodModel(rods.base(), Rotation.NONE, rods.spans(), RodLoads.NONE);
    RodLoads loads = RodLoads.ofForces(new RodLoads.DeadForce(point, way.vector().times(force)));
    return new Pulled(RodSolver.solve(model, loads, OPTIONS));
  }

  /** A pose under a pull. */
  final class Pulled {
    private final RodSolution solution;

    private Pulled(RodSolution solution) {
      this.solution = solution;
    }

    boolean holds() {
      return solution.status().holds();
    }

    /** How far the point moved along the pull against the start of its limb [m]. */
    double moved() {
      Vector3 moved = fromRest();
      if (!rods.isHeld(root, 0)) {
        Vector3 base = at(rods.place(root, 0, Vector3.ZERO)).minus(skeleton.start(root));
        moved = moved.minus(base);
      }
      return moved.dot(direction.vector());
    }

    /** How far the point moved along the pull, whatever moved it [m]. */
    double movedInAll() {
      return movedInAll(direction);
    }

    private double movedInAll(Direction3 way) {
      return fromRest().dot(way.vector());
    }

    private Vector3 fromRest() {
      return at(point).minus(pointAtRest);
    }

    private Point3 at(RodPlace place) {
      RodSection section = solution.pose().section(place.span(), place.s());
      return section.position().plus(section.frame().turn(place.arm()));
    }

    /** Indices of the segments that the pull bends. */
    TreeSet<Integer> bent() {
      RodPose pose = solution.pose();
      TreeSet<Integer> bent = new TreeSet<>();
      for (int span = 0; span < rods.spans().size(); span++) {
        if (pose.loadedTo(span) > 0) {
          bent.add(rods.run(span).piece().segment());
        }
      }
      return bent;
    }

    /** The place bent hardest. */
    Optional<Peak> peak() {
      return new PeakSearch(rods, solution.pose()).find(0);
    }
  }
}
