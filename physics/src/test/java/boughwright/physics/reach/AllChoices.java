// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Anchor;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.Hold;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.trial.TreeStand;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;

/**
 * One line tied every way there is and drawn in step by step: slow, and sure to see the best. Which
 * lines are sensible it judges for itself, a little more strictly than the search, so that what it
 * finds is open to the search.
 */
final class AllChoices {
  private static final double RADIAN = Math.toRadians(1);

  /** Stricter than the 20 degrees of the search. */
  private static final double LEAST_ANGLE = 22 * RADIAN;

  /** Stricter than the tenth of the search. */
  private static final double MOST_ANCHOR_MOVES = 0.06;

  /** Wood is taken to be thicker by this [m]. */
  private static final double THICKER = 0.002;

  /** Targets are such that the wood more likely holds than not. */
  private static final double EVEN = 0.5;

  private static final double SHORTEST = 0.022;
  private static final double LONGEST = 0.95;

  /** Shortenings over the range: the miss is smooth, one valley or two. */
  private static final int STEPS = 20;

  /** Lines whose valley is looked at closely. */
  private static final int CLOSELY = 12;

  private final TreeStand stand;
  private final Skeleton skeleton;
  private final List<TiePlace> places;
  private final List<AnchorPlace> anchors;
  private final double limbLength;

  /** A line with what it brings. */
  record Brought(TiePlace place, AnchorPlace anchor, double shortening, double miss) {}

  AllChoices(TreeStand stand, List<TiePlace> places, List<AnchorPlace> anchors, double limbLength) {
    this.stand = stand;
    skeleton = stand.skeleton();
    this.places = places;
    this.anchors = anchors;
    this.limbLength = limbLength;
  }

  /** Where some sensible line brings a place: a target with a known answer. */
  Point3 someTarget(Spot spot, Random random) {
    for (int n = 0; n < 3000; n++) {
      TiePlace place = places.get(random.nextInt(places.size()));
      AnchorPlace anchor = anchors.get(random.nextInt(anchors.size()));
      double by = (0.005 + 0.2 * random.nextDouble()) * limbLength;
      if (fits(place, anchor) && by < 0.5 * rest(place, anchor)) {
        Optional<TreeStand.Stood> stood = sensible(place, anchor, by);
        if (stood.isPresent()
            && stood.get().point(spot).distance(at(spot)) > 0.01
            && stood.get().risk().breaking() < EVEN) {
          return stood.get().point(spot);
        }
      }
    }
    throw new IllegalStateException("no line of this tree is sensible");
  }

  /** The least that any sensible line leaves missing [m]. */
  double least(Spot spot, Point3 target) {
    List<Brought> valleys = new ArrayList<>();
    for (TiePlace place : places) {
      for (AnchorPlace anchor : anchors) {
        if (fits(place, anchor)) {
          valleys.addAll(valleys(place, anchor, spot, target));
        }
      }
    }
    valleys.sort(Comparator.comparingDouble(Brought::miss));
    return valleys.stream()
        .limit(CLOSELY)
        .mapToDouble(valley -> closely(valley, spot, target))
        .min()
        .orElseThrow();
  }

  private double step(TiePlace place, AnchorPlace anchor) {
    return Math.min(0.5 * rest(place, anchor), 0.5 * limbLength) / STEPS;
  }

  /** The lowest points among all steps, where the pose is sensible. */
  private List<Brought> valleys(TiePlace place, AnchorPlace anchor, Spot spot, Point3 target) {
    List<Brought> valleys = new ArrayList<>();
    double start = at(spot).distance(target);
    double before = start;
    double here = before;
    double step = step(place, anchor);
    for (int n = 1; n <= STEPS; n++) {
      double next = miss(place, anchor, n * step, spot, target);
      if (n > 1 && here <= before && here <= next) {
        valleys.add(new Brought(place, anchor, (n - 1) * step, here));
      }
      before = here;
      here = next;
      boolean away = before > 1.3 * start && here > before && next > here;
      if (Double.isInfinite(next) || away) {
        return valleys;
      }
    }
    if (here < before) {
      valleys.add(new Brought(place, anchor, STEPS * step, here));
    }
    return valleys;
  }

  private double closely(Brought valley, Spot spot, Point3 target) {
    double step = step(valley.place(), valley.anchor());
    UnivariateFunction miss =
        by -> Math.min(1, miss(valley.place(), valley.anchor(), by, spot, target));
    double by =
        new BrentOptimizer(1e-4, 1e-6)
            .optimize(
                new MaxEval(60),
                new UnivariateObjectiveFunction(miss),
                GoalType.MINIMIZE,
                new SearchInterval(
                    Math.max(step / 10, valley.shortening() - step),
                    valley.shortening() + step,
                    valley.shortening()))
            .getPoint();
    return sensible(valley.place(), valley.anchor(), by)
        .map(stood -> stood.point(spot).distance(target))
        .orElse(Double.POSITIVE_INFINITY);
  }

  private double miss(TiePlace place, AnchorPlace anchor, double by, Spot spot, Point3 target) {
    TreeStand.Stood stood = tied(place, anchor, by);
    return stood.holds() ? stood.point(spot).distance(target) : Double.POSITIVE_INFINITY;
  }

  private TreeStand.Stood tied(TiePlace place, AnchorPlace anchor, double by) {
    GuyLine line =
        new GuyLine(
            "g",
            place.spot(),
            OptionalDouble.empty(),
            anchor.anchor(),
            new Hold.Shortening(by),
            Map.of());
    return stand.with(
        List.of(
            new Proposal("p", Optional.empty(), List.of(line), List.of(), List.of(), Map.of())));
  }

  private Point3 at(Spot spot) {
    return skeleton.point(skeleton.indexOf(spot.segment()), spot.along());
  }

  private double rest(TiePlace place, AnchorPlace anchor) {
    return at(place.spot()).distance(anchor.at());
  }

  private boolean fits(TiePlace place, AnchorPlace anchor) {
    double rest = rest(place, anchor);
    return rest > SHORTEST
        && rest < LONGEST
        && isStiff(place, anchor)
        && isClear(at(place.spot()), anchor.at(), place, anchor, this::at);
  }

  private boolean isStiff(TiePlace place, AnchorPlace anchor) {
    return !(anchor.anchor() instanceof Anchor.OnTree on)
        || moves(on.spot()) < MOST_ANCHOR_MOVES * moves(place.spot());
  }

  /** Movement under a small force square to the wood. */
  private double moves(Spot spot) {
    Vector3 force = skeleton.direction(skeleton.indexOf(spot.segment())).anySquare().times(0.01);
    return stand.pulled(List.of(), spot, force).point(spot).distance(at(spot));
  }

  private Optional<TreeStand.Stood> sensible(TiePlace place, AnchorPlace anchor, double by) {
    TreeStand.Stood stood = tied(place, anchor, by);
    if (!stood.holds() || by < 6e-4 || stood.tension(0) < 0.06) {
      return Optional.empty();
    }
    Point3 from = stood.point(place.spot());
    Point3 to = anchor.anchor() instanceof Anchor.OnTree on ? stood.point(on.spot()) : anchor.at();
    Direction3 line = to.minus(from).direction();
    double angle = line.angleTo(stood.direction(place.spot()));
    boolean slides = Math.min(angle, Math.PI - angle) < LEAST_ANGLE;
    return slides || !isClear(from, to, place, anchor, stood::point)
        ? Optional.empty()
        : Optional.of(stood);
  }

  /** By points along the line against balls along all wood but that of its two ends. */
  private boolean isClear(
      Point3 from,
      Point3 to,
      TiePlace place,
      AnchorPlace anchor,
      java.util.function.Function<Spot, Point3> pose) {
    for (int i = 0; i < skeleton.size(); i++) {
      String id = skeleton.segment(i).id();
      boolean end =
          id.equals(place.spot().segment())
              || anchor.anchor() instanceof Anchor.OnTree on && id.equals(on.spot().segment());
      if (!end && !isClear(from, to, i, pose)) {
        return false;
      }
    }
    return true;
  }

  private boolean isClear(
      Point3 from, Point3 to, int i, java.util.function.Function<Spot, Point3> pose) {
    for (int k = 0; k <= 12; k++) {
      double along = k / 12.0;
      Point3 centre = pose.apply(new Spot(skeleton.segment(i).id(), along));
      Vector3 line = to.minus(from);
      double part = centre.minus(from).dot(line) / line.dot(line);
      Point3 foot = from.toward(to, Math.min(1, Math.max(0, part)));
      if (foot.distance(centre) < skeleton.caliper(i, along) / 2 + THICKER) {
        return false;
      }
    }
    return true;
  }
}
