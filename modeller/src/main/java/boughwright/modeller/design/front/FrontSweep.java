// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;

/**
 * Measures and scores every pose of a grid, one by one. Slow: what {@link FrontSearch} finds is
 * checked against it.
 */
public final class FrontSweep {
  private final FrontGauge gauge;
  private final FrontRules rules;
  private final FrontGrid grid;

  /** Prepares to look at every pose of a grid. */
  public FrontSweep(FrontGauge gauge, FrontRules rules, FrontGrid grid) {
    this.gauge = gauge;
    this.rules = rules;
    this.grid = grid;
  }

  /** The best fronts that differ; empty when it was stopped. */
  public Optional<Fronts> run(FrontWatch watch) {
    FrontMap.Collector collector = new FrontMap.Collector(grid);
    Peak[] peaks = new Peak[grid.azimuths()];
    AtomicInteger done = new AtomicInteger();
    IntStream.range(0, grid.azimuths())
        .parallel()
        .forEach(
            azimuth -> {
              peaks[azimuth] = peak(azimuth, collector, watch);
              watch.part((double) done.incrementAndGet() / grid.azimuths());
            });
    return watch.isStopped()
        ? Optional.empty()
        : Optional.of(new Verdict(gauge, rules, grid).of(peaks, collector.map(), 0, grid.size()));
  }

  private Peak peak(int azimuth, FrontMap.Collector collector, FrontWatch watch) {
    Peak best = null;
    for (int right = 0; right < grid.sidewaysCount() && !watch.isStopped(); right++) {
      for (int toward = 0; toward < grid.forwardCount(); toward++) {
        double score = rules.total(gauge.read(grid.pose(azimuth, right, toward)));
        collector.add(azimuth, right, toward, score);
        best = Peak.better(best, new Peak(right, toward, score));
      }
    }
    return best;
  }

  /** Picks the fronts from the best tilt of each azimuth. */
  record Verdict(FrontGauge gauge, FrontRules rules, FrontGrid grid) {
    Fronts of(Peak[] peaks, FrontMap map, double blur, long looked) {
      double[] best = Arrays.stream(peaks).mapToDouble(Peak::score).toArray();
      List<FrontScore> scores = new ArrayList<>();
      List<Boolean> tops = new ArrayList<>();
      for (FrontPicker.Side side : new FrontPicker(best, Fronts.apart(grid)).pick(Fronts.MOST)) {
        if (!Double.isNaN(best[side.azimuth()])) {
          scores.add(score(side.azimuth(), peaks));
          tops.add(side.top());
        }
      }
      int worst = 0;
      for (int azimuth = 1; azimuth < best.length; azimuth++) {
        worst = best[azimuth] < best[worst] ? azimuth : worst;
      }
      return new Fronts(Fronts.compared(scores, tops), score(worst, peaks), map, blur, looked);
    }

    private FrontScore score(int azimuth, Peak[] peaks) {
      Peak peak = peaks[azimuth];
      return rules.score(gauge.read(grid.pose(azimuth, peak.right(), peak.toward())));
    }
  }
}
