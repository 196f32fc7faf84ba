// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.Hold;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Skeleton;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Looks along its limb for another place to tie a guy-line, from where the tip comes as far for
 * less risk: each place is tried with the pull or the shortening that brings the tip as far; the
 * one that stretches the wood least is judged by draws of its own. Whether the line runs free of
 * wood and does not slide is left to the person.
 */
final class MovedLine {
  private static final double[] ALONG = {0.3, 0.65, 1};

  /** Closer to the place of the plan than this is the same place [m]. */
  private static final double SAME_PLACE = 0.01;

  private static final int HALVINGS = 10;

  /** How nearly the tip must come as far [1]. */
  private static final double AS_FAR = 0.03;

  /** No pull beyond this many times the plan's is looked at, nor so much of the line taken up. */
  private static final double MOST_PULL = 4;

  private static final double MOST_TAKEN_UP = 0.5;
  private static final int DRAWS = 1000;

  private final TrialRequest request;
  private final TrialResult full;
  private final Risk risk;
  private final Skeleton skeleton;
  private final Cutting cutting;

  MovedLine(TrialRequest request, TrialResult full, Risk risk) {
    this.request = request;
    this.full = full;
    this.risk = risk;
    skeleton = new Skeleton(request.tree());
    cutting = new Cutting(skeleton, request.plan().cuts());
  }

  private record Tried(GuyLine line, TrialRequest request, TrialResult result, double stretched) {}

  /** In words, the place that is judged better than a level; empty if none was found. */
  Optional<String> words(Verdict.Level level) {
    return request.proposals().stream()
        .flatMap(proposal -> proposal.guyLines().stream())
        .filter(this::isOnTheLimbThatBreaks)
        .flatMap(line -> places(line).stream().flatMap(spot -> tied(line, spot).stream()))
        .min(Comparator.comparingDouble(Tried::stretched))
        .flatMap(found -> judged(found, level));
  }

  private boolean isOnTheLimbThatBreaks(GuyLine line) {
    int limb = Limbs.rootOf(skeleton, skeleton.indexOf(line.at().segment()));
    return risk.failures().stream()
        .filter(failure -> failure.mode() != FailureMode.KINK)
        .flatMap(failure -> failure.place().stream())
        .findFirst()
        .filter(place -> Limbs.rootOf(skeleton, skeleton.indexOf(place.segment())) == limb)
        .isPresent();
  }

  private List<Spot> places(GuyLine line) {
    int at = skeleton.indexOf(line.at().segment());
    Point3 now = skeleton.point(at, line.at().along());
    List<Spot> places = new ArrayList<>();
    for (int i : Limbs.segmentsWith(skeleton, at)) {
      for (double along : ALONG) {
        boolean bends = along * skeleton.length(i) > skeleton.collar(i);
        boolean elsewhere = skeleton.point(i, along).distance(now) > SAME_PLACE;
        if (bends && elsewhere && along <= cutting.left(i)) {
          places.add(new Spot(skeleton.segment(i).id(), along));
        }
      }
    }
    return places;
  }

  /** The line tied elsewhere so that the tip comes as far; empty where it does not. */
  private Optional<Tried> tied(GuyLine line, Spot spot) {
    String tip = tip(line);
    double wanted = moved(full, tip);
    double low = 0;
    double high = most(line, spot);
    Optional<Tried> best = Optional.empty();
    for (int n = 0; n < HALVINGS; n++) {
      double middle = (low + high) / 2;
      TrialRequest other = with(line, spot, middle);
      TrialResult result = Trial.run(other);
      if (!result.outcome().holds() || moved(result, tip) > wanted) {
        high = middle;
      } else {
        low = middle;
      }
      if (result.outcome().holds() && Math.abs(moved(result, tip) / wanted - 1) < AS_FAR) {
        best = Optional.of(new Tried(line, other, result, stretched(result)));
      }
    }
    return best;
  }

  /** The end of the limb's segment that moves most. */
  private String tip(GuyLine line) {
    return Limbs.segmentsWith(skeleton, skeleton.indexOf(line.at().segment())).stream()
        .map(i -> skeleton.segment(i).id())
        .filter(id -> full.segment(id).isPresent())
        .max(Comparator.comparingDouble(id -> moved(full, id)))
        .orElseThrow();
  }

  private double moved(TrialResult result, String segment) {
    return result.segment(segment).orElseThrow().endMoved(skeleton);
  }

  private static double stretched(TrialResult result) {
    return result.segments().stream()
        .flatMap(segment -> segment.samples().stream())
        .mapToDouble(PathSample::tensionStrain)
        .max()
        .orElse(0);
  }

  private double most(GuyLine line, Spot spot) {
    if (line.hold() instanceof Hold.Tension tension) {
      return MOST_PULL * tension.newtons();
    }
    Point3 at = skeleton.point(skeleton.indexOf(spot.segment()), spot.along());
    LineTrial now =
        full.lines().stream().filter(one -> one.id().equals(line.id())).findFirst().orElseThrow();
    return MOST_TAKEN_UP * at.distance(now.anchor());
  }

  private TrialRequest with(GuyLine line, Spot spot, double amount) {
    Hold hold =
        line.hold() instanceof Hold.Tension
            ? new Hold.Tension(amount)
            : new Hold.Shortening(amount);
    GuyLine other = line.with(spot, line.anchor(), hold);
    return request.changing(proposal -> proposal.withLines(one -> one.equals(line) ? other : one));
  }

  private Optional<String> judged(Tried found, Verdict.Level level) {
    RiskOptions options = new RiskOptions(Math.min(DRAWS, risk.samples()), risk.seed(), part -> {});
    Optional<RiskSum> sum = RiskTrial.run(found.request, options).risk().map(RiskSum::of);
    return sum.filter(one -> VerdictBounds.level(one).compareTo(level) < 0)
        .map(one -> said(found, one));
  }

  private String said(Tried found, RiskSum sum) {
    LineTrial line =
        found.result.lines().stream()
            .filter(one -> one.id().equals(found.line.id()))
            .findFirst()
            .orElseThrow();
    Spot spot =
        found.request.proposals().stream()
            .flatMap(proposal -> proposal.guyLines().stream())
            .filter(one -> one.id().equals(found.line.id()))
            .findFirst()
            .orElseThrow()
            .at();
    return String.format(
        Locale.ROOT,
        "Line %s moved to %.0f %% along %s, at about %.1f N, %.0f mm shorter: the end of %s comes as"
            + " far, and breaking in any way is %s. See that it runs free of wood and does not"
            + " slide.",
        line.id(),
        100 * spot.along(),
        spot.segment(),
        line.tension(),
        1000 * line.shortening(),
        tip(found.line),
        Odds.words(sum.probability()));
  }
}
