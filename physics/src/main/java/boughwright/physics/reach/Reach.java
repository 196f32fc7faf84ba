// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.geometry.Point3;
import boughwright.physics.rod.RodOptions;
import boughwright.physics.trial.TreeStand;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;

/**
 * Finds the lines that bring a place of the tree where it is wanted, out of places to tie them,
 * anchors that are there, and how far they are drawn in. docs/theory/reach.md tells how.
 */
public final class Reach {
  /** Errors while searching: a tenth of a millimetre on a limb of 300 mm. */
  static final RodOptions SEARCHING =
      new RodOptions(RodOptions.Route.FOLLOWED, 3e-4, 1e-2, 1e-2, 4, RodOptions.Doubt.QUICK);

  /** Part of the risk allowed that is used while searching, for what loose solving hides [1]. */
  static final double RESERVE = 0.97;

  /** First lines that a second is sought for (a choice). */
  private static final int FIRSTS = 3;

  /** So many of the nearest are looked at again (a choice). */
  private static final int CLOSELY = 12;

  /** A second line must bring the target nearer by this, or this part, to be worth it. */
  private static final double SECOND_BRINGS = 1e-3;

  private static final double SECOND_BRINGS_PART = 0.1;

  /** What brings the target nearer by less than this part of the way is nothing [1] (a choice). */
  private static final double NOTHING = 0.1;

  /** How far off an anchor is suggested that is not there [m]. */
  static final double SUGGESTED_AT = 0.15;

  /** A suggested anchor must do better by this [m] and this part of the limb [1]. */
  private static final double SUGGESTED_BRINGS = 0.002;

  private static final double SUGGESTED_BRINGS_OF_LIMB = 0.02;

  private final ReachRequest request;
  private final TreeStand stand;
  private final Probe probe;
  private final LimbPath path;
  private final Tally tally = new Tally();

  private Reach(ReachRequest request, TreeStand stand, BooleanSupplier stop) {
    this.request = request;
    this.stand = stand;
    probe = new Probe(stand, request.target(), request.kept(), stop);
    path = new LimbPath(stand, request.target().spot());
  }

  /**
   * What can be done.
   *
   * @throws IllegalArgumentException if the place is on no segment, or is cut away
   */
  public static Reached of(ReachRequest request) {
    return of(request, () -> false);
  }

  /**
   * What can be done, unless it is stopped.
   *
   * @param stop asked often, from any thread; true ends the search
   * @throws IllegalArgumentException if the place is on no segment, or is cut away
   * @throws CancellationException if the search was stopped
   */
  public static Reached of(ReachRequest request, BooleanSupplier stop) {
    TreeStand stand = new TreeStand(request.tree(), request.plan(), request.species(), SEARCHING);
    if (!stand.cutting().holds(request.target().spot())) {
      throw new IllegalArgumentException("the place is cut away: " + request.target().spot());
    }
    Optional<Unreachable> held = Hopeless.held(stand, request.target().spot());
    return held.isPresent()
        ? Reached.not(held.get(), 0, 0)
        : new Reach(request, stand, stop).search();
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
    List<TiePlace> places = path.places();
    List<Optional<Wish>> all = places.parallelStream().map(wishes::at).toList();
    for (int n = 0; n < places.size(); n++) {
      TiePlace place = places.get(n);
      List<AnchorPlace> fitting =
          anchors.stream().filter(anchor -> singles.fits(place, anchor)).toList();
      all.get(n).ifPresent(wished::add);
      all.get(n).ifPresent(one -> promises.addAll(singles.promises(one, fitting)));
      spots.add(new DoubleSearch.Spot(place, fitting));
    }
    List<Candidate> found = new ArrayList<>(singles.candidates(promises));
    if (request.wishes().lines() > 1) {
      found.addAll(
          doubles(found, spots, new SingleSearch(probe, sights, new Tally(), mostRisk, start)));
    }
    Found looked = new Found(closely(found, singles), wished, anchors.isEmpty());
    return request.wishes().metals().isEmpty() ? answer(start, looked) : coiled(start, looked);
  }

  /** What was found, and whether there was nothing to tie to. */
  private record Found(List<Candidate> all, List<Wish> wished, boolean noAnchors) {}

  private Reached coiled(Tried start, Found lines) {
    CoilSearch coils = new CoilSearch(request, probe, path, start);
    List<Candidate> tried = coils.candidates(lines.wished, lines.all);
    List<Candidate> wound = tried.stream().filter(one -> brings(one.miss(), start)).toList();
    List<Candidate> both = new ArrayList<>(lines.all);
    both.addAll(wound);
    Reached reached = answer(start, new Found(both, lines.wished, lines.noAnchors));
    return wound.isEmpty() ? reached.withoutCoil(noCoil(coils, tried)) : reached;
  }

  /** The nearest looked at again; the others as they are. */
  private static List<Candidate> closely(List<Candidate> found, SingleSearch search) {
    List<Candidate> sorted = new ArrayList<>(found);
    sorted.sort(Comparator.comparingDouble(Candidate::miss));
    List<Candidate> near = sorted.subList(0, Math.min(CLOSELY, sorted.size()));
    List<Candidate> looked =
        new ArrayList<>(near.parallelStream().map(one -> again(one, search)).toList());
    looked.addAll(sorted.subList(near.size(), sorted.size()));
    return looked;
  }

  private static Candidate again(Candidate one, SingleSearch search) {
    return one.isEased()
        ? one
        : search
            .candidate(one.ties(), TieFinder.CLOSELY)
            .filter(better -> better.miss() < one.miss())
            .orElse(one);
  }

  private List<Candidate> doubles(
      List<Candidate> singles, List<DoubleSearch.Spot> spots, SingleSearch search) {
    DoubleSearch second = new DoubleSearch(probe, search);
    double least = singles.stream().mapToDouble(Candidate::miss).min().orElse(0);
    double worth = Math.max(SECOND_BRINGS, SECOND_BRINGS_PART * least);
    return least <= worth
        ? List.of()
        : singles.stream()
            .sorted(Comparator.comparingDouble(Candidate::miss))
            .limit(FIRSTS)
            .flatMap(first -> second.with(first, spots).stream())
            .filter(both -> both.miss() < least - worth)
            .toList();
  }

  private Reached answer(Tried start, Found looked) {
    List<Candidate> found = looked.all;
    double least = found.stream().mapToDouble(Candidate::miss).min().orElse(start.miss());
    Optional<Reached.MissingAnchor> missing = missingAnchor(looked.wished, least);
    List<Choice> choices = !brings(least, start) ? List.of() : choices(found, start.miss());
    Optional<Unreachable> why =
        choices.isEmpty() ? Optional.of(noLine(looked.noAnchors, missing)) : Optional.empty();
    return new Reached(
        choices, start.miss(), path.length(), tally.counts(), missing, Optional.empty(), why);
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
    Teller teller = new Teller(request, probe);
    List<Choice> choices = new ArrayList<>();
    Chooser.of(found, startMiss, path.length())
        .forEach((one, why) -> teller.told(one, why).ifPresent(choices::add));
    return choices;
  }

  /**
   * A choice with all its lines eased by the same part, until its guessed risk is within another:
   * for a choice that risks more when its risk is drawn than was guessed.
   *
   * @param request what the choice was found for
   * @param allowed the most that breaking may risk as guessed, between 0 and 1 [1]
   * @return the choice itself where it is within; empty where even the slightest pull risks more
   */
  public static Optional<Choice> eased(ReachRequest request, Choice choice, double allowed) {
    if (choice.risk().breaking() <= allowed) {
      return Optional.of(choice);
    }
    TreeStand stand = new TreeStand(request.tree(), request.plan(), request.species(), SEARCHING);
    Probe probe = new Probe(stand, request.target(), request.kept());
    if (choice.bend().isPresent()) {
      LimbPath path = new LimbPath(stand, request.target().spot());
      return probe
          .alone()
          .map(start -> new CoilSearch(request, probe, path, start))
          .flatMap(search -> CoilSearch.within(search, choice, allowed))
          .flatMap(one -> new Teller(request, probe).told(one, choice.why()));
    }
    List<Tie> ties = choice.lines().stream().map(Choice.Line::tie).toList();
    return probe
        .tie(ties)
        .flatMap(tried -> new TieFinder(probe).within(tried, allowed))
        .flatMap(tried -> new Teller(request, probe).eased(tried.ties(), choice));
  }

  /** Whether a miss is worth telling at all. */
  private static boolean brings(double miss, Tried start) {
    return miss <= (1 - NOTHING) * start.miss();
  }

  private static Unreachable noCoil(CoilSearch coils, List<Candidate> all) {
    String nearest =
        all.stream().mapToDouble(Candidate::miss).min().stream()
            .mapToObj(
                miss -> String.format(Locale.ROOT, "; the nearest rests %.1f mm off", 1000 * miss))
            .findFirst()
            .orElse("");
    String found =
        coils.strongest() < 1
            ? String.format(
                Locale.ROOT,
                "no coil holds it: the strongest wire that can be wound stands %.2f times the moment"
                    + " of the bent wood, and needs 1%s",
                coils.strongest(),
                nearest)
            : "no coil brings it much nearer within the risk allowed" + nearest;
    return new Unreachable("no-coil", found, "Use a line, bend less, or allow more risk");
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
