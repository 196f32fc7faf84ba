// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Spot;
import boughwright.physics.trial.TreeStand;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The lines that a grabbed place could be held by, each drawn in as far as it was asked for. Which
 * are looked at for a target depends on the target alone. May be asked from any thread.
 */
final class Weighing {
  /** Anchors that are looked at for one target, those that promise most (a choice). */
  private static final int ANCHORS = 24;

  /** Of so many of them the places beside the grabbed one are looked at too (a choice). */
  private static final int BESIDE = 4;

  /** Places beside the grabbed one, outward and inward, and how far apart [m] (choices). */
  private static final int PLACES = 2;

  private static final double APART = 0.024;

  /** About as near: within this, or this part of the limb, whichever is more [m], [1]. */
  private static final double ABOUT = 0.002;

  private static final double ABOUT_OF_LIMB = 0.02;

  /** An anchor is called missing where more than this part of the way stays [1] (a choice). */
  private static final double NOT_DONE = 0.15;

  /** What breaks for sure is as bad as what leaves this part of the way [1] (a choice). */
  private static final double BREAKS = 0.5;

  /** And no less than what stays off so far [m] (a choice). */
  private static final double SURELY = 0.012;

  /** The least pull there could be counts for this part of what is about as near [1] (a choice). */
  private static final double WORTH = 0.5;

  /** A pull so many times the least is no worse than another [1] (a choice). */
  private static final double MOST_OBLIQUE = 4;

  /** Other anchors that are told. */
  private static final int OTHERS = 6;

  /** A small movement, as a part of the limb [1]. */
  private static final double SMALL = 0.02;

  private record Pair(TiePlace place, AnchorPlace anchor) {}

  /**
   * A line whose nearest pose to a target is known.
   *
   * @param near how far it stays off, more where it pulls harder, bends farther or is not tied
   *     where the hand is [m]
   * @param breaks what its risk of breaking counts for [m]
   */
  record Scored(DrawnIn line, DrawnIn.Sample guess, double near, double breaks) {
    double score() {
      return near + breaks;
    }
  }

  private final Pull pull;
  private final LimbPath path;
  private final TiePlace grabbed;
  private final List<TiePlace> places = new ArrayList<>();
  private final List<AnchorPlace> anchors;
  private final Sights sights;
  private final SingleSearch search;
  private final double[][] gives;
  private final Map<Pair, Optional<DrawnIn>> lines = new HashMap<>();
  private Aim target;
  private Optional<AnchorPlace> fixed = Optional.empty();

  Weighing(Pull pull) {
    this.pull = pull;
    TreeStand stand = pull.stand();
    Spot spot = pull.grab().spot();
    path = new LimbPath(stand, spot);
    double along = path.lengthTo(spot);
    grabbed =
        pull.grab().line().isPresent()
            ? exactly(stand, pull.grab().line().get().at())
            : path.at(Math.min(along, path.length() - 1e-3));
    places.add(grabbed);
    for (int n = 1; n <= PLACES && pull.grab().line().isEmpty(); n++) {
      beside(along - n * APART);
      beside(along + n * APART);
    }
    target = new Aim.At(pull.free());
    anchors =
        Anchorages.of(stand, path, pull.grab().anchors()).stream()
            .filter(anchor -> distance(anchor) < LineLimits.LONGEST)
            .sorted(Comparator.comparingDouble(this::distance))
            .toList();
    sights = new Sights(stand);
    Probe probe = new Probe(stand, new Target.Point(spot, pull.free()), pull.grab().kept());
    search = new SingleSearch(probe, sights, new Tally(), 1, probe.alone().orElseThrow());
    gives = gives(stand, spot);
  }

  private static TiePlace exactly(TreeStand stand, Spot at) {
    return new TiePlace(at, 0, 0, stand.compliance(at));
  }

  private void beside(double along) {
    if (along > path.length() / 4 && along < path.length() - 1e-3) {
      TiePlace place = path.at(along);
      if (!pull.stand().isHeld(place.spot())
          && place.compliance() > 0
          && places.stream().noneMatch(one -> one.spot().equals(place.spot()))) {
        places.add(place);
      }
    }
  }

  private double distance(AnchorPlace anchor) {
    return anchor.at().distance(pull.free());
  }

  /** How the place moves under a small force, shape (movement)(force) [m/N]. */
  private double[][] gives(TreeStand stand, Spot spot) {
    double force = SMALL * path.length() / grabbed.compliance();
    double[][] out = new double[3][3];
    for (int k = 0; k < 3; k++) {
      double[] f = new double[3];
      f[k] = force;
      TreeStand.Stood stood =
          stand.pulled(pull.grab().kept(), grabbed.spot(), new Vector3(f[0], f[1], f[2]));
      Vector3 moved =
          stood.holds() ? stood.point(spot).minus(pull.free()) : new Vector3(f[0], f[1], f[2]);
      out[0][k] = moved.x() / force;
      out[1][k] = moved.y() / force;
      out[2][k] = moved.z() / force;
    }
    return out;
  }

  TiePlace grabbed() {
    return grabbed;
  }

  /** The places a line may be tied at, the grabbed one first. */
  List<TiePlace> places() {
    return List.copyOf(places);
  }

  /** Length of the wood that is bent [m]. */
  double limb() {
    return path.length();
  }

  List<AnchorPlace> anchors() {
    return anchors;
  }

  /** A miss beyond this calls for another anchor [m]. */
  double worth(Aim wanted) {
    return Math.max(about(), NOT_DONE * wanted.miss(pull.free()));
  }

  private double about() {
    return Math.max(ABOUT, ABOUT_OF_LIMB * path.length());
  }

  /** What is weighed from now on. */
  synchronized void aim(Aim wanted, Optional<AnchorPlace> only) {
    target = wanted;
    fixed = only;
  }

  /** The line to one anchor from the grabbed place. */
  synchronized DrawnIn of(AnchorPlace anchor) {
    return lines
        .computeIfAbsent(new Pair(grabbed, anchor), pair -> Optional.of(drawn(pair)))
        .orElseGet(
            () -> {
              DrawnIn asked = drawn(new Pair(grabbed, anchor));
              lines.put(new Pair(grabbed, anchor), Optional.of(asked));
              return asked;
            });
  }

  private DrawnIn drawn(Pair pair) {
    return new DrawnIn(pull, pair.place, pair.anchor, path.length());
  }

  /** The line between two places, where one may be. */
  private synchronized Optional<DrawnIn> line(Pair pair) {
    return lines.computeIfAbsent(
        pair,
        one -> search.fits(one.place, one.anchor) ? Optional.of(drawn(one)) : Optional.empty());
  }

  /**
   * How far a pull toward an anchor would leave the place off, to first order, and what the pull
   * itself weighs [m].
   */
  private double promise(AnchorPlace anchor, Aim wanted) {
    Vector3 way = wanted.way(pull.free());
    Vector3 toward = anchor.at().minus(pull.free().plus(way.times(0.5)));
    double[] f = {toward.x(), toward.y(), toward.z()};
    double[] u = new double[3];
    for (int i = 0; i < 3; i++) {
      for (int k = 0; k < 3; k++) {
        u[i] += gives[i][k] * f[k];
      }
    }
    Vector3 moves = wanted.across(new Vector3(u[0], u[1], u[2]));
    double along = way.dot(moves);
    double square = moves.dot(moves);
    if (!(along > 0 && square > 0)) {
      return way.norm() + about() * MOST_OBLIQUE;
    }
    double part = along / square;
    return way.minus(moves.times(part)).norm() + pulls(part * toward.norm(), wanted);
  }

  /** What a pull weighs beside being near: that of a pull square to the limb is the least [m]. */
  private double pulls(double force, Aim wanted) {
    double least = Math.max(about(), wanted.miss(pull.free())) / grabbed.compliance();
    return about() * WORTH * Math.min(MOST_OBLIQUE, force / least);
  }

  /** The pairs that are looked at for a target, those that promise most first. */
  private List<Pair> pairs(Aim wanted, Optional<AnchorPlace> only) {
    List<AnchorPlace> sorted =
        only.isPresent()
            ? List.of(only.get())
            : anchors.stream()
                .map(one -> new Promise(one, promise(one, wanted)))
                .sorted(Comparator.comparingDouble(Promise::miss))
                .limit(ANCHORS)
                .map(Promise::anchor)
                .toList();
    List<Pair> pairs = new ArrayList<>();
    sorted.forEach(one -> pairs.add(new Pair(grabbed, one)));
    for (AnchorPlace anchor : sorted.subList(0, Math.min(BESIDE, sorted.size()))) {
      places.subList(1, places.size()).forEach(place -> pairs.add(new Pair(place, anchor)));
    }
    return pairs;
  }

  private record Promise(AnchorPlace anchor, double miss) {}

  private List<DrawnIn> lines(Aim wanted, Optional<AnchorPlace> only, boolean make) {
    List<DrawnIn> out = new ArrayList<>();
    only.ifPresent(anchor -> out.add(of(anchor)));
    for (Pair pair : pairs(wanted, only)) {
      Optional<DrawnIn> line;
      synchronized (this) {
        line = make || lines.containsKey(pair) ? line(pair) : Optional.empty();
      }
      line.filter(one -> !out.contains(one)).ifPresent(out::add);
    }
    return out;
  }

  /** Sees to it that something is known for a target: of the line there is, or of some others. */
  void start(Aim wanted, int some, Optional<DrawnIn> current) {
    current.ifPresent(line -> grow(line, wanted));
    Optional<AnchorPlace> only = only();
    int left = some - ranked(wanted).size();
    if (left <= 0) {
      return;
    }
    for (Pair pair : pairs(wanted, only)) {
      Optional<DrawnIn> line = only.isPresent() ? Optional.of(of(only.get())) : line(pair);
      if (line.isPresent()) {
        grow(line.get(), wanted);
        left -= 1;
      }
      if (left <= 0) {
        return;
      }
    }
  }

  private synchronized Optional<AnchorPlace> only() {
    return fixed;
  }

  private static void grow(DrawnIn line, Aim wanted) {
    while (!line.knows(wanted)) {
      line.grow();
    }
  }

  /** Weighs one more line for the target that is aimed at; false where all are weighed. */
  boolean weigh() {
    Aim wanted;
    Optional<AnchorPlace> only;
    synchronized (this) {
      wanted = target;
      only = fixed;
    }
    for (Pair pair : pairs(wanted, only)) {
      Optional<DrawnIn> line = line(pair);
      if (line.isPresent() && !line.get().knows(wanted)) {
        grow(line.get(), wanted);
        return true;
      }
    }
    return false;
  }

  /** The lines that are known to bring the place nearer to a target, the best first. */
  List<Scored> ranked(Aim wanted) {
    List<Scored> all = new ArrayList<>();
    double start = wanted.miss(pull.free());
    for (DrawnIn line : lines(wanted, only(), false)) {
      line.guess(wanted)
          .filter(guess -> guess.by() > 0 && wanted.miss(guess.at()) < start)
          .ifPresent(guess -> all.add(scored(line, guess, wanted)));
    }
    all.sort(Comparator.comparingDouble(Scored::score));
    return all;
  }

  private Scored scored(DrawnIn line, DrawnIn.Sample guess, Aim wanted) {
    double elsewhere = line.place().equals(grabbed) ? 0 : about() / 2;
    double kinks = about() * guess.risk().kink();
    double near = wanted.miss(guess.at()) + elsewhere + pulls(guess.pull(), wanted) + kinks;
    double breaks = Math.max(SURELY, BREAKS * wanted.miss(pull.free()));
    return new Scored(line, guess, near, breaks * guess.risk().breaking());
  }

  /** What other anchors would do, the best first, each once. */
  List<Pulled.Other> others(Aim wanted) {
    List<Pulled.Other> out = new ArrayList<>();
    for (Scored one : ranked(wanted)) {
      AnchorPlace anchor = one.line.anchor();
      if (out.size() < OTHERS && out.stream().noneMatch(other -> other.anchor().equals(anchor))) {
        out.add(new Pulled.Other(anchor, wanted.miss(one.guess.at()), one.guess.risk().breaking()));
      }
    }
    return out;
  }

  private Tried tried(DrawnIn.Nearest nearest) {
    return new Tried(List.of(nearest.tie()), nearest.stood(), new double[0], nearest.miss());
  }

  /** Whether wood stands in the way of the line in its pose. */
  boolean isBlocked(DrawnIn.Nearest nearest) {
    return sights.isBlocked(tried(nearest));
  }

  /** The angle between the line and the axis of the branch where it holds [rad]. */
  double angle(DrawnIn.Nearest nearest) {
    return SingleSearch.angle(tried(nearest), nearest.tie());
  }
}
