// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Anchor;
import boughwright.physics.trial.RiskGuess;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Finds what one line can do: each place, each anchor, how far drawn in. */
final class SingleSearch {
  /** At each place the anchors that promise most are tried in full, this many (a choice). */
  private static final int TRIED_PER_PLACE = 8;

  /** Lines tried before it is looked again which of the others promise enough. */
  private static final int AT_A_TIME = 8;

  /** Lines are tried that promise a miss up to so many times the least found (a choice) [1]. */
  private static final double FAR_OFF = 2;

  /** And up to this part of the way more [1]. */
  private static final double FAR_OFF_BY = 0.15;

  private final Probe probe;
  private final TieFinder finder;
  private final Sights sights;
  private final Tally tally;
  private final double mostRisk;
  private final double startMiss;

  /**
   * A search.
   *
   * @param start the tree before any line is tied
   */
  SingleSearch(Probe probe, Sights sights, Tally tally, double mostRisk, Tried start) {
    this.probe = probe;
    finder = new TieFinder(probe);
    this.sights = sights;
    this.tally = tally;
    this.mostRisk = mostRisk;
    startMiss = start.miss();
  }

  /** A pair with what is expected of it. */
  record Promise(Tie tie, double miss) {}

  /** Whether a line can be there at all, as measured; a reason is counted where not. */
  boolean fits(TiePlace place, AnchorPlace anchor) {
    Optional<Reason> reason = misfit(place, anchor);
    reason.ifPresent(tally::note);
    return reason.isEmpty();
  }

  private Optional<Reason> misfit(TiePlace place, AnchorPlace anchor) {
    double rest = probe.restLength(place, anchor);
    if (rest < LineLimits.SHORTEST) {
      return Optional.of(Reason.TOO_SHORT);
    }
    if (rest > LineLimits.LONGEST) {
      return Optional.of(Reason.TOO_LONG);
    }
    if (!isStiff(place, anchor)) {
      return Optional.of(Reason.NOT_STIFF);
    }
    return sights.isBlocked(place, anchor) ? Optional.of(Reason.BLOCKED) : Optional.empty();
  }

  private boolean isStiff(TiePlace place, AnchorPlace anchor) {
    return !(anchor.anchor() instanceof Anchor.OnTree tree)
        || probe.stand().compliance(tree.spot())
            <= LineLimits.ANCHOR_COMPLIANCE * place.compliance();
  }

  /**
   * What is to be expected of lines at a place.
   *
   * @param wish the pull that the place would need
   * @param anchors the anchors that fit
   */
  List<Promise> promises(Wish wish, List<AnchorPlace> anchors) {
    List<Promise> promises = new ArrayList<>();
    for (AnchorPlace anchor : anchors) {
      promise(wish, anchor).ifPresentOrElse(promises::add, () -> tally.note(Reason.WRONG_WAY));
    }
    promises.sort(Comparator.comparingDouble(Promise::miss));
    return promises.subList(0, Math.min(TRIED_PER_PLACE, promises.size()));
  }

  /**
   * What single lines do, those that promise most first, as long as they promise enough. Some are
   * tried at a time; the answer does not depend on the number of processors.
   */
  List<Candidate> candidates(List<Promise> promises) {
    List<Candidate> found = new ArrayList<>();
    List<Promise> sorted =
        promises.stream().sorted(Comparator.comparingDouble(Promise::miss)).toList();
    for (int from = 0; from < sorted.size(); from += AT_A_TIME) {
      double least =
          Math.min(startMiss, found.stream().mapToDouble(Candidate::miss).min().orElse(startMiss));
      double enough = FAR_OFF * least + FAR_OFF_BY * startMiss;
      sorted.subList(from, Math.min(sorted.size(), from + AT_A_TIME)).stream()
          .filter(promise -> promise.miss() < enough)
          .toList()
          .parallelStream()
          .map(promise -> candidate(List.of(promise.tie), TieFinder.LOOK))
          .toList()
          .forEach(one -> one.ifPresent(found::add));
    }
    return found;
  }

  private Optional<Promise> promise(Wish wish, AnchorPlace anchor) {
    double rest = probe.restLength(wish.place(), anchor);
    return wish.toward(anchor.at())
        .map(
            guess -> {
              double drawn = rest - guess.at().distance(anchor.at());
              double shortening = Math.max(2 * LineLimits.LEAST_SHORTENING, drawn);
              return new Promise(new Tie(wish.place(), anchor, shortening), guess.miss());
            });
  }

  /** What lines do at their best within the risk; empty, and counted, where they are no choice. */
  Optional<Candidate> candidate(List<Tie> start, Fit.Effort effort) {
    Optional<Tried> best = finder.nearest(start, effort);
    if (best.isEmpty()) {
      tally.note(Reason.NO_POSE);
      return Optional.empty();
    }
    Optional<Tried> allowed = best;
    if (best.get().stood().risk().breaking() > mostRisk) {
      allowed = finder.within(best.get(), mostRisk);
      if (allowed.isEmpty()) {
        tally.note(Reason.TOO_RISKY);
        return Optional.empty();
      }
    }
    Optional<Reason> reason = fault(allowed.get());
    reason.ifPresent(tally::note);
    return reason.isPresent() ? Optional.empty() : Optional.of(of(allowed.get(), best.get()));
  }

  private Candidate of(Tried allowed, Tried best) {
    RiskGuess risk = allowed.stood().risk();
    double pull = 0;
    for (int k = 0; k < allowed.ties().size(); k++) {
      pull = Math.max(pull, probe.tension(allowed, k));
    }
    return new Candidate(allowed, risk, pull, best.miss());
  }

  /** Why a pose is no choice after all. */
  private Optional<Reason> fault(Tried tried) {
    for (int k = 0; k < tried.ties().size(); k++) {
      Tie tie = tried.ties().get(k);
      boolean loose =
          tie.shortening() < LineLimits.LEAST_SHORTENING
              || probe.tension(tried, k) < LineLimits.LEAST_PULL;
      if (loose || !(tried.miss() < startMiss)) {
        return Optional.of(Reason.WRONG_WAY);
      }
      if (angle(tried, tie) < LineLimits.LEAST_ANGLE) {
        return Optional.of(Reason.SLIDES);
      }
    }
    return sights.isBlocked(tried) ? Optional.of(Reason.BLOCKED_BENT) : Optional.empty();
  }

  /** The angle between a line and the axis of the branch where it holds, 0 to a right angle. */
  static double angle(Tried tried, Tie tie) {
    Vector3 line =
        Probe.anchorIn(tried.stood(), tie.anchor()).minus(tried.stood().point(tie.place().spot()));
    double turned = tried.stood().direction(tie.place().spot()).angleTo(line.direction());
    return Math.min(turned, Math.PI - turned);
  }
}
