// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Finds how far given lines are to be drawn in. */
final class TieFinder {
  /** A first look: to a fifth of a millimetre. */
  static final Fit.Effort LOOK = new Fit.Effort(4, 10, 2e-4);

  /** For lines that are looked at again: far below what a person sees. */
  static final Fit.Effort CLOSELY = new Fit.Effort(12, 40, 1e-5);

  /** Step of a shortening over which slopes are taken, less than the least shortening [m]. */
  private static final double STEP = 3e-4;

  /** No line is drawn in by more than this part of its length [1]. */
  private static final double MOST_PART = 0.95;

  /** How often a start that does not hold is halved. */
  private static final int HALVINGS = 6;

  private final Probe probe;

  TieFinder(Probe probe) {
    this.probe = probe;
  }

  /** The lines drawn in so that the target is nearest; empty where no pose holds. */
  Optional<Tried> nearest(List<Tie> start, Fit.Effort effort) {
    double[] low = new double[start.size()];
    double[] high = new double[start.size()];
    double[] step = new double[start.size()];
    double[] from = new double[start.size()];
    for (int k = 0; k < start.size(); k++) {
      double rest = probe.restLength(start.get(k).place(), start.get(k).anchor());
      high[k] = MOST_PART * rest;
      low[k] = LineLimits.LEAST_SHORTENING;
      step[k] = STEP;
      from[k] = start.get(k).shortening();
    }
    Fit.Box box = new Fit.Box(low, high, step);
    from = box.inside(from);
    for (int halving = 0; halving <= HALVINGS; halving++) {
      if (probe.tie(by(start, from)).isPresent()) {
        double[] best = Fit.of(x -> probe.tie(by(start, x)).map(Tried::missing), box, effort, from);
        return probe.tie(by(start, best));
      }
      from = box.inside(Arrays.stream(from).map(x -> x / 2).toArray());
    }
    return Optional.empty();
  }

  private static List<Tie> by(List<Tie> ties, double[] shortenings) {
    List<Tie> drawn = new ArrayList<>();
    for (int k = 0; k < ties.size(); k++) {
      drawn.add(ties.get(k).by(shortenings[k]));
    }
    return drawn;
  }

  /** All lines eased by the same part of their shortening. */
  static List<Tie> eased(List<Tie> ties, double part) {
    return ties.stream().map(tie -> tie.by(part * tie.shortening())).toList();
  }

  /**
   * A pose eased, all lines by the same part, to the nearest that keeps within a risk.
   *
   * @param tried a pose that holds and risks more
   * @param mostRisk the most that any breaking may risk, between 0 and 1 [1]
   * @return empty where even the slightest pull risks more
   */
  Optional<Tried> within(Tried tried, double mostRisk) {
    double least = LineLimits.LEAST_SHORTENING / mostShortened(tried.ties());
    return Easing.part(part -> breaking(eased(tried.ties(), part)), least, mostRisk).stream()
        .boxed()
        .findFirst()
        .flatMap(part -> probe.tie(eased(tried.ties(), part)));
  }

  private OptionalDouble breaking(List<Tie> ties) {
    return probe.tie(ties).stream().mapToDouble(pose -> pose.stood().risk().breaking()).findFirst();
  }

  private static double mostShortened(List<Tie> ties) {
    return ties.stream().mapToDouble(Tie::shortening).max().orElseThrow();
  }
}
