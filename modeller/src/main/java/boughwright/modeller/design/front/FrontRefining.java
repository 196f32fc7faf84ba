// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;

/**
 * Finds the true best tilt of every azimuth that may be among the answer: from table to table, each
 * azimuth only as far as is needed to leave it out. Used once.
 */
final class FrontRefining {
  /** The step after the finest table: measured truly. */
  private static final int TRULY = FrontScores.TABLES;

  private final FrontScores scores;

  /** Scores by the coarsest table; shape: azimuths, then tilts. */
  private final float[][] coarse;

  private final TableDoubt doubt;
  private final FrontMayBe mayBe;

  /** Shape: one per azimuth. */
  private final Known[] known;

  private final AtomicReference<TableDoubt> found;

  /**
   * What a tilt scores, and that it truly scores no less than one value and no more than another.
   */
  private record Scored(int tilt, double score, double least, double most) {}

  /**
   * What is known of an azimuth.
   *
   * @param table by which table, or {@link #TRULY}
   * @param tilts those that may be the best
   * @param best the best of them
   * @param range where its true score lies
   */
  private record Known(int table, List<Scored> tilts, Scored best, FrontMayBe.Range range) {
    /** Leaves out what cannot be the best. */
    static Known of(int table, List<Scored> all) {
      double least = all.stream().mapToDouble(Scored::least).max().orElse(Double.NaN);
      List<Scored> tilts = all.stream().filter(one -> one.most() >= least).toList();
      Scored best = new Scored(0, Double.NaN, Double.NaN, Double.NaN);
      double most = Double.NEGATIVE_INFINITY;
      for (Scored one : tilts) {
        best = best.score >= one.score ? best : one;
        most = Math.max(most, one.most());
      }
      return new Known(table, tilts, best, new FrontMayBe.Range(best.score, least, most));
    }
  }

  /**
   * @param coarse scores by the coarsest table; shape: azimuths, then tilts
   * @param apart so many steps two picked azimuths differ at least
   */
  FrontRefining(FrontScores scores, float[][] coarse, TableDoubt doubt, int apart) {
    this.scores = scores;
    this.coarse = coarse;
    this.doubt = doubt;
    mayBe = new FrontMayBe(apart);
    known = new Known[coarse.length];
    Arrays.setAll(known, this::byCoarse);
    found = new AtomicReference<>(doubt.none());
  }

  private Known byCoarse(int azimuth) {
    float[] row = coarse[azimuth];
    double above = doubt.above(0, 0);
    double below = doubt.below(0, 0);
    double most = Double.NEGATIVE_INFINITY;
    for (float score : row) {
      most = Math.max(most, score);
    }
    List<Scored> tilts = new ArrayList<>();
    for (int tilt = 0; tilt < row.length; tilt++) {
      if (row[tilt] + above >= most - below) {
        tilts.add(new Scored(tilt, row[tilt], row[tilt] - below, row[tilt] + above));
      }
    }
    return Known.of(0, tilts);
  }

  /** The best tilts: true where they may be among the answer, nearly elsewhere. */
  Peak[] run(FrontWatch watch) {
    int[] open = open();
    while (open.length > 0 && !watch.isStopped()) {
      Arrays.stream(open)
          .parallel()
          .filter(azimuth -> !watch.isStopped())
          .forEach(azimuth -> known[azimuth] = closer(azimuth));
      open = open();
    }
    return Arrays.stream(known).map(one -> peak(one.best)).toArray(Peak[]::new);
  }

  private Peak peak(Scored best) {
    return new Peak(scores.right(best.tilt), scores.toward(best.tilt), best.score);
  }

  /** Those that are picked first: once they are known truly, fewer others may be better. */
  private int[] open() {
    FrontMayBe.Range[] ranges =
        Arrays.stream(known).map(Known::range).toArray(FrontMayBe.Range[]::new);
    int[] picked = notTrue(mayBe.picked(ranges));
    return picked.length > 0 ? picked : notTrue(mayBe.open(ranges));
  }

  private int[] notTrue(int[] azimuths) {
    return Arrays.stream(azimuths).filter(azimuth -> known[azimuth].table != TRULY).toArray();
  }

  private Known closer(int azimuth) {
    Known before = known[azimuth];
    return before.table == TRULY - 1 ? truly(azimuth, before) : byNext(azimuth, before);
  }

  /** By the next table, with the tilts that may still be the best. */
  private Known byNext(int azimuth, Known before) {
    int table = before.table + 1;
    List<Scored> next = new ArrayList<>();
    for (Scored one : before.tilts) {
      double score = scores.nearly(table, azimuth, one.tilt);
      double change = Math.abs(score - one.score);
      next.add(
          new Scored(
              one.tilt,
              score,
              score - doubt.below(table, change),
              score + doubt.above(table, change)));
    }
    return Known.of(table, next);
  }

  /** Measures truly what may be the best tilt, the likeliest first. */
  private Known truly(int azimuth, Known before) {
    List<Scored> order = new ArrayList<>(before.tilts);
    order.sort(Comparator.comparingDouble(one -> -one.most()));
    List<Scored> truths = new ArrayList<>();
    double top = Double.NEGATIVE_INFINITY;
    for (Scored one : order) {
      if (one.most() < top) {
        break;
      }
      double truth = scores.truly(azimuth, one.tilt);
      learn(azimuth, one.tilt, truth);
      truths.add(new Scored(one.tilt, truth, truth, truth));
      top = Math.max(top, truth);
    }
    return Known.of(TRULY, truths);
  }

  private void learn(int azimuth, int tilt, double truth) {
    double[] nearly = scores.nearly(azimuth, tilt);
    found.accumulateAndGet(FrontScores.told(doubt.none(), nearly, truth), TableDoubt::or);
  }

  /** How far the tables were found to be off on the way. */
  TableDoubt found() {
    return found.get();
  }
}
