// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

/**
 * How much further a branch under a steady pull has gone when it is read late.
 *
 * <p>Creep compliance over the instantaneous one grows as A (t/day)^b. A is 0.40 with a standard
 * deviation of 0.12: retarded-elastic bending of living branches is 30 to 50 % of the instantaneous
 * (Ray and Bret-Harte 2019, Frontiers in Plant Science 10:59), taken as what a day brings. b is
 * 0.25, from memory.
 */
public final class PullCreep {
  /** When to read a pull test: movement goes on, and this is what the modulus stands for [s]. */
  public static final double READ_AT = 30;

  private static final double DAY = 86_400;
  private static final double AMOUNT = 0.40;
  private static final double AMOUNT_SPREAD = 0.12;
  private static final double EXPONENT = 0.25;

  private PullCreep() {}

  /**
   * How much further the point has moved than when it should have been read, as a part of that.
   *
   * @param after time since the pull was put on, at least {@link #READ_AT} [s]
   */
  public static Range further(double after) {
    if (!(after >= READ_AT)) {
      throw new IllegalArgumentException("a reading after " + after + " s is not late");
    }
    double wide = Readings.NINE_IN_TEN * AMOUNT_SPREAD;
    return new Range(
        further(AMOUNT - wide, after), further(AMOUNT, after), further(AMOUNT + wide, after));
  }

  private static double further(double amount, double after) {
    return (1 + amount * Math.pow(after / DAY, EXPONENT))
            / (1 + amount * Math.pow(READ_AT / DAY, EXPONENT))
        - 1;
  }
}
