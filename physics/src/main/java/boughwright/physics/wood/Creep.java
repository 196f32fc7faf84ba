// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import boughwright.physics.wood.Relaxation.Retarded;
import java.util.List;
import java.util.Objects;
import java.util.stream.DoubleStream;

/**
 * What time does to the fibres of live wood that is held bent: a part that comes back when it is
 * let go, and one that does not.
 *
 * @param recoverable the part that comes back
 * @param set strain that stays for good, over the elastic strain that brought it [1]
 * @param setTime time in which all but 1/e of it has come [s]
 */
public record Creep(Relaxation recoverable, double set, double setTime) {
  private static final double MINUTE = 60;
  private static final double DAY = 86_400;

  /** Nothing creeps. */
  public static final Creep NONE = new Creep(Relaxation.NONE, 0, DAY);

  /**
   * Strain that comes late and goes again, over the instantaneous one, and its standard deviation
   * [1]: 30 to 50 % in living branches of many trees and shrubs (Ray and Bret-Harte 2019, Frontiers
   * in Plant Science 10:59), read as a standard deviation to each side.
   */
  private static final double RETARDED = 0.40;

  private static final double RETARDED_SPREAD = 0.12;

  /**
   * Times over which it comes [s], a fifth at each. Ray and Bret-Harte needed several Kelvin
   * elements over a wide range; their times were not to be seen, so one a decade from ten minutes
   * to ten weeks is an assumption.
   */
  private static final List<Double> TIMES =
      List.of(10 * MINUTE, 100 * MINUTE, 1e3 * MINUTE, 1e4 * MINUTE, 1e5 * MINUTE);

  /**
   * Strain that does not come back, over the instantaneous one, and its standard deviation [1]. Ray
   * and Bret-Harte saw it end within hours to a day; the amount is an assumption.
   */
  private static final double SET = 0.10;

  private static final double SET_SPREAD = 0.10;

  /** A third of a day, so that 95 % of it comes within the day. */
  private static final double SET_TIME = DAY / 3;

  /**
   * Standard deviations from the middle to the low and the high law: both parts move together
   * there, so that the band of the two is about nine in ten: 1.645 over the root of 2.
   */
  private static final double BAND = 1.163;

  public static final Creep LOW = live(-BAND);
  public static final Creep MIDDLE = live(0);
  public static final Creep HIGH = live(BAND);

  public Creep {
    Objects.requireNonNull(recoverable, "recoverable");
    if (!(set >= 0 && setTime > 0) || Double.isInfinite(set + setTime)) {
      throw new IllegalArgumentException("no creep sets " + set + " in " + setTime + " s");
    }
  }

  /** The law for live branches, so many standard deviations above the middle one. */
  private static Creep live(double above) {
    double each = (RETARDED + above * RETARDED_SPREAD) / TIMES.size();
    List<Retarded> chain = TIMES.stream().map(time -> new Retarded(each, time)).toList();
    double set = Math.max(0, SET + above * SET_SPREAD);
    return new Creep(Relaxation.ofRetardation(chain), set, SET_TIME);
  }

  public boolean isNone() {
    return set == 0 && recoverable.modes().isEmpty();
  }

  /** Part of the stress of a fibre that is left after a time at fixed strain [1]. */
  public double left(double seconds) {
    CreepClock clock = new CreepClock(this, seconds);
    double[] memory = new double[clock.stride()];
    clock.hold(1, memory, 0);
    return 1 - clock.rest(memory, 0);
  }

  /** The first time at which no more than a part of the stress is left; infinite if never [s]. */
  public double until(double part) {
    double[] tried =
        DoubleStream.iterate(MINUTE, t -> t < 100 * 365 * DAY, t -> 1.05 * t).toArray();
    for (double t : tried) {
      if (left(t) <= part) {
        return t;
      }
    }
    return Double.POSITIVE_INFINITY;
  }
}
