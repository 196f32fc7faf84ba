// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;

/**
 * Finds the fronts that a look at every pose of a grid would find, much sooner.
 *
 * <p>What is seen depends on the line of sight alone, so that a table of lines of sight tells
 * nearly what every pose scores. Where a pose might then be among the answer, within what the table
 * was found to be off, finer tables are asked; where they leave it open, the pose is measured
 * truly, and those measured truly decide.
 */
public final class FrontSearch {
  /** Poses of either sort measured truly to learn how far a table is off. */
  private static final int PROBES = 64;

  /** A table is taken to be off by no more than this many times what was found. */
  private static final double CAUTION = 2;

  /** Rounding alone tells poses of equal worth apart by this much: scores are kept short [1]. */
  private static final double ROUNDING = 1e-7;

  /** Share of the work that is done once every pose is scored nearly. */
  private static final double SCORED = 0.7;

  private final FrontGauge gauge;
  private final FrontRules rules;
  private final FrontGrid grid;
  private final FrontScores scores;

  /** Prepares to search a grid. */
  public FrontSearch(FrontGauge gauge, FrontRules rules, FrontGrid grid) {
    this.gauge = gauge;
    this.rules = rules;
    this.grid = grid;
    scores = new FrontScores(gauge, rules, grid);
  }

  /** The best fronts that differ; empty when it was stopped. */
  public Optional<Fronts> run(FrontWatch watch) {
    FrontMap.Collector collector = new FrontMap.Collector(grid);
    float[][] coarse = coarse(collector, watch);
    if (watch.isStopped()) {
      return Optional.empty();
    }
    TableDoubt taken = probed(coarse).times(CAUTION);
    FrontRefining refining = new FrontRefining(scores, coarse, taken, Fronts.apart(grid));
    Peak[] peaks = refining.run(watch);
    TableDoubt raised = taken.raised(refining.found(), CAUTION);
    while (!raised.isSame(taken) && !watch.isStopped()) {
      taken = raised;
      refining = new FrontRefining(scores, coarse, taken, Fronts.apart(grid));
      peaks = refining.run(watch);
      raised = taken.raised(refining.found(), CAUTION);
    }
    watch.part(1);
    return watch.isStopped()
        ? Optional.empty()
        : Optional.of(
            new FrontSweep.Verdict(gauge, rules, grid)
                .of(
                    peaks,
                    collector.map(),
                    Math.max(taken.above(0, 0), taken.below(0, 0)),
                    scores.looked()));
  }

  /** Scores by the coarsest table; shape: azimuths, then tilts. */
  private float[][] coarse(FrontMap.Collector collector, FrontWatch watch) {
    float[][] coarse = new float[grid.azimuths()][scores.tilts()];
    AtomicInteger done = new AtomicInteger();
    IntStream.range(0, grid.azimuths())
        .parallel()
        .filter(azimuth -> !watch.isStopped())
        .forEach(
            azimuth -> {
              for (int tilt = 0; tilt < scores.tilts(); tilt++) {
                double score = scores.nearly(0, azimuth, tilt);
                coarse[azimuth][tilt] = (float) score;
                collector.add(azimuth, scores.right(tilt), scores.toward(tilt), score);
              }
              watch.part(SCORED * done.incrementAndGet() / grid.azimuths());
            });
    return coarse;
  }

  /** How far the tables are off for poses spread over the grid, and for the likely best. */
  private TableDoubt probed(float[][] coarse) {
    List<Probe> probes =
        IntStream.range(0, 2 * PROBES)
            .parallel()
            .mapToObj(n -> n % 2 == 0 ? spread(n / 2) : best(n / 2, coarse))
            .toList();
    double[] usual = new double[FrontScores.TABLES];
    usual[0] = 1;
    for (int n = 1; n < usual.length; n++) {
      int table = n;
      double squares =
          probes.stream()
              .mapToDouble(one -> Math.pow(FrontScores.change(one.nearly, table), 2))
              .average()
              .orElse(0);
      usual[table] = ROUNDING + Math.sqrt(squares);
    }
    TableDoubt off = TableDoubt.none(usual);
    for (int table = 0; table < usual.length; table++) {
      off = off.or(table, 0, ROUNDING).or(table, 0, -ROUNDING);
    }
    for (Probe probe : probes) {
      off = FrontScores.told(off, probe.nearly, probe.truth);
    }
    return off;
  }

  /** What a pose scores by all tables and truly [1]. */
  private record Probe(double[] nearly, double truth) {}

  private Probe spread(int number) {
    // Steps of the golden section spread probes evenly, however many there are.
    double spread = (number + 0.5) * 0.6180339887498949;
    long pose = (long) ((spread - Math.floor(spread)) * grid.size());
    return probe((int) (pose / scores.tilts()), (int) (pose % scores.tilts()));
  }

  /** What is likely the best tilt of an azimuth: where tables blur a ridge. */
  private Probe best(int number, float[][] coarse) {
    int azimuth = number * grid.azimuths() / PROBES;
    int best = 0;
    for (int tilt = 1; tilt < scores.tilts(); tilt++) {
      best = coarse[azimuth][tilt] > coarse[azimuth][best] ? tilt : best;
    }
    return probe(azimuth, best);
  }

  private Probe probe(int azimuth, int tilt) {
    return new Probe(scores.nearly(azimuth, tilt), scores.truly(azimuth, tilt));
  }
}
