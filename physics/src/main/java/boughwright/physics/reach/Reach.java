// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.plan.Spot;
import boughwright.physics.rod.RodOptions;
import boughwright.physics.trial.TreeStand;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Finds the lines that bring a place of the tree where it is wanted, out of places to tie them,
 * anchors that are there, and how far they are drawn in. docs/theory/reach.md tells how.
 */
public final class Reach {
  /** Errors while searching: a tenth of a millimetre on a limb of 300 mm. */
  private static final RodOptions SEARCHING =
      new RodOptions(RodOptions.Route.FOLLOWED, 3e-4, 1e-2, 1e-2, 4, RodOptions.Doubt.QUICK);

  /** Shortenings are told to this [m]: finer than a person draws a line in. */
  private static final double TOLD_TO = 1e-4;

  /** Part of the risk allowed that is used while searching, for what loose solving hides [1]. */
  private static final double RESERVE = 0.97;

  /** First lines that a second is sought for (a choice). */
  private static final int FIRSTS = 4;

  /** So many of the nearest are looked at again (a choice). */
  private static final int CLOSELY = 12;

  /** A second line must bring the target nearer by this, or this part, to be worth it. */
  private static final double SECOND_BRINGS = 1e-3;

  private static final double SECOND_BRINGS_PART = 0.1;

  /** What brings the target nearer by less than this part of the way is nothing [1] (a choice). */
  private static final double NOTHING = 0.1;

  /** How far off an anchor is suggested that is not there [m]. */
  private static final double SUGGESTED_AT = 0.15;

  /** A suggested anchor must do better by this [m] and this part of the limb [1]. */
  private static final double SUGGESTED_BRINGS = 0.002;

  private static final double SUGGESTED_BRINGS_OF_LIMB = 0.02;

  private final ReachRequest request;
  private final TreeStand stand;
  private final Probe probe;
  private final LimbPath path;
  private final Tally tally = new Tally();

  private Reach(ReachRequest request, TreeStand stand) {
    this.request = request;
    this.stand = stand;
    probe = new Probe(stand, request.target(), request.kept());
    path = new LimbPath(stand, request.target().spot());
  }

  /**
   * What can be done.
   *
   * @throws IllegalArgumentException if the place is on no segment, or is cut away
   */
  public static Reached of(ReachRequest request) {
    TreeStand stand = new TreeStand(request.tree(), request.plan(), request.species(), SEARCHING);
    if (!stand.cutting().holds(request.target().spot())) {
      throw new IllegalArgumentException("the place is cut away: " + request.target().spot());
    }
    Optional<Unreachable> held = Hopeless.held(stand, request.target().spot());
    return held.isPresent() ? Reached.not(held.get(), 0, 0) : new Reach(request, stand).search();
  }

  private Reached search() {
    Optional<Tried> start = probe.alone();
    if (start.isEmpty()) {
      return Reached.not(
          new Unreachable(
              "kept-fails",
              "the proposals that are kept hold no pose by themselves",
              "Leave --keep out, or mend them first with the verb bend"),
          0,
          path.length());
    }
    double startMiss = start.get().miss();
    Optional<Unreachable> hopeless = new Hopeless(stand, path, request.target()).plain(startMiss);
    if (hopeless.isPresent()) {
      return Reached.not(hopeless.get(), startMiss, path.length());
    }
    return search(start.get());
  }

  private Reached search(Tried start) {
    Sights sights = new Sights(stand);
    double mostRisk = RESERVE * request.wishes().mostRisk();
    SingleSearch singles = new SingleSearch(probe, sights, tally, mostRisk, start);
    List<AnchorPlace> anchors = Anchorages.of(stand, path, request.wishes().anchors());
    WishFinder wishes = new WishFinder(probe, start);
    List<DoubleSearch.Spot> spots = new ArrayList<>();
    List<Wish> wished = new ArrayList<>();
    List<SingleSearch.Promise> promises = new ArrayList<>();
    for (TiePlace place : path.places()) {
      List<AnchorPlace> fitting =
          anchors.stream().filter(anchor -> singles.fits(place, anchor)).toList();
      Optional<Wish> wish = wishes.at(place);
      wish.ifPresent(wished::add);
      wish.ifPresent(one -> promises.addAll(singles.promises(one, fitting)));
      spots.add(new DoubleSearch.Spot(place, fitting));
    }
    List<Candidate> found = new ArrayList<>(singles.candidates(promises));
    if (request.wishes().lines() > 1) {
      found.addAll(
          doubles(found, spots, new SingleSearch(probe, sights, new Tally(), mostRisk, start)));
    }
    return answer(start, closely(found, singles), wished, anchors.isEmpty());
  }

  /** The nearest looked at again; the others as they are. */
  private static List<Candidate> closely(List<Candidate> found, SingleSearch search) {
    List<Candidate> sorted = new ArrayList<>(found);
    sorted.sort(Comparator.comparingDouble(Candidate::miss));
    List<Candidate> looked = new ArrayList<>();
    for (Candidate one : sorted) {
      Optional<Candidate> again =
          looked.size() < CLOSELY && !one.isEased()
              ? search.candidate(one.ties(), TieFinder.CLOSELY)
              : Optional.empty();
      looked.add(again.filter(better -> better.miss() < one.miss()).orElse(one));
    }
    return looked;
  }

  private List<Candidate> doubles(
      List<Candidate> singles, List<DoubleSearch.Spot> spots, SingleSearch search) {
    DoubleSearch second = new DoubleSearch(probe, search);
    double least = singles.stream().mapToDouble(Candidate::miss).min().orElse(0);
    double worth = Math.max(SECOND_BRINGS, SECOND_BRINGS_PART * least);
    return singles.stream()
        .sorted(Comparator.comparingDouble(Candidate::miss))
        .limit(FIRSTS)
        .flatMap(first -> second.with(first, spots).stream())
        .filter(both -> both.miss() < least - worth)
        .toList();
  }

  private Reached answer(Tried start, List<Candidate> found, List<Wish> wished, boolean noAnchors) {
    double least = found.stream().mapToDouble(Candidate::miss).min().orElse(start.miss());
    Optional<Reached.MissingAnchor> missing = missingAnchor(wished, least);
    List<Choice> choices =
        least > (1 - NOTHING) * start.miss() ? List.of() : choices(found, start.miss());
    Optional<Unreachable> why =
        choices.isEmpty() ? Optional.of(noLine(noAnchors, missing)) : Optional.empty();
    return new Reached(choices, start.miss(), path.length(), tally.counts(), missing, why);
  }

  private Optional<Reached.MissingAnchor> missingAnchor(List<Wish> wished, double least) {
    double worth = Math.max(SUGGESTED_BRINGS, SUGGESTED_BRINGS_OF_LIMB * path.length());
    return wished.stream()
        .filter(wish -> wish.force().norm() > 0 && wish.miss() < least - worth)
        .min(Comparator.comparingDouble(wish -> wish.miss() + wish.force().norm() * 1e-6))
        .map(
            wish -> {
              Point3 at = wish.at().plus(wish.force().direction().times(SUGGESTED_AT));
              return new Reached.MissingAnchor(wish.place(), at, wish.miss());
            });
  }

  private List<Choice> choices(List<Candidate> found, double startMiss) {
    Map<Candidate, Choice.Why> chosen = Chooser.of(found, startMiss, path.length());
    Probe exact = probe.with(stand.with(RodOptions.DEFAULT));
    List<Choice> choices = new ArrayList<>();
    chosen.forEach((one, why) -> told(exact, one, why).ifPresent(choices::add));
    return choices;
  }

  /** A choice as it is told: its shortenings rounded, solved with the usual accuracy. */
  private Optional<Choice> told(Probe exact, Candidate one, Choice.Why why) {
    List<Tie> ties =
        one.ties().stream().map(tie -> tie.by(told(tie.shortening(), one.isEased()))).toList();
    return exact.tie(ties).map(tried -> choice(exact, tried, one, why));
  }

  private static double told(double shortening, boolean down) {
    double steps = shortening / TOLD_TO;
    // the division leaves the number that is written with fewest digits
    return (down ? Math.floor(steps) : Math.rint(steps)) / Math.rint(1 / TOLD_TO);
  }

  private Choice choice(Probe exact, Tried tried, Candidate one, Choice.Why why) {
    Proposal proposal = exact.proposal(tried.ties());
    List<Proposal> all = new ArrayList<>(request.kept());
    all.add(proposal);
    Plan plan = request.plan().withProposals(all);
    return new Choice(
        why,
        lines(tried),
        proposal,
        plan,
        tried.stood().result(),
        tried.stood().risk(),
        tried.stood().point(request.target().spot()),
        tried.stood().direction(request.target().spot()),
        tried.miss(),
        one.isEased() ? one.nearest() : tried.miss());
  }

  private List<Choice.Line> lines(Tried tried) {
    return tried.ties().stream()
        .map(tie -> new Choice.Line(tie, SingleSearch.angle(tried, tie), padSide(tie)))
        .toList();
  }

  private String padSide(Tie tie) {
    Spot spot = tie.place().spot();
    int i = stand.skeleton().indexOf(spot.segment());
    Vector3 line = tie.anchor().at().minus(stand.skeleton().point(i, spot.along()));
    Vector3 axis = stand.skeleton().direction(i).vector();
    return stand.side(axis.times(line.dot(axis)).minus(line));
  }

  private Unreachable noLine(boolean noAnchors, Optional<Reached.MissingAnchor> missing) {
    String found =
        noAnchors
            ? "there is nothing to tie a line to"
            : "no line brings \"" + request.target().spot().segment() + "\" nearer" + reasons();
    String remedy =
        missing
            .map(
                anchor ->
                    "List an anchor in the file's \"anchors\", a screw or a frame near "
                        + Hopeless.millimetres(anchor.at())
                        + " mm would do; or allow more with --anchors")
            .orElse("Give a point nearer to where the branch is, or allow more risk");
    return new Unreachable("no-line", found, remedy);
  }

  /** The most frequent reasons, in words. */
  private String reasons() {
    String words =
        tally.counts().entrySet().stream()
            .sorted(Map.Entry.<Reason, Integer>comparingByValue().reversed())
            .limit(3)
            .map(
                entry ->
                    String.format(
                        Locale.ROOT, "%d times %s", entry.getValue(), entry.getKey().words()))
            .collect(Collectors.joining("; "));
    return words.isEmpty() ? "" : " (" + words + ")";
  }
}
