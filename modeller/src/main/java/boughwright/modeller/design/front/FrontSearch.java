// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import boughwright.modeller.design.front.SeenTable.Sight;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;

/**
 * Finds the fronts that a look at every pose of a grid would find, much sooner.
 *
 * <p>What is seen depends on the line of sight alone, so that a table of lines of sight tells
 * nearly what every pose scores. Where a pose might then be among the answer, within what the table
 * was found to be off, it is measured truly; those measured truly decide.
 */
public final class FrontSearch {
  /** From line of sight to line of sight in the table; coarser only where the grid is [rad]. */
  private static final double TABLE_STEP = Math.toRadians(3);

  /** Poses measured truly to learn how far the table is off. */
  private static final int PROBES = 96;

  /** The table is taken to be off by no more than this many times what the probes showed. */
  private static final double CAUTION = 1.5;

  /** Rounding alone tells poses of equal worth apart by this much [1]. */
  private static final double ROUNDING = 1e-12;

  /** Shares of the work that are done with the table, and with the scores by it. */
  private static final double TABLE_DONE = 0.5;

  private static final double SCORED = 0.8;

  private final FrontGauge gauge;
  private final FrontRules rules;
  private final FrontGrid grid;

  /** Prepares to search a grid. */
  public FrontSearch(FrontGauge gauge, FrontRules rules, FrontGrid grid) {
    this.gauge = gauge;
    this.rules = rules;
    this.grid = grid;
  }

  /** The best fronts that differ; empty when it was stopped. */
  public Optional<Fronts> run(FrontWatch watch) {
    SeenTable table = new SeenTable(gauge, grid, Math.max(TABLE_STEP, grid.azimuthStep()), watch);
    if (watch.isStopped()) {
      return Optional.empty();
    }
    watch.part(TABLE_DONE);
    FrontMap.Collector collector = new FrontMap.Collector(grid);
    float[][] nearly = scored(table, collector, watch);
    if (watch.isStopped()) {
      return Optional.empty();
    }
    double blur = blur(nearly);
    Peak[] peaks = new Refining(nearly, blur).run(watch);
    return watch.isStopped()
        ? Optional.empty()
        : Optional.of(
            new FrontSweep.Verdict(gauge, rules, grid)
                .of(peaks, collector.map(), blur, table.size()));
  }

  /** Scores by the table; shape: azimuths, then tilts to the right, each by tilts toward. */
  private float[][] scored(SeenTable table, FrontMap.Collector collector, FrontWatch watch) {
    int forward = grid.forwardCount();
    Sight[] sights = new Sight[grid.sidewaysCount() * forward];
    for (int n = 0; n < sights.length; n++) {
      sights[n] = Sight.of(gauge.eye(), grid.tiltRight(n / forward), grid.tiltToward(n % forward));
    }
    float[][] scores = new float[grid.azimuths()][sights.length];
    AtomicInteger done = new AtomicInteger();
    IntStream.range(0, grid.azimuths())
        .parallel()
        .filter(azimuth -> !watch.isStopped())
        .forEach(
            azimuth -> {
              for (int n = 0; n < sights.length; n++) {
                Seen seen = table.at(sights[n], grid.azimuth(azimuth));
                double score =
                    rules.total(gauge.read(grid.pose(azimuth, n / forward, n % forward), seen));
                scores[azimuth][n] = (float) score;
                collector.add(azimuth, n / forward, n % forward, score);
              }
              double part = (double) done.incrementAndGet() / grid.azimuths();
              watch.part(TABLE_DONE + part * (SCORED - TABLE_DONE));
            });
    return scores;
  }

  private double exact(int azimuth, int n) {
    int forward = grid.forwardCount();
    return rules.total(gauge.read(grid.pose(azimuth, n / forward, n % forward)));
  }

  /** How far the table is off, by poses spread over the grid [1]. */
  private double blur(float[][] nearly) {
    long size = grid.size();
    int tilts = nearly[0].length;
    double most =
        IntStream.range(0, PROBES)
            .parallel()
            .mapToDouble(
                probe -> {
                  // Steps of the golden section spread probes evenly, however many there are.
                  double spread = (probe + 0.5) * 0.6180339887498949;
                  long pose = (long) ((spread - Math.floor(spread)) * size);
                  int azimuth = (int) (pose / tilts);
                  int n = (int) (pose % tilts);
                  return Math.abs(exact(azimuth, n) - nearly[azimuth][n]);
                })
            .max()
            .orElse(0);
    return CAUTION * most + ROUNDING;
  }

  /** Finds the true best tilt of every azimuth that may be among the answer. */
  private final class Refining {
    private final float[][] nearly;
    private final double blur;
    private final double[] best;
    private final Peak[] peaks;
    private final boolean[] refined;

    Refining(float[][] nearly, double blur) {
      this.nearly = nearly;
      this.blur = blur;
      peaks = new Peak[grid.azimuths()];
      refined = new boolean[peaks.length];
      for (int azimuth = 0; azimuth < peaks.length; azimuth++) {
        peaks[azimuth] = roughPeak(nearly[azimuth]);
      }
      best = Arrays.stream(peaks).mapToDouble(Peak::score).toArray();
    }

    private Peak roughPeak(float[] scores) {
      int most = 0;
      for (int n = 1; n < scores.length; n++) {
        most = scores[n] > scores[most] ? n : most;
      }
      return new Peak(most / grid.forwardCount(), most % grid.forwardCount(), scores[most]);
    }

    Peak[] run(FrontWatch watch) {
      FrontMayBe mayBe = new FrontMayBe(Fronts.apart(grid), 2 * blur);
      int[] open = mayBe.open(best, refined);
      while (open.length > 0 && !watch.isStopped()) {
        Arrays.stream(open).parallel().forEach(azimuth -> peaks[azimuth] = truePeak(azimuth));
        for (int azimuth : open) {
          refined[azimuth] = true;
          best[azimuth] = peaks[azimuth].score();
        }
        open = mayBe.open(best, refined);
      }
      return peaks;
    }

    /** Measures truly what may be the best tilt, the likeliest first. */
    private Peak truePeak(int azimuth) {
      float[] scores = nearly[azimuth];
      int forward = grid.forwardCount();
      Peak rough = peaks[azimuth];
      int first = rough.right() * forward + rough.toward();
      Peak top = new Peak(rough.right(), rough.toward(), exact(azimuth, first));
      for (int n = 0; n < scores.length; n++) {
        if (n != first && scores[n] + blur >= top.score()) {
          top = Peak.better(top, new Peak(n / forward, n % forward, exact(azimuth, n)));
        }
      }
      return top;
    }
  }
}
