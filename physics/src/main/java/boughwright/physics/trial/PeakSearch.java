// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Vector3;
import boughwright.physics.rod.RodPose;
import boughwright.physics.rod.RodSection;
import boughwright.physics.wood.FibreStrains;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;

/** Finds the place of a pose where the wood is bent hardest. */
final class PeakSearch {
  /** Bending strain below which nothing counts as bent [1]. */
  private static final double NOTHING = 1e-12;

  private static final double RELATIVE_PLACE = 1e-6;

  /** Part of an element by which its end is looked at from inside [1]. */
  private static final double JUST_BEFORE = 1e-9;

  private final TreeRods rods;
  private final Timber timber;
  private final RodPose pose;
  private double best = NOTHING;
  private int bestSpan = -1;
  private double bestAt;
  private double low;
  private double high;

  PeakSearch(TreeRods rods, RodPose pose) {
    this.rods = rods;
    this.pose = pose;
    timber = rods.timber();
  }

  /**
   * The place bent hardest, if anything is bent.
   *
   * @param frontAzimuth the azimuth the tree is seen from, for words [rad]
   */
  Optional<Peak> find(double frontAzimuth) {
    for (int span = 0; span < rods.spans().size(); span++) {
      if (pose.loadedTo(span) > 0) {
        scan(span);
      }
    }
    if (bestSpan < 0) {
      return Optional.empty();
    }
    refine();
    return Optional.of(peak(frontAzimuth));
  }

  private void scan(int span) {
    List<Double> stations = pose.stations(span);
    for (int k = 0; k + 1 < stations.size(); k++) {
      double from = stations.get(k);
      double to = stations.get(k + 1);
      for (int q = 0; q <= 2; q++) {
        // at a pad the moment jumps, and the section there is the one beyond it
        double s = q == 2 ? to - JUST_BEFORE * (to - from) : from + (to - from) * q / 2;
        double strain = strain(span, s);
        if (strain > best) {
          best = strain;
          bestSpan = span;
          bestAt = s;
          low = q == 0 ? stations.get(Math.max(0, k - 1)) : from;
          high = q == 2 ? stations.get(Math.min(stations.size() - 1, k + 2)) : to;
        }
      }
    }
  }

  private void refine() {
    BrentOptimizer optimizer = new BrentOptimizer(RELATIVE_PLACE, 1e-9);
    double at =
        optimizer
            .optimize(
                new MaxEval(200),
                new UnivariateObjectiveFunction(s -> strain(bestSpan, s)),
                GoalType.MAXIMIZE,
                new SearchInterval(low, high, bestAt))
            .getPoint();
    if (strain(bestSpan, at) > best) {
      bestAt = at;
      best = strain(bestSpan, at);
    }
  }

  private double strain(int span, double s) {
    TreeRods.Run run = rods.run(span);
    double radius = timber.woodRadius(run.piece().segment(), run.toSegment(s));
    return radius * pose.addedCurvature(span, s);
  }

  private Peak peak(double frontAzimuth) {
    RodSection section = pose.section(bestSpan, bestAt);
    FibreStrains fibres = rods.fibres(bestSpan, bestAt, section);
    Vector3 side = rods.run(bestSpan).frame().turn(PoseReader.stretched(section));
    FailurePlace place = new BarkPlaces(rods, frontAzimuth).place(bestSpan, bestAt, side);
    return new Peak(
        place.segment(),
        place.along(),
        place.fromUnion(),
        place.round(),
        place.side(),
        best,
        fibres.tension(),
        fibres.compression(),
        rods.woodBending(bestSpan, bestAt, section));
  }
}
