// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.HandBend;
import boughwright.modeller.plan.Material;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Proposal;
import boughwright.physics.rod.RodOptions;
import boughwright.physics.trial.TreeStand;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * A place follows a free hand: the force that brings it there is found anew for each target, from
 * that of the last. Keeps a workspace, so only one thread may ask at a time; what it was set up
 * with is immutable.
 */
public final class LiveHand {
  /**
   * Weight of the force beside what is missing [1]: a pull along the branch does next to nothing
   * and would grow without end.
   */
  private static final double FORCE_WEIGHT = 0.03;

  /** Slopes are taken over this part of the scale of the force [1]. */
  private static final double STEP = 0.02;

  /** No force is looked at that is more than this many times its scale [1]. */
  private static final double MOST = 60;

  /** What a small movement is, as a part of the limb [1]. */
  private static final double SMALL = 0.05;

  /** While the hand moves: as much as fits between two pictures. */
  private static final Fit.Effort LIVE = new Fit.Effort(2, 4, 2e-5);

  /** Once it rests: to some hundredths of a millimetre. */
  private static final Fit.Effort AT_REST = new Fit.Effort(12, 24, 1e-5);

  /** Where more than this part of the way is left, it is looked from rest as well [1]. */
  private static final double LEFT = 0.1;

  /** Trials with corrected slopes before it is looked closely. */
  private static final int TRIALS = 5;

  /** A step that moves the place by less is none [m]. */
  private static final double SETTLED = 2e-5;

  /** A hand that moves a place by less does nothing [m]. */
  private static final double NOTHING = 1e-4;

  private final Pull pull;
  private final TiePlace place;
  private final double scale;
  private final double small;
  private double[] force = new double[3];
  private RealMatrix slopes;
  private Handed last;

  LiveHand(Pull pull, TiePlace place, double limb) {
    this.pull = pull;
    this.place = place;
    small = SMALL * limb;
    scale = small / place.compliance();
  }

  /**
   * Takes hold.
   *
   * @throws IllegalArgumentException if the place is on no segment, is cut away or cannot move
   */
  public static LiveHand of(Grab grab) {
    LivePull lines = LivePull.of(grab);
    if (lines.refused().isPresent()) {
      throw new IllegalArgumentException(lines.refused().get().found());
    }
    return lines.hand();
  }

  /** The place brought toward a target, as near as a few trials come; the next go on from there. */
  public Handed to(Point3 target) {
    Objects.requireNonNull(target, "target");
    Optional<double[]> found = followed(target);
    if (found.isEmpty()) {
      slopes = null;
      found = sought(target, force, LIVE);
    }
    return took(target, found);
  }

  /** The place brought to the last target, as near as a hand can, with all the time it takes. */
  public Handed rested() {
    Point3 target = last == null ? pull.free() : last.target();
    Optional<double[]> warm = sought(target, force, AT_REST);
    double left = warm.map(x -> left(target, x)).orElse(Double.POSITIVE_INFINITY);
    boolean far = left > LEFT * pull.free().distance(target);
    Optional<double[]> found =
        far
            ? sought(target, new double[3], AT_REST)
                .filter(x -> left(target, x) < left)
                .or(() -> warm)
            : warm;
    slopes = null;
    return took(target, found);
  }

  private Handed took(Point3 target, Optional<double[]> found) {
    if (found.isPresent()) {
      TreeStand.Stood stood = pulled(pull, found.get());
      if (stood.holds()) {
        force = found.get();
        last = handed(target, stood);
        return last;
      }
    }
    if (last == null) {
      last = handed(pull.free(), pulled(pull, new double[3]));
    }
    last = last.staying(target);
    return last;
  }

  /**
   * From the last force with the slopes there were, corrected at each trial (C. G. Broyden,
   * Mathematics of Computation 19, 1965); empty where that does not settle soon.
   */
  private Optional<double[]> followed(Point3 target) {
    double[] x = force.clone();
    Optional<double[]> here = missing(target, x);
    if (here.isEmpty()) {
      return Optional.empty();
    }
    if (slopes == null) {
      slopes =
          Wish.matrix(Fit.slopes(y -> missing(target, y), box(), x, here.get()))
              .getSubMatrix(0, 2, 0, 2);
    }
    double longest = Double.POSITIVE_INFINITY;
    for (int n = 0; n < TRIALS; n++) {
      double[] step = step(here.get(), x);
      double moves = Fit.norm(slopes.operate(step));
      if (moves < SETTLED) {
        return Optional.of(x);
      }
      if (moves > longest) {
        return Optional.empty();
      }
      longest = moves;
      double[] next = new double[3];
      for (int k = 0; k < 3; k++) {
        next[k] = x[k] + step[k];
      }
      Optional<double[]> there = missing(target, next);
      if (there.isEmpty()) {
        return Optional.empty();
      }
      learn(step, here.get(), there.get());
      x = next;
      here = there;
    }
    return Optional.empty();
  }

  /** The step to the least of what is missing and the weighted force, by the slopes there are. */
  private double[] step(double[] missing, double[] x) {
    double weight = FORCE_WEIGHT * small / scale;
    RealMatrix normal = slopes.transpose().multiply(slopes);
    double[] rhs = slopes.preMultiply(Arrays.copyOf(missing, 3));
    for (int k = 0; k < 3; k++) {
      normal.addToEntry(k, k, weight * weight);
      rhs[k] = -rhs[k] - weight * weight * x[k];
    }
    return new LUDecomposition(normal).getSolver().solve(new ArrayRealVector(rhs)).toArray();
  }

  private void learn(double[] step, double[] before, double[] after) {
    double square = Fit.norm(step) * Fit.norm(step);
    double[] foretold = slopes.operate(step);
    for (int i = 0; i < 3; i++) {
      for (int k = 0; k < 3; k++) {
        double wrong = after[i] - before[i] - foretold[i];
        slopes.addToEntry(i, k, wrong * step[k] / square);
      }
    }
  }

  private double left(Point3 target, double[] x) {
    return missing(target, x).map(Fit::norm).orElse(Double.POSITIVE_INFINITY);
  }

  private Fit.Box box() {
    double[] high = new double[3];
    double[] low = new double[3];
    double[] step = new double[3];
    Arrays.fill(high, MOST * scale);
    Arrays.fill(low, -MOST * scale);
    Arrays.fill(step, STEP * scale);
    return new Fit.Box(low, high, step);
  }

  private Optional<double[]> sought(Point3 target, double[] from, Fit.Effort effort) {
    if (!pulled(pull, from).holds()) {
      return Optional.empty();
    }
    return Optional.of(Fit.of(x -> missing(target, x), box(), effort, from));
  }

  private Optional<double[]> missing(Point3 target, double[] x) {
    TreeStand.Stood stood = pulled(pull, x);
    if (!stood.holds()) {
      return Optional.empty();
    }
    Vector3 off = stood.point(pull.grab().spot()).minus(target);
    double weight = FORCE_WEIGHT * small / scale;
    return Optional.of(
        new double[] {off.x(), off.y(), off.z(), weight * x[0], weight * x[1], weight * x[2]});
  }

  private TreeStand.Stood pulled(Pull with, double[] x) {
    return with.stand().pulled(with.grab().kept(), place.spot(), new Vector3(x[0], x[1], x[2]));
  }

  private Handed handed(Point3 target, TreeStand.Stood stood) {
    Point3 at = stood.point(pull.grab().spot());
    Vector3 by = new Vector3(force[0], force[1], force[2]);
    Optional<Proposal> proposal = proposal(at, by);
    Plan plan =
        proposal.map(pull::plan).orElse(pull.grab().plan().withProposals(pull.grab().kept()));
    return new Handed(
        target, at, at.distance(target), by, proposal, plan, stood.result(), stood.risk(), false);
  }

  /** A hand whose force keeps its direction and whose place comes so far along it. */
  private Optional<Proposal> proposal(Point3 at, Vector3 by) {
    if (!(by.norm() > 0)) {
      return Optional.empty();
    }
    double move = at.minus(pull.free()).dot(by.direction().vector());
    if (!(move > NOTHING)) {
      return Optional.empty();
    }
    HandBend hand = new HandBend(pull.handId(), place.spot(), by.direction(), move, Map.of());
    return Optional.of(
        new Proposal(
                pull.proposalId(),
                Optional.of(place.spot().segment()),
                List.of(),
                List.of(),
                List.of(),
                Map.of())
            .withHandBends(List.of(hand)));
  }

  /**
   * The pull by hand of the last target, solved with the usual accuracy: what a trial of its plan
   * gives. Empty before the first target, or where it holds no pose so.
   */
  public Optional<Handed> settled() {
    if (last == null || rested().proposal().isEmpty()) {
      return Optional.empty();
    }
    TreeStand.Stood stood =
        pull.stand().with(RodOptions.DEFAULT).with(pull.with(last.proposal().get()));
    if (!stood.holds()) {
      return Optional.empty();
    }
    Point3 at = stood.point(pull.grab().spot());
    return Optional.of(
        new Handed(
            last.target(),
            at,
            at.distance(last.target()),
            last.force(),
            last.proposal(),
            last.plan(),
            stood.result(),
            stood.risk(),
            last.stays()));
  }

  /**
   * Coils that would hold a place near a target once the hand has let go, the nearest first; long
   * work, asked from any thread.
   *
   * @param target where the place is wanted
   * @param metals metals in which wire is sold, at least one
   * @param mostRisk most that breaking may risk while it is bent [1]
   * @return empty where no wire holds it nearer than it is
   */
  public static List<Choice> coils(
      Grab grab, Point3 target, Set<Material> metals, double mostRisk) {
    Objects.requireNonNull(target, "target");
    ReachRequest request =
        new ReachRequest(
            grab.tree(),
            grab.plan().withProposals(grab.kept()),
            grab.kept(),
            grab.species(),
            new Target.Point(grab.spot(), target),
            new ReachRequest.Wishes(grab.anchors(), mostRisk, 1, metals));
    TreeStand stand =
        new TreeStand(request.tree(), request.plan(), request.species(), Reach.SEARCHING);
    Probe probe = new Probe(stand, request.target(), request.kept());
    LimbPath path = new LimbPath(stand, grab.spot());
    Optional<Tried> start = probe.alone();
    if (start.isEmpty()) {
      return List.of();
    }
    WishFinder finder = new WishFinder(probe, start.get());
    List<Wish> wishes =
        path.places().parallelStream().map(finder::at).flatMap(Optional::stream).toList();
    List<Candidate> found =
        new ArrayList<>(
            new CoilSearch(request, probe, path, start.get()).candidates(wishes, List.of()));
    found.sort(Comparator.comparingDouble(Candidate::miss));
    Teller teller = new Teller(request, probe);
    return found.stream().flatMap(one -> teller.told(one, Choice.Why.COIL).stream()).toList();
  }
}
