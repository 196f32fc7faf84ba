// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.stage;

import boughwright.physics.wood.Creep;

/**
 * How long to wait between two stages: until the pull has fallen by a fifth, and until nine tenths
 * of what a month would let go of is gone. In whole weeks, since no grower counts hours and nothing
 * is lost. Both shares are our choice; growers wait one to three weeks (common practice, no
 * source).
 */
final class StageWait {
  private static final double DAY = 86_400;
  private static final double WEEK = 7 * DAY;
  private static final double MONTH = 30 * DAY;
  private static final double FALLEN = 0.2;
  private static final double OF_A_MONTH = 0.9;

  private StageWait() {}

  /** The wait under a law of creep; a month at most [s]. */
  static double of(Creep creep) {
    if (creep.isNone()) {
      return WEEK;
    }
    double fallen = creep.until(1 - FALLEN);
    double most = creep.until(1 - OF_A_MONTH * (1 - creep.left(MONTH)));
    double wait = Math.min(MONTH, Math.max(fallen, most));
    return WEEK * Math.ceil(wait / WEEK);
  }
}
