// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Coil;
import boughwright.modeller.plan.Material;
import boughwright.physics.trial.TreeStand;
import boughwright.physics.trial.WireChoice;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;

/** Finds what a coil can do that holds what a hand bends, alone or with one line. */
final class CoilSearch {
  /** Places where the hand takes hold that are tried (a choice). */
  private static final int PLACES = 2;

  /** Further apart than this along the limb are other places [m] (a choice). */
  private static final double OTHER_PLACE = 0.025;

  /** Places whose pull leaves so much more missing are not tried [m] (a choice). */
  private static final double ABOUT = 0.002;

  /**
   * Moments the wire stands over that of the bent wood: just, amply, and what the stoutest that can
   * be wound does (choices) [1].
   */
  private static final double[] STRENGTHS = {1, 2, Double.POSITIVE_INFINITY};

  /** Lines that are tried with a coil (a choice). */
  private static final int LINES = 2;

  /** Coils that are tried with a line (a choice). */
  private static final int COILS = 2;

  /** Where no wire holds the whole bend: parts of it that wire is chosen for (a choice) [1]. */
  private static final double[] PARTS = {1, 0.6, 0.35};

  /** Gauge of a coil whose wire is not chosen yet [m]. */
  private static final double PATTERN = 0.002;

  /** Part of the bend beyond the target that is left to the hand where a line helps (a choice). */
  private static final double SHARED = 0.5;

  /** Step over which slopes are taken [m]. */
  private static final double STEP = 5e-4;

  /** The least part of a bend that is looked at [1]. */
  private static final double LEAST_PART = 0.02;

  private final ReachRequest request;
  private final Probe probe;
  private final LimbPath path;
  private final CoilLayer layer;
  private final double mostRisk;
  private final Tried start;
  private double strongest;

  CoilSearch(ReachRequest request, Probe probe, LimbPath path, Tried start) {
    this.request = request;
    this.probe = probe;
    layer = new CoilLayer(probe.stand(), path);
    this.path = path;
    mostRisk = Reach.RESERVE * request.wishes().mostRisk();
    this.start = start;
  }

  /** A coil for the pull that a place would need. */
  private record Bending(Wish wish, Winding winding) {}

  /** A coil bent as the bare limb would be, bent on so that it rests best, and what that does. */
  private record Found(Winding bent, Winding best, Candidate candidate) {}

  /**
   * What coils do, alone and with one line.
   *
   * @param wishes the pulls that places would need
   * @param singles what single lines do
   */
  List<Candidate> candidates(List<Wish> wishes, List<Candidate> singles) {
    List<Bending> tried = new ArrayList<>();
    for (Wish wish : places(wishes)) {
      tried.addAll(windings(wish));
    }
    List<Found> alone = tried.parallelStream().map(this::alone).flatMap(Optional::stream).toList();
    List<Candidate> all = new ArrayList<>(alone.stream().map(Found::candidate).toList());
    if (request.wishes().lines() > 1) {
      List<Tie> ties =
          singles.stream()
              .sorted(Comparator.comparingDouble(Candidate::nearest))
              .filter(one -> one.lines() == 1)
              .limit(LINES)
              .flatMap(one -> one.ties().stream())
              .toList();
      all.addAll(
          alone.stream()
              .sorted(Comparator.comparingDouble(found -> found.candidate.miss()))
              .limit(COILS)
              .toList()
              .parallelStream()
              .flatMap(found -> ties.stream().map(tie -> with(found, tie)))
              .flatMap(Optional::stream)
              .toList());
    }
    return all;
  }

  /** How many times the moment of the bent wood the strongest wire stands; below 1 none holds. */
  double strongest() {
    return strongest;
  }

  /** The place nearest to the target's own, then others that do about as well. */
  private List<Wish> places(List<Wish> wishes) {
    List<Wish> chosen = new ArrayList<>();
    double own = path.lengthTo(request.target().spot());
    double least = wishes.stream().mapToDouble(Wish::miss).min().orElse(0);
    wishes.stream()
        .filter(wish -> wish.force().norm() > 0 && wish.miss() <= least + ABOUT + start.miss() / 10)
        .sorted(Comparator.comparingDouble(wish -> Math.abs(wish.place().alongPath() - own)))
        .filter(wish -> chosen.stream().noneMatch(have -> isNear(have.place(), wish.place())))
        .limit(PLACES)
        .forEach(chosen::add);
    return chosen;
  }

  private static boolean isNear(TiePlace a, TiePlace b) {
    return Math.abs(a.alongPath() - b.alongPath()) < OTHER_PLACE;
  }

  /** Coils of wire that is strong enough, bent as far as the bare limb is to go. */
  private List<Bending> windings(Wish wish) {
    Vector3 way = wish.force().direction().vector();
    double far = wish.at().minus(start.stood().point(wish.place().spot())).dot(way);
    if (!(far > STEP)) {
      return List.of();
    }
    List<Winding> all = new ArrayList<>();
    for (double part : PARTS) {
      Coil coil = layer.of(wish.place(), Material.ALUMINIUM, PATTERN, 1);
      add(new Winding(wish.place(), way.times(part * far), coil), all);
    }
    return all.stream().map(one -> new Bending(wish, one.by(way.times(far)))).toList();
  }

  /** Adds wire for metals that have none yet: the fewest strands that stand the bent wood. */
  private void add(Winding pattern, List<Winding> all) {
    Set<Material> left = new TreeSet<>(request.wishes().metals());
    all.forEach(one -> left.remove(one.coil().metal()));
    Held.Asked asked = probe.asked(request, List.of(), pattern);
    for (double strength : left.isEmpty() ? new double[0] : STRENGTHS) {
      List<WireChoice.Row> rows =
          WireChoice.strong(asked.trial(), asked.proposal(), left, strength);
      rows.forEach(row -> strongest = Math.max(strongest, row.strength()));
      for (Material metal : left) {
        rows.stream()
            .filter(row -> row.metal() == metal && row.gauge().isPresent())
            .min(order(strength))
            .map(row -> wound(pattern, row))
            .filter(one -> !all.contains(one))
            .ifPresent(all::add);
      }
    }
  }

  /** Of wire that is strong enough the fewest strands first, of the stoutest the strongest. */
  private static Comparator<WireChoice.Row> order(double strength) {
    return Double.isInfinite(strength)
        ? Comparator.comparingDouble(WireChoice.Row::strength).reversed()
        : Comparator.comparingInt(WireChoice.Row::strands);
  }

  private Winding wound(Winding pattern, WireChoice.Row row) {
    Coil coil = layer.of(pattern.place(), row.metal(), row.gauge().getAsDouble(), row.strands());
    return pattern.with(coil);
  }

  private Optional<Found> alone(Bending bending) {
    Winding winding = bending.winding;
    Overbend.Ask ask = new Overbend.Ask(by -> rest(winding.by(by)), mostRisk);
    return new Overbend(bending.wish, winding.by(), start.missing(), ask)
        .found()
        .flatMap(
            best -> {
              Winding fitted = winding.by(best.by());
              return candidate(List.of(), fitted, best.nearest())
                  .map(one -> new Found(winding, fitted, one));
            });
  }

  private Optional<Overbend.Rest> rest(Winding winding) {
    return probe
        .held(request, List.of(), winding)
        .map(
            held ->
                new Overbend.Rest(held.missing(), probe.stand().risk(held.forced()).breaking()));
  }

  private Optional<double[]> missing(List<Tie> ties, Winding winding) {
    return probe.held(request, ties, winding).map(Held::missing);
  }

  /** A line beside a coil: the hand goes part of the way beyond, the line keeps the rest. */
  private Optional<Candidate> with(Found found, Tie tie) {
    Winding winding =
        found.bent.by(found.bent.by().times(1 - SHARED).plus(found.best.by().times(SHARED)));
    double rest = probe.restLength(tie.place(), tie.anchor());
    Fit.Box box =
        new Fit.Box(
            new double[] {LineLimits.LEAST_SHORTENING},
            new double[] {rest / 2},
            new double[] {STEP});
    double[] from = box.inside(new double[] {tie.shortening()});
    if (missing(List.of(tie.by(from[0])), winding).isEmpty()) {
      return Optional.empty();
    }
    double[] best = Fit.of(x -> missing(List.of(tie.by(x[0])), winding), box, TieFinder.LOOK, from);
    return eased(List.of(tie.by(best[0])), winding)
        .filter(one -> one.pull() > 0)
        .filter(
            one -> SingleSearch.angle(one.tried(), one.ties().get(0)) >= LineLimits.LEAST_ANGLE);
  }

  /** A bend as it is, or as much of it as the risk allows. */
  Optional<Candidate> eased(List<Tie> ties, Winding winding) {
    return eased(ties, winding, mostRisk);
  }

  private Optional<Candidate> eased(List<Tie> ties, Winding winding, double allowed) {
    Optional<Held> best = probe.held(request, ties, winding);
    Optional<TreeStand.Stood> forced = probe.forced(ties, winding);
    if (best.isEmpty() || forced.isEmpty()) {
      return Optional.empty();
    }
    if (forced.get().risk().breaking() <= allowed) {
      return candidate(ties, winding, best.get().miss());
    }
    OptionalDouble part =
        Easing.part(
            by -> breaking(TieFinder.eased(ties, by), scaled(winding, by)), LEAST_PART, allowed);
    return part.isEmpty()
        ? Optional.empty()
        : candidate(
            TieFinder.eased(ties, part.getAsDouble()),
            scaled(winding, part.getAsDouble()),
            best.get().miss());
  }

  /** A bend with its hand and lines eased by the same part until it risks less, as guessed. */
  static Optional<Candidate> within(CoilSearch search, Choice choice, double allowed) {
    return search.eased(
        choice.lines().stream().map(Choice.Line::tie).toList(),
        choice.bend().orElseThrow().winding(),
        allowed);
  }

  private OptionalDouble breaking(List<Tie> ties, Winding winding) {
    return probe.forced(ties, winding).stream()
        .mapToDouble(stood -> stood.risk().breaking())
        .findFirst();
  }

  private static Winding scaled(Winding winding, double part) {
    return winding.by(winding.by().times(part));
  }

  private Optional<Candidate> candidate(List<Tie> ties, Winding winding, double nearest) {
    Optional<Held> held = probe.held(request, ties, winding);
    Optional<TreeStand.Stood> forced = probe.forced(ties, winding);
    if (held.isEmpty() || forced.isEmpty() || !(held.get().miss() < start.miss())) {
      return Optional.empty();
    }
    double pull = held.get().forced().handForce(probe.handsKept());
    for (int k = 0; k < ties.size(); k++) {
      double tension =
          held.get().held().tensions().get(held.get().proposal().guyLines().get(k).id());
      if (tension < LineLimits.LEAST_PULL) {
        return Optional.empty();
      }
      pull = Math.max(pull, tension);
    }
    Tried tried = new Tried(ties, forced.get(), held.get().missing(), held.get().miss());
    return Optional.of(
        new Candidate(tried, forced.get().risk(), pull, nearest, Optional.of(winding)));
  }
}
