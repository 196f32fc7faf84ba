// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Hold;
import boughwright.physics.trial.RiskGuess;
import boughwright.physics.trial.TreeStand;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The way a grabbed place takes while one line is drawn in further and further: places on a grid
 * that depends on the line alone, so that what is found on it does not depend on where a hand went
 * before. Grows when asked; may be asked from any thread.
 */
final class DrawnIn {
  /** The grid is such that the place moves about this part of the limb from one to the next [1]. */
  private static final double MOVES = 0.05;

  /** First shortening, as a part of the limb [1]. */
  private static final double FIRST = 0.01;

  /** A step grows or shrinks by no more than this at once [1]. */
  private static final double CHANGE = 2;

  /** No line is drawn in by more than this part of its length [1]. */
  private static final double MOST_PART = 0.95;

  /** How often a step beyond which nothing holds is halved, to come near to where that begins. */
  private static final int HALVINGS = 5;

  /** Grid places at most. */
  private static final int MOST = 200;

  /** Shortenings nearer to each other than this are the same [m]. */
  private static final double SAME = 2e-5;

  private static final int MOST_TRIALS = 6;

  private final Pull pull;
  private final TiePlace place;
  private final AnchorPlace anchor;
  private final double limb;
  private final double most;
  private final List<Sample> samples = new ArrayList<>();
  private double step;
  private boolean ended;

  /**
   * One place of the grid.
   *
   * @param by shortening [m]
   * @param at where the grabbed place is [m, tree frame]
   * @param risk what it risks, guessed
   * @param pull of the line [N]
   */
  record Sample(double by, Point3 at, RiskGuess risk, double pull) {}

  /**
   * The pose in which the grabbed place is nearest to a target.
   *
   * @param tie the line, drawn in
   * @param stood what came of it
   * @param miss how far the place stays off [m]
   */
  record Nearest(Tie tie, TreeStand.Stood stood, double miss) {}

  /**
   * A line not yet drawn in.
   *
   * @param limb length of the wood that is bent [m]
   */
  DrawnIn(Pull pull, TiePlace place, AnchorPlace anchor, double limb) {
    this.pull = pull;
    this.place = place;
    this.anchor = anchor;
    this.limb = limb;
    most = MOST_PART * pull.restLength(place.spot(), anchor);
    step = Math.min(most, FIRST * limb);
    samples.add(new Sample(0, pull.free(), RiskGuess.NONE, 0));
  }

  TiePlace place() {
    return place;
  }

  AnchorPlace anchor() {
    return anchor;
  }

  private TreeStand.Stood at(double by) {
    return pull.tied(pull.line(place, anchor, new Hold.Shortening(by)));
  }

  /** One more place of the grid; false where there is none. */
  synchronized boolean grow() {
    if (ended) {
      return false;
    }
    Sample last = samples.get(samples.size() - 1);
    for (int halving = 0; halving <= HALVINGS; halving++) {
      double by = Math.min(most, last.by + step);
      TreeStand.Stood stood = at(by);
      if (stood.holds()) {
        Point3 at = stood.point(pull.grab().spot());
        samples.add(new Sample(by, at, stood.risk(), stood.tension(pull.index())));
        double part = MOVES * limb / Math.max(1e-9, at.distance(last.at));
        boolean near = halving > 0;
        step *= near ? 1 : Math.min(CHANGE, Math.max(1 / CHANGE, part));
        ended = by >= most || samples.size() >= MOST;
        return true;
      }
      step /= 2;
    }
    ended = true;
    return false;
  }

  /** Whether it is known where the place is nearest to a target. */
  synchronized boolean knows(Aim target) {
    return valley(target).isPresent();
  }

  /** The first place of the grid from which drawing in further leads away from a target. */
  private OptionalInt valley(Aim target) {
    for (int k = 0; k + 1 < samples.size(); k++) {
      if (target.miss(samples.get(k).at) <= target.miss(samples.get(k + 1).at)) {
        return OptionalInt.of(k);
      }
    }
    return ended ? OptionalInt.of(samples.size() - 1) : OptionalInt.empty();
  }

  /**
   * Where the place would come nearest, read off the grid; empty where that is not known yet.
   *
   * @return with its miss as distance from the target
   */
  synchronized Optional<Sample> guess(Aim target) {
    OptionalInt valley = valley(target);
    if (valley.isEmpty()) {
      return Optional.empty();
    }
    Arc arc = arc(valley.getAsInt());
    double by = arc.nearest(target);
    return Optional.of(arc.sample(by));
  }

  /** The nearest pose, solved; empty where drawing in leads away or no pose holds. */
  Optional<Nearest> nearest(Aim target) {
    Arc arc;
    synchronized (this) {
      while (valley(target).isEmpty()) {
        grow();
      }
      arc = arc(valley(target).getAsInt());
    }
    double low = Math.max(arc.low, LineLimits.LEAST_SHORTENING);
    double high = Math.max(low, arc.high);
    double by = Math.min(high, Math.max(low, arc.nearest(target)));
    Optional<Nearest> found = Optional.empty();
    for (int n = 0; n < MOST_TRIALS; n++) {
      TreeStand.Stood stood = at(by);
      if (!stood.holds()) {
        break;
      }
      Point3 at = stood.point(pull.grab().spot());
      found = Optional.of(new Nearest(new Tie(place, anchor, by), stood, target.miss(at)));
      Vector3 off = target.way(at).times(-1);
      Vector3 slope = target.across(arc.slope(by));
      double downhill = off.dot(slope);
      double square = slope.dot(slope);
      double bent = square + off.dot(arc.bend());
      double next = square > 0 ? by - downhill / (bent > square / 5 ? bent : square) : by;
      if (downhill > 0) {
        high = by;
      } else {
        low = by;
      }
      next = Math.min(high, Math.max(low, next));
      if (!(Math.abs(next - by) > SAME)) {
        break;
      }
      by = next;
    }
    return found.filter(one -> one.miss < target.miss(pull.free()));
  }

  private Arc arc(int valley) {
    int last = samples.size() - 1;
    int middle = Math.min(Math.max(1, valley), Math.max(1, last - 1));
    if (last < 2) {
      return new Arc(samples.get(0), samples.get(last), samples.get(last), 0, samples.get(last).by);
    }
    return new Arc(
        samples.get(middle - 1),
        samples.get(middle),
        samples.get(middle + 1),
        samples.get(Math.max(0, valley - 1)).by,
        samples.get(Math.min(last, valley + 1)).by);
  }

  /** The parabola through three places of the grid, and the stretch of it that is looked at. */
  private record Arc(Sample a, Sample b, Sample c, double low, double high) {
    /** Newton steps to the nearest point of a parabola, which is a matter of arithmetic. */
    private static final int STEPS = 20;

    private boolean isStraight() {
      return b.by == c.by;
    }

    private Vector3 first() {
      double run = b.by - a.by;
      return run > 0 ? b.at.minus(a.at).times(1 / run) : Vector3.ZERO;
    }

    /** Half of how the slope changes [1/m]. */
    private Vector3 half() {
      if (isStraight()) {
        return Vector3.ZERO;
      }
      Vector3 second = c.at.minus(b.at).times(1 / (c.by - b.by));
      return second.minus(first()).times(1 / (c.by - a.by));
    }

    Vector3 bend() {
      return half().times(2);
    }

    Point3 at(double by) {
      return a.at.plus(first().times(by - a.by)).plus(half().times((by - a.by) * (by - b.by)));
    }

    Vector3 slope(double by) {
      return first().plus(half().times(2 * by - a.by - b.by));
    }

    /** What is known between two places of the grid. */
    Sample sample(double by) {
      boolean left = by <= b.by;
      Sample from = left ? a : b;
      Sample to = left ? b : c;
      double run = to.by - from.by;
      double part = run > 0 ? Math.min(1, Math.max(0, (by - from.by) / run)) : 0;
      RiskGuess risk =
          new RiskGuess(
              between(from.risk.breaking(), to.risk.breaking(), part),
              between(from.risk.kink(), to.risk.kink(), part));
      return new Sample(by, at(by), risk, between(from.pull, to.pull, part));
    }

    private static double between(double from, double to, double part) {
      return from + part * (to - from);
    }

    double nearest(Aim target) {
      double from = low;
      double to = high;
      double by = (low + high) / 2;
      for (int n = 0; n < STEPS; n++) {
        Vector3 off = target.way(at(by)).times(-1);
        Vector3 slope = target.across(slope(by));
        double downhill = off.dot(slope);
        if (downhill > 0) {
          to = by;
        } else {
          from = by;
        }
        double bent = slope.dot(slope) + off.dot(bend());
        double next = bent > 0 ? by - downhill / bent : (from + to) / 2;
        next = next > from && next < to ? next : (from + to) / 2;
        if (Math.abs(next - by) < SAME / 10) {
          return next;
        }
        by = next;
      }
      return by;
    }
  }
}
