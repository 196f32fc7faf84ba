// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.geometry.Direction3;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReferenceArray;

/**
 * What is seen along lines of sight on a lattice of azimuth and elevation, and in between by
 * blending the four around: on the coarsest level the four of a wide net, on each finer one of a
 * net with twice as many lines each way, those of the coarser ones among them. A line is looked
 * along when it is first asked for; any number of threads may ask.
 *
 * <p>However many poses a grid has, their lines of sight all lie in this band round the tree.
 */
final class SeenTable {
  /** Rows reach over the band by this, so that its rim is inside [rad]. */
  private static final double OVER = 1e-9;

  private final int levels;

  private final int columns;
  private final double columnStep;
  private final double lowest;
  private final double rowStep;

  private final int rows;

  /** Shape: rows of elevation, each of all columns of azimuth. */
  private final AtomicReferenceArray<Seen> seen;

  private final FrontGauge gauge;
  private final AtomicInteger looked = new AtomicInteger();

  /**
   * A lattice along which nothing was looked yet.
   *
   * @param step from line to line on the coarsest level, at most [rad]
   * @param levels how many levels
   */
  SeenTable(FrontGauge gauge, FrontGrid grid, double step, int levels) {
    this.gauge = gauge;
    this.levels = levels;
    Band band = Band.of(gauge.eye(), grid);
    int parts = stride(0);
    columns = parts * (int) Math.ceil(2 * Math.PI / step - OVER);
    columnStep = 2 * Math.PI / columns;
    lowest = band.low() - OVER;
    int gaps = parts * Math.max(1, (int) Math.ceil((band.high() + OVER - lowest) / step - OVER));
    rowStep = Math.max((band.high() + OVER - lowest) / gaps, OVER);
    rows = gaps + 1;
    seen = new AtomicReferenceArray<>(columns * rows);
  }

  /** From line to line of a level, in lines of the finest. */
  private int stride(int level) {
    return 1 << (levels - 1 - level);
  }

  private Seen at(int row, int column) {
    int n = row * columns + column;
    Seen there = seen.get(n);
    if (there == null) {
      there = gauge.seen(Direction3.ofAzimuth(column * columnStep, lowest + row * rowStep));
      seen.set(n, there);
      looked.incrementAndGet();
    }
    return there;
  }

  /** How far up and down the lines of sight of a grid look, in the tree's frame [rad]. */
  private record Band(double low, double high) {
    static Band of(Eye eye, FrontGrid grid) {
      double low = Double.POSITIVE_INFINITY;
      double high = Double.NEGATIVE_INFINITY;
      for (int right = 0; right < grid.sidewaysCount(); right++) {
        for (int toward = 0; toward < grid.forwardCount(); toward++) {
          double elevation = elevation(eye.towardViewer(grid.pose(0, right, toward)));
          low = Math.min(low, elevation);
          high = Math.max(high, elevation);
        }
      }
      return new Band(low, high);
    }
  }

  private static double elevation(Direction3 way) {
    return Math.asin(Math.max(-1, Math.min(1, way.z())));
  }

  /** A line of sight as a place on the lattice [rad]. */
  record Sight(double azimuth, double elevation) {
    static Sight of(Eye eye, FrontPose pose) {
      Direction3 way = eye.towardViewer(pose);
      return new Sight(Math.atan2(-way.x(), -way.y()), SeenTable.elevation(way));
    }
  }

  /** What is seen from an azimuth further round than a line of sight, blended on a level. */
  Seen at(Sight sight, double azimuth, int level) {
    int stride = stride(level);
    double column = (sight.azimuth() + azimuth) / (columnStep * stride);
    double floor = Math.floor(column);
    int left = Math.floorMod((int) floor * stride, columns);
    int right = (left + stride) % columns;
    double row = (sight.elevation() - lowest) / (rowStep * stride);
    int under = Math.max(0, Math.min((rows - 1) / stride - 1, (int) row));
    int low = under * stride;
    int high = low + stride;
    return new Seen.Corners(at(low, left), at(low, right), at(high, left), at(high, right))
        .blend(column - floor, row - under);
  }

  /** How many lines of sight were looked along. */
  int looked() {
    return looked.get();
  }
}
