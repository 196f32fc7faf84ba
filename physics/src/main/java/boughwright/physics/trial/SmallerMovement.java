// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.plan.HungWeight;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Skeleton;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;

/** Finds how much less the same plan must pull for a better verdict, by trying it. */
final class SmallerMovement {
  /** A pull below this part of the plan is no longer the same bend [1]. */
  private static final double LEAST = 0.05;

  /** Trials until the part is known to less than a hundredth. */
  private static final int TRIES = 7;

  private final TrialRequest request;
  private final TrialResult full;
  private final Skeleton skeleton;

  SmallerMovement(TrialRequest request, TrialResult full) {
    this.request = request;
    this.full = full;
    skeleton = new Skeleton(request.tree());
  }

  /** A pull that would do, and the pose it makes. */
  record Found(double factor, TrialRequest request, TrialResult result) {}

  /** The largest part of the pull at which the wood allows a level; empty if none does. */
  Optional<Found> reaching(Verdict.Level level, Risk risk) {
    LighterRisk lighter = new LighterRisk(full, risk);
    return largest(result -> VerdictBounds.level(lighter.in(result)).compareTo(level) <= 0);
  }

  /** The largest part of the pull at which there is a pose at all; empty if none does. */
  Optional<Found> holding() {
    return largest(result -> true);
  }

  private Optional<Found> largest(Predicate<TrialResult> enough) {
    Optional<Found> best = tried(LEAST, enough);
    if (best.isEmpty()) {
      return best;
    }
    double low = LEAST;
    double high = 1;
    for (int i = 0; i < TRIES; i++) {
      double middle = (low + high) / 2;
      Optional<Found> next = tried(middle, enough);
      if (next.isPresent()) {
        best = next;
        low = middle;
      } else {
        high = middle;
      }
    }
    return best;
  }

  private Optional<Found> tried(double factor, Predicate<TrialResult> enough) {
    TrialRequest less = ScaledPlan.of(request, factor);
    TrialResult result = Trial.run(less);
    return result.outcome().holds() && enough.test(result)
        ? Optional.of(new Found(factor, less, result))
        : Optional.empty();
  }

  /** The pulls and movements of a smaller one, in words. */
  String words(Found found) {
    List<String> parts = new ArrayList<>();
    for (LineTrial line : found.result.lines()) {
      parts.add(line(line));
    }
    for (Proposal proposal : found.request.proposals()) {
      for (HungWeight hung : proposal.hungWeights()) {
        parts.add(
            format(
                "%.2f kg hung on %s instead of %.2f kg",
                hung.mass(), hung.at().segment(), hung.mass() / found.factor));
      }
    }
    tip(found).ifPresent(parts::add);
    return String.join("; ", parts);
  }

  private String line(LineTrial line) {
    Optional<LineTrial> was =
        full.lines().stream().filter(other -> other.id().equals(line.id())).findFirst();
    String now =
        format(
            "line %s at about %.1f N, %s shorter",
            line.id(), line.tension(), mm(line.shortening()));
    return was.map(
            before ->
                now + format(" (instead of %.1f N, %s)", before.tension(), mm(before.shortening())))
        .orElse(now);
  }

  /** How far the end that moves furthest comes. */
  private Optional<String> tip(Found found) {
    Optional<Segment> furthest =
        request.tree().segments().stream()
            .filter(segment -> found.result.segment(segment.id()).isPresent())
            .max(Comparator.comparingDouble(segment -> moved(found.result, segment)));
    return furthest.map(
        segment -> {
          String now =
              format("the end of %s moves %s", segment.id(), mm(moved(found.result, segment)));
          return full.segment(segment.id()).isPresent()
              ? now + " instead of " + mm(moved(full, segment))
              : now;
        });
  }

  private double moved(TrialResult result, Segment segment) {
    return result.segment(segment.id()).orElseThrow().endMoved(skeleton);
  }

  private static String mm(double metres) {
    double mm = 1000 * metres;
    return format(Math.abs(mm) < 10 ? "%.1f mm" : "%.0f mm", mm);
  }

  private static String format(String pattern, Object... values) {
    return String.format(Locale.ROOT, pattern, values);
  }
}
