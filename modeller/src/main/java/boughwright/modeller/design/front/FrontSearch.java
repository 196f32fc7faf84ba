// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import boughwright.modeller.design.front.SeenTable.Sight;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;

/**
 * Finds the fronts that a look at every pose of a grid would find, much sooner.
 *
 * <p>What is seen depends on the line of sight alone, so that a table of lines of sight tells
 * nearly what every pose scores. Where a pose might then be among the answer, within what the table
 * was found to be off, a finer table is asked; where that leaves it open, the pose is measured
 * truly, and those measured truly decide.
 */
public final class FrontSearch {
  /** From line of sight to line of sight in the table, for a fine grid [rad]. */
  private static final double FINE = Math.toRadians(3);

  /** The same for a coarse one, whose own steps are longer [rad]. */
  private static final double COARSE = Math.toRadians(4);

  /** The same in the finer table, of which only a part is ever looked along [rad]. */
  private static final double FINER = Math.toRadians(0.75);

  /** Poses measured truly to learn how far a table is off. */
  private static final int PROBES = 64;

  /** A table is taken to be off by no more than this many times what the probes showed. */
  private static final double CAUTION = 2;

  /** Rounding alone tells poses of equal worth apart by this much [1]. */
  private static final double ROUNDING = 1e-9;

  /** Share of the work that is done once every pose is scored nearly. */
  private static final double SCORED = 0.7;

  private final FrontGauge gauge;
  private final FrontRules rules;
  private final FrontGrid grid;
  private final Sight[] sights;

  /** Prepares to search a grid. */
  public FrontSearch(FrontGauge gauge, FrontRules rules, FrontGrid grid) {
    this.gauge = gauge;
    this.rules = rules;
    this.grid = grid;
    int forward = grid.forwardCount();
    sights = new Sight[grid.sidewaysCount() * forward];
    for (int n = 0; n < sights.length; n++) {
      sights[n] = Sight.of(gauge.eye(), grid.tiltRight(n / forward), grid.tiltToward(n % forward));
    }
  }

  /** The best fronts that differ; empty when it was stopped. */
  public Optional<Fronts> run(FrontWatch watch) {
    double step = Math.min(COARSE, Math.max(FINE, grid.azimuthStep()));
    SeenTable table = new SeenTable(gauge, grid, step);
    FrontMap.Collector collector = new FrontMap.Collector(grid);
    float[][] nearly = scored(table, collector, watch);
    if (watch.isStopped()) {
      return Optional.empty();
    }
    SeenTable finer = new SeenTable(gauge, grid, FINER);
    FrontRefining.Scores scores =
        new FrontRefining.Scores(
            nearly, (azimuth, n) -> by(finer, azimuth, n), this::exact, grid.forwardCount());
    FrontRefining.Blur blur = blur(scores);
    FrontRefining refining = new FrontRefining(scores, blur, Fronts.apart(grid));
    Peak[] peaks = refining.run(watch);
    while (!watch.isStopped() && refining.isTooBold()) {
      blur = refining.found().times(CAUTION);
      refining = new FrontRefining(scores, blur, Fronts.apart(grid));
      peaks = refining.run(watch);
    }
    watch.part(1);
    return watch.isStopped()
        ? Optional.empty()
        : Optional.of(
            new FrontSweep.Verdict(gauge, rules, grid)
                .of(peaks, collector.map(), blur.table(), table.looked() + finer.looked()));
  }

  /** Scores by the table; shape: azimuths, then tilts to the right, each by tilts toward. */
  private float[][] scored(SeenTable table, FrontMap.Collector collector, FrontWatch watch) {
    int forward = grid.forwardCount();
    float[][] scores = new float[grid.azimuths()][sights.length];
    AtomicInteger done = new AtomicInteger();
    IntStream.range(0, grid.azimuths())
        .parallel()
        .filter(azimuth -> !watch.isStopped())
        .forEach(
            azimuth -> {
              for (int n = 0; n < sights.length; n++) {
                double score = by(table, azimuth, n);
                scores[azimuth][n] = (float) score;
                collector.add(azimuth, n / forward, n % forward, score);
              }
              watch.part(SCORED * done.incrementAndGet() / grid.azimuths());
            });
    return scores;
  }

  private double by(SeenTable table, int azimuth, int n) {
    Seen seen = table.at(sights[n], grid.azimuth(azimuth));
    int forward = grid.forwardCount();
    return rules.total(gauge.read(grid.pose(azimuth, n / forward, n % forward), seen));
  }

  private double exact(int azimuth, int n) {
    int forward = grid.forwardCount();
    return rules.total(gauge.read(grid.pose(azimuth, n / forward, n % forward)));
  }

  /** How far the tables are off, by poses spread over the grid. */
  private FrontRefining.Blur blur(FrontRefining.Scores scores) {
    return IntStream.range(0, PROBES)
        .parallel()
        .mapToObj(
            probe -> {
              // Steps of the golden section spread probes evenly, however many there are.
              double spread = (probe + 0.5) * 0.6180339887498949;
              long pose = (long) ((spread - Math.floor(spread)) * grid.size());
              return scores.off((int) (pose / sights.length), (int) (pose % sights.length));
            })
        .reduce(new FrontRefining.Blur(ROUNDING, ROUNDING), FrontRefining.Blur::or)
        .times(CAUTION);
  }
}
