// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.physics.wood.Doubt;
import boughwright.physics.wood.SegmentWood;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;

/** What the wood bears along the segments that are bent, to be drawn beside its strains. */
final class LimitSampler {
  private static final int PER_SEGMENT = 8;

  private final Timber timber;
  private final WoodState state;

  LimitSampler(Attempt best, WoodState state) {
    timber = best.rods().timber();
    this.state = state;
  }

  /** Limits along segments, from the place where each begins to bend to its end. */
  List<LimitSample> along(List<Integer> segments) {
    List<LimitSample> out = new ArrayList<>();
    for (int i : segments) {
      if (!timber.wood(i).isElastic()) {
        for (int k = 0; k <= PER_SEGMENT; k++) {
          double from = timber.bendsFrom(i);
          out.add(at(i, from + (timber.end(i) - from) * k / PER_SEGMENT));
        }
      }
    }
    return out;
  }

  private LimitSample at(int i, double s) {
    SegmentWood wood = timber.wood(i);
    double crack = state.crackStrain(i, wood, timber.woodRadius(i, s));
    double kink = state.prior().kinkOverYield() * wood.yieldStrain();
    return new LimitSample(
        state.skeleton().segment(i).id(),
        Math.min(1, s / state.skeleton().length(i)),
        range(crack, state.prior().crack()),
        range(kink, state.prior().kink()),
        wood.yieldStrain());
  }

  /** The range that holds nine in ten of a lognormal. */
  static Range range(double median, Doubt doubt) {
    double factor = Math.exp(Readings.NINE_IN_TEN * doubt.total());
    return new Range(median / factor, median, median * factor);
  }

  /** The range that holds the middle nine in ten of some numbers. */
  static Range range(double[] numbers) {
    Percentile percentile = new Percentile();
    percentile.setData(numbers);
    return new Range(percentile.evaluate(5), percentile.evaluate(50), percentile.evaluate(95));
  }
}
