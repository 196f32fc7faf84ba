// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.HandBend;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Proposal;
import boughwright.physics.rod.RodOptions;
import boughwright.physics.trial.TreeStand;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * A place follows a free hand: the force that brings it there is found anew for each target, from
 * that of the last. Keeps a workspace, so only one thread may ask at a time; what it was set up
 * with is immutable.
 */
public final class LiveHand {
  /**
   * Weight of the force beside what is missing [1]: a pull along the branch does next to nothing
   * and would grow without end; and of the places on a line of sight it is the one that needs
   * least.
   */
  private static final double FORCE_WEIGHT = 0.03;

  /** Slopes are taken over this part of the scale of the force [1]. */
  private static final double STEP = 0.02;

  /** No force is looked at that is more than this many times its scale [1]. */
  private static final double MOST = 60;

  /** What a small movement is, as a part of the limb [1]. */
  private static final double SMALL = 0.05;

  /** Where the slopes lead nowhere, such as beside a pose that gives way. */
  private static final Fit.Effort LIVE = new Fit.Effort(2, 4, 2e-5);

  /** Once it rests: to some hundredths of a millimetre. */
  private static final Fit.Effort AT_REST = new Fit.Effort(12, 24, 1e-5);

  /** Where more than this is left, it is looked from rest as well [m]. */
  private static final double LEFT = 3e-4;

  /** A hand that moves a place by less does nothing [m]. */
  private static final double NOTHING = 1e-4;

  private final Pull pull;
  private final TiePlace place;
  private final TreeStand.Gripped gripped;
  private final double scale;
  private final double weight;
  private HandStep.Trial here;
  private Optional<HandStep> steps = Optional.empty();
  private Aim aim;
  private Handed last;

  LiveHand(Pull pull, TiePlace place, double limb) {
    this.pull = pull;
    this.place = place;
    gripped = pull.stand().gripped(pull.grab().kept(), place.spot());
    scale = SMALL * limb / place.compliance();
    weight = FORCE_WEIGHT * place.compliance();
    aim = new Aim.At(pull.free());
    here = trial(new double[3]).orElseThrow(() -> new IllegalArgumentException("it holds no pose"));
    last = handed(here);
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

  /** The place brought toward a point, as near as a few trials come; the next go on from there. */
  public Handed to(Point3 target) {
    return to(new Aim.At(target));
  }

  /**
   * The place brought toward where the hand wants it, by the least force that does; as near as a
   * few trials come, the next go on from there. What is told has as its target the place of the aim
   * that is nearest to where the grabbed place comes.
   */
  public Handed to(Aim target) {
    aim = Objects.requireNonNull(target, "target");
    Optional<HandStep.Trial> found = steps().followed(target, here);
    if (found.isEmpty()) {
      steps = Optional.empty();
      found = steps().followed(target, here).or(() -> sought(here, LIVE));
    }
    return took(found);
  }

  private HandStep steps() {
    if (steps.isEmpty()) {
      double[][] slopes = Fit.slopes(this::place, box(), here.force(), xyz(here.at()));
      steps = Optional.of(new HandStep(slopes, weight, this::trial));
    }
    return steps.get();
  }

  /** The place brought to the last target, as near as a hand can, with all the time it takes. */
  public Handed rested() {
    Optional<HandStep.Trial> warm = sought(here, AT_REST);
    double left = warm.map(this::left).orElse(Double.POSITIVE_INFINITY);
    Optional<HandStep.Trial> found = warm;
    if (warm.isEmpty() || aim.miss(warm.get().at()) > LEFT) {
      found =
          trial(new double[3])
              .flatMap(rest -> sought(rest, AT_REST))
              .filter(cold -> left(cold) < left)
              .or(() -> warm);
    }
    steps = Optional.empty();
    return took(found);
  }

  private Handed took(Optional<HandStep.Trial> found) {
    if (found.isPresent()) {
      here = found.get();
      last = handed(here);
    } else {
      last = last.staying(aim.nearest(last.comesTo()));
    }
    return last;
  }

  private double left(HandStep.Trial trial) {
    return Fit.norm(missing(trial));
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

  private Optional<HandStep.Trial> sought(HandStep.Trial from, Fit.Effort effort) {
    return trial(Fit.of(x -> trial(x).map(this::missing), box(), effort, from.force()));
  }

  private double[] missing(HandStep.Trial trial) {
    Vector3 off = aim.way(trial.at());
    double[] x = trial.force();
    return new double[] {-off.x(), -off.y(), -off.z(), weight * x[0], weight * x[1], weight * x[2]};
  }

  private Optional<double[]> place(double[] x) {
    return trial(x).map(trial -> xyz(trial.at()));
  }

  private static double[] xyz(Point3 at) {
    return new double[] {at.x(), at.y(), at.z()};
  }

  private Optional<HandStep.Trial> trial(double[] x) {
    TreeStand.Stood stood = gripped.pulled(new Vector3(x[0], x[1], x[2]));
    return stood.holds()
        ? Optional.of(new HandStep.Trial(x.clone(), stood, stood.point(pull.grab().spot())))
        : Optional.empty();
  }

  private Handed handed(HandStep.Trial trial) {
    double[] x = trial.force();
    Vector3 by = new Vector3(x[0], x[1], x[2]);
    Optional<Proposal> proposal = proposal(trial.at(), by);
    Plan plan =
        proposal.map(pull::plan).orElse(pull.grab().plan().withProposals(pull.grab().kept()));
    return new Handed(
        aim.nearest(trial.at()),
        trial.at(),
        aim.miss(trial.at()),
        by,
        proposal,
        plan,
        trial.stood().result(),
        trial.stood().risk(),
        false);
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
   * gives. Empty where the hand hardly moves it, or where it holds no pose so.
   */
  public Optional<Handed> settled() {
    if (rested().proposal().isEmpty()) {
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
            aim.nearest(at),
            at,
            aim.miss(at),
            last.force(),
            last.proposal(),
            last.plan(),
            stood.result(),
            stood.risk(),
            last.stays()));
  }
}
