// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;

/** Finds the true best tilt of every azimuth that may be among the answer. Used once. */
final class FrontRefining {
  private final Scores scores;
  private final Blur blur;
  private final FrontMayBe mayBe;
  private final double[] best;
  private final Peak[] peaks;
  private final boolean[] refined;
  private final AtomicReference<Blur> found = new AtomicReference<>(new Blur(0, 0));

  /** Scores a pose of the grid, by the numbers of its azimuth and its tilt. */
  interface Scoring {
    double of(int azimuth, int tilt);
  }

  /**
   * What is known of scores.
   *
   * @param nearly scores by a table; shape: azimuths, then tilts
   * @param finer by a finer table
   * @param exact measured truly
   * @param forward how many tilts follow each other before the next to the right
   */
  record Scores(float[][] nearly, Scoring finer, Scoring exact, int forward) {
    /** How far the tables are off for a pose. */
    Blur off(int azimuth, int tilt) {
      double truth = exact.of(azimuth, tilt);
      return new Blur(
          Math.abs(nearly[azimuth][tilt] - truth), Math.abs(finer.of(azimuth, tilt) - truth));
    }

    Peak peak(int tilt, double score) {
      return new Peak(tilt / forward, tilt % forward, score);
    }
  }

  /**
   * How far tables are off at most.
   *
   * @param table the table [1]
   * @param finer the finer one [1]
   */
  record Blur(double table, double finer) {
    Blur or(Blur other) {
      return new Blur(Math.max(table, other.table), Math.max(finer, other.finer));
    }

    Blur times(double factor) {
      return new Blur(factor * table, factor * finer);
    }
  }

  FrontRefining(Scores scores, Blur blur, int apart) {
    this.scores = scores;
    this.blur = blur;
    mayBe = new FrontMayBe(apart, 2 * blur.table());
    peaks = new Peak[scores.nearly().length];
    refined = new boolean[peaks.length];
    for (int azimuth = 0; azimuth < peaks.length; azimuth++) {
      float[] row = scores.nearly()[azimuth];
      int most = 0;
      for (int n = 1; n < row.length; n++) {
        most = row[n] > row[most] ? n : most;
      }
      peaks[azimuth] = scores.peak(most, row[most]);
    }
    best = Arrays.stream(peaks).mapToDouble(Peak::score).toArray();
  }

  /** The best tilts: true where they may be among the answer, nearly elsewhere. */
  Peak[] run(FrontWatch watch) {
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

  /** A tilt with its score by the finer table. */
  private record Candidate(int tilt, double score) {}

  /** Measures truly what may be the best tilt, the likeliest first. */
  private Peak truePeak(int azimuth) {
    float[] row = scores.nearly()[azimuth];
    double least = peaks[azimuth].score() - 2 * blur.table();
    List<Candidate> candidates = new ArrayList<>();
    for (int n = 0; n < row.length; n++) {
      if (row[n] >= least) {
        candidates.add(new Candidate(n, scores.finer().of(azimuth, n)));
      }
    }
    candidates.sort(Comparator.comparingDouble(one -> -one.score()));
    Peak top = null;
    for (Candidate one : candidates) {
      if (top != null && one.score() + blur.finer() < top.score()) {
        break;
      }
      double truth = scores.exact().of(azimuth, one.tilt());
      Blur off = new Blur(Math.abs(row[one.tilt()] - truth), Math.abs(one.score() - truth));
      found.accumulateAndGet(off, Blur::or);
      top = Peak.better(top, scores.peak(one.tilt(), truth));
    }
    return top;
  }

  /** How far the tables were found to be off on the way. */
  Blur found() {
    return found.get();
  }

  /** Whether a table was further off than was taken for granted. */
  boolean isTooBold() {
    return found().table() > blur.table() || found().finer() > blur.finer();
  }
}
