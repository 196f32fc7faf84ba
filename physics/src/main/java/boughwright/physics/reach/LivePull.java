// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.Hold;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Proposal;
import boughwright.physics.rod.RodOptions;
import boughwright.physics.trial.RiskGuess;
import boughwright.physics.trial.TreeStand;
import boughwright.physics.trial.TrialResult;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * A line that follows a hand: set up once when a place is grabbed, then asked for each place the
 * hand comes to. docs/theory/reach.md tells how.
 *
 * <p>Keeps a workspace: {@link #to}, {@link #settled} and {@link #fix} belong to one thread; {@link
 * #weigh} may be called from another meanwhile. What it was set up with is immutable.
 */
public final class LivePull {
  /** Anchors that are tried at least before the first answer. */
  private static final int FIRST = 2;

  /** Lines whose pose is looked at in full for one target, where the best have a fault. */
  private static final int LOOKED_AT = 3;

  /** Another line takes over where it does better by this and this part [m], [1] (a choice). */
  private static final double STICKS = 0.001;

  private static final double STICKS_PART = 0.15;

  /** Shortenings are told in tenths of a millimetre [1/m]. */
  private static final double PER_METRE = 10_000;

  private final Pull pull;
  private final Optional<Unreachable> refused;
  private final Optional<Weighing> weighing;
  private final Optional<LiveHand> hand;
  private Optional<AnchorPlace> fixed = Optional.empty();
  private Aim aim;
  private DrawnIn current;
  private Pulled last;

  private LivePull(Pull pull, Optional<Unreachable> refused) {
    this.pull = pull;
    this.refused = refused;
    if (refused.isPresent()) {
      weighing = Optional.empty();
      hand = Optional.empty();
      return;
    }
    Weighing all = new Weighing(pull);
    weighing = Optional.of(all);
    hand = Optional.of(new LiveHand(pull, all.grabbed(), all.limb()));
    aim = new Aim.At(pull.free());
    last = alone(pull.free());
    pull.grab().line().ifPresent(line -> current = all.of(Pull.placeOf(pull.stand(), line)));
  }

  /**
   * Takes hold of a place.
   *
   * @throws IllegalArgumentException if the place is on no segment, or is cut away
   */
  public static LivePull of(Grab grab) {
    TreeStand stand = new TreeStand(grab.tree(), grab.plan(), grab.species(), Reach.SEARCHING);
    if (!stand.cutting().holds(grab.spot())) {
      throw new IllegalArgumentException("the place is cut away: " + grab.spot());
    }
    if (!stand.with(grab.kept()).holds()) {
      return new LivePull(
          new Pull(grab, stand),
          Optional.of(
              new Unreachable(
                  "kept-fails",
                  "the other proposals of the plan hold no pose by themselves",
                  "Ease or delete one of them first")));
    }
    return new LivePull(new Pull(grab, stand), Hopeless.held(stand, grab.spot()));
  }

  /** Why this place cannot be pulled at all, where it cannot. */
  public Optional<Unreachable> refused() {
    return refused;
  }

  /** Where the place is with nothing but what is kept [m, tree frame]. */
  public Point3 free() {
    return pull.free();
  }

  /** Everything there is to tie to that a line from the place may reach, the nearest first. */
  public List<AnchorPlace> anchors() {
    return weighing.map(Weighing::anchors).orElse(List.of());
  }

  /** A free hand at the same place, with a workspace of its own. */
  public LiveHand hand() {
    return hand.orElseThrow(() -> new IllegalStateException(refused.orElseThrow().found()));
  }

  /**
   * Ties the line to one anchor whatever the hand does; empty for the one that does best.
   *
   * @param anchor any place that does not move, or one of {@link #anchors}
   */
  public void fix(Optional<AnchorPlace> anchor) {
    fixed = anchor;
    if (anchor.isPresent() && weighing.isPresent()) {
      current = weighing.get().of(anchor.get());
    }
  }

  /** The line that brings the place nearest to a point; of a place that can be pulled. */
  public Pulled to(Point3 target) {
    return to(new Aim.At(target));
  }

  /**
   * The line that brings the place nearest to where a hand wants it, and of those that come about
   * as near one that pulls little, bends little and holds; of a place that can be pulled. What is
   * told has as its target the place of the aim that is nearest to where the grabbed place comes.
   */
  public Pulled to(Aim target) {
    Objects.requireNonNull(target, "target");
    if (refused.isPresent()) {
      throw new IllegalStateException(refused.get().found());
    }
    aim = target;
    weighing.get().aim(target, fixed);
    Optional<Best> best = best(target);
    if (best.isEmpty()) {
      last = last.staying(target.nearest(last.comesTo()), noLine());
      return last;
    }
    current = best.get().line;
    last = told(target, best.get());
    return last;
  }

  /**
   * Weighs one more line for the last target, so that the next answer may take it; for the time
   * between two targets.
   *
   * @return false where all are weighed
   */
  public boolean weigh() {
    return weighing.isPresent() && weighing.get().weigh();
  }

  /** Whether a line that was weighed meanwhile would take over from the one that was told. */
  public boolean wouldChange() {
    if (weighing.isEmpty()) {
      return false;
    }
    List<Weighing.Scored> ranked = sorted(weighing.get().ranked(aim));
    return !ranked.isEmpty() && (last.line().isEmpty() || ranked.get(0).line() != current);
  }

  private record Best(DrawnIn line, DrawnIn.Nearest nearest, boolean blocked) {}

  private List<Weighing.Scored> sorted(List<Weighing.Scored> ranked) {
    List<Weighing.Scored> all = new ArrayList<>(ranked);
    all.sort(
        Comparator.comparingDouble(
            one ->
                one.line() == current
                    ? one.near() * (1 - STICKS_PART) - STICKS + one.breaks()
                    : one.score()));
    return all;
  }

  private Optional<Best> best(Aim target) {
    Weighing all = weighing.get();
    all.start(target, FIRST, Optional.ofNullable(current));
    Optional<Best> faulty = Optional.empty();
    int looked = 0;
    for (Weighing.Scored one : sorted(all.ranked(target))) {
      if (looked++ >= LOOKED_AT) {
        break;
      }
      Optional<DrawnIn.Nearest> found = one.line().nearest(target);
      if (found.isEmpty()) {
        continue;
      }
      boolean blocked = all.isBlocked(found.get());
      Best best = new Best(one.line(), found.get(), blocked);
      if (!blocked && all.angle(found.get()) >= LineLimits.LEAST_ANGLE) {
        return Optional.of(best);
      }
      faulty = faulty.isPresent() ? faulty : Optional.of(best);
    }
    return faulty;
  }

  private Pulled told(Aim target, Best best) {
    DrawnIn.Nearest nearest = best.nearest;
    Told told = new Told(target, nearest.tie(), nearest.stood(), best.blocked);
    Hold hold = new Hold.Shortening(nearest.tie().shortening());
    return told(told, pull.line(nearest.tie().place(), nearest.tie().anchor(), hold));
  }

  /** A pose and what it is the pose of. */
  private record Told(Aim target, Tie tie, TreeStand.Stood stood, boolean blocked) {}

  private Pulled told(Told of, GuyLine line) {
    Proposal proposal = pull.proposal(line);
    TrialResult trial = of.stood.result();
    Point3 at = of.stood.point(pull.grab().spot());
    double angle = weighing.get().angle(new DrawnIn.Nearest(of.tie, of.stood, of.target.miss(at)));
    return new Pulled(
        of.target.nearest(at),
        at,
        of.target.miss(at),
        Optional.of(new Pulled.Line(of.tie, trial.lines().get(pull.index()), angle, of.blocked)),
        Optional.of(proposal),
        pull.plan(proposal),
        trial,
        of.stood.risk(),
        weighing.get().others(of.target),
        Optional.empty(),
        false,
        Optional.empty());
  }

  private Pulled alone(Point3 target) {
    TreeStand.Stood stood = pull.stand().with(pull.grab().kept());
    Plan plan = pull.grab().plan().withProposals(pull.grab().kept());
    RiskGuess risk = stood.risk();
    return new Pulled(
        target,
        pull.free(),
        pull.free().distance(target),
        Optional.empty(),
        Optional.empty(),
        plan,
        stood.result(),
        risk,
        List.of(),
        Optional.empty(),
        false,
        Optional.empty());
  }

  /**
   * What was told last, with the anchor that is missing, if one would bring the place much nearer;
   * for when the hand rests and all lines are weighed.
   */
  public Pulled rested() {
    double worth = weighing.orElseThrow().worth(aim);
    if (last.miss() > worth) {
      hand.orElseThrow().to(aim);
      Handed handed = hand.orElseThrow().rested();
      boolean helps =
          !handed.stays() && handed.miss() < last.miss() - worth && handed.force().norm() > 0;
      if (helps) {
        Point3 at = handed.comesTo().plus(handed.force().direction().times(Reach.SUGGESTED_AT));
        last = last.missing(new Reached.MissingAnchor(weighing.get().grabbed(), at, handed.miss()));
      }
    }
    return last;
  }

  private Unreachable noLine() {
    if (anchors().isEmpty() && fixed.isEmpty()) {
      return new Unreachable(
          "no-anchor",
          "there is nothing a line could be tied to",
          "Add a screw, a peg or a container, or switch to wire");
    }
    return new Unreachable(
        "no-line",
        String.format(
            Locale.ROOT, "no line from %s brings it that way", pull.grab().spot().segment()),
        "Pull another way, tie to another anchor, or switch to wire");
  }

  /**
   * The line of the last target as it is told and kept: drawn in by a whole tenth of a millimetre,
   * solved with the usual accuracy. A trial of its plan gives the same. Empty where no line was
   * found, or the usual accuracy finds no pose after all.
   */
  public Optional<Pulled> settled() {
    if (last == null || last.line().isEmpty()) {
      return Optional.empty();
    }
    Tie tie = last.line().get().tie();
    double by = Math.max(5, Math.rint(tie.shortening() * PER_METRE)) / PER_METRE;
    return held(tie, new Hold.Shortening(by));
  }

  /**
   * The line of the last target, or the one that was grabbed, held as a person typed; solved with
   * the usual accuracy. Empty where nothing holds so.
   */
  public Optional<Pulled> held(Hold hold) {
    Optional<Pulled> found = tie().flatMap(tie -> held(tie, hold));
    found.ifPresent(one -> last = one);
    return found;
  }

  private Optional<Tie> tie() {
    return last == null
        ? Optional.empty()
        : last.line()
            .map(Pulled.Line::tie)
            .or(
                () ->
                    Optional.ofNullable(current)
                        .map(
                            line ->
                                new Tie(line.place(), line.anchor(), LineLimits.LEAST_SHORTENING)));
  }

  private Optional<Pulled> held(Tie tie, Hold hold) {
    Pull exact = pull.with(RodOptions.DEFAULT);
    GuyLine line = pull.line(tie.place(), tie.anchor(), hold);
    TreeStand.Stood stood = exact.tied(line);
    if (!stood.holds()) {
      return Optional.empty();
    }
    double by = stood.result().lines().get(pull.index()).shortening();
    Tie drawn = tie.by(Math.max(LineLimits.LEAST_SHORTENING, by));
    boolean blocked = weighing.get().isBlocked(new DrawnIn.Nearest(drawn, stood, last.miss()));
    Pulled told = told(new Told(aim, drawn, stood, blocked), line);
    return Optional.of(last.missing().map(told::missing).orElse(told));
  }
}
