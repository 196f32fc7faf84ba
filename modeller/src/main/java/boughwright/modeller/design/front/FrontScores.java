// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import boughwright.modeller.design.front.SeenTable.Sight;
import boughwright.modeller.design.shape.FrontPose;
import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What poses of a grid score: nearly, by tables of lines of sight from coarse to fine, and truly,
 * each measured but once. For use by any number of threads.
 *
 * <p>Poses are told by the number of their azimuth and the number of their tilt: those toward the
 * viewer follow each other before the next to the right.
 */
final class FrontScores {
  /** Tables, each with twice as many lines of sight each way as the one before (a choice). */
  static final int TABLES = 3;

  /** From line of sight to line of sight in the coarsest, for a fine grid [rad]. */
  private static final double FINE = Math.toRadians(3);

  /** The same for a coarse one, whose own steps are longer [rad]. */
  private static final double COARSE = Math.toRadians(4);

  private final FrontGauge gauge;
  private final FrontRules rules;
  private final FrontGrid grid;
  private final SeenTable seen;

  /** Shape: one per tilt; for the front at azimuth 0. */
  private final Sight[] sights;

  private final PoseAxes[] axes;
  private final Map<Integer, Double> truths = new ConcurrentHashMap<>();

  FrontScores(FrontGauge gauge, FrontRules rules, FrontGrid grid) {
    this.gauge = gauge;
    this.rules = rules;
    this.grid = grid;
    double step = Math.min(COARSE, Math.max(FINE, grid.azimuthStep()));
    seen = new SeenTable(gauge, grid, step, TABLES);
    sights = new Sight[grid.sidewaysCount() * grid.forwardCount()];
    axes = new PoseAxes[sights.length];
    for (int tilt = 0; tilt < sights.length; tilt++) {
      FrontPose pose = grid.pose(0, right(tilt), toward(tilt));
      sights[tilt] = Sight.of(gauge.eye(), pose);
      axes[tilt] = PoseAxes.of(pose);
    }
  }

  int azimuths() {
    return grid.azimuths();
  }

  int tilts() {
    return sights.length;
  }

  int right(int tilt) {
    return tilt / grid.forwardCount();
  }

  int toward(int tilt) {
    return tilt % grid.forwardCount();
  }

  /** By a table, 0 being the coarsest [1]. */
  double nearly(int table, int azimuth, int tilt) {
    double round = grid.azimuth(azimuth);
    return rules.total(
        gauge.values(axes[tilt].fromFurtherRound(round), seen.at(sights[tilt], round, table)));
  }

  /** By all tables, the coarsest first [1]. */
  double[] nearly(int azimuth, int tilt) {
    double[] all = new double[TABLES];
    Arrays.setAll(all, table -> nearly(table, azimuth, tilt));
    return all;
  }

  /** How far a score by a table is from that by the one before, 0 for the coarsest [1]. */
  static double change(double[] nearly, int table) {
    return table == 0 ? 0 : Math.abs(nearly[table] - nearly[table - 1]);
  }

  /** What a pose tells of the tables, besides what is known of them. */
  static TableDoubt told(TableDoubt known, double[] nearly, double truth) {
    TableDoubt more = known;
    for (int table = 0; table < TABLES; table++) {
      more = more.or(table, change(nearly, table), truth - nearly[table]);
    }
    return more;
  }

  /** Measured truly [1]. */
  double truly(int azimuth, int tilt) {
    return truths.computeIfAbsent(
        azimuth * tilts() + tilt,
        pose -> rules.total(gauge.read(grid.pose(azimuth, right(tilt), toward(tilt)))));
  }

  /** How many lines of sight were looked along. */
  int looked() {
    return seen.looked() + truths.size();
  }
}
