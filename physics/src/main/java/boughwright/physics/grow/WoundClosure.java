// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.grow;

import java.util.Objects;

/**
 * How long a wound takes to close: callus comes from both sides by so many times the ring laid on
 * each year, until half the width is covered. The width is the size across the grain, which decides
 * (Neely 1979, Journal of Arboriculture 5(6)).
 *
 * @param width size across the grain [m]
 * @param years until it is closed
 */
public record WoundClosure(double width, Years years) {
  /** Beyond this, closing protects little against decay (Harris, in Perry and Hickman 1987). */
  public static final double LATE_YEARS = 3;

  /**
   * Callus on one side over the ring of the same year. More than 1 was seen in ten species (Neely
   * 1988, Journal of Arboriculture 14(10)); these figures are an assumption.
   */
  private static final double CALLUS_LOW = 1.0;

  private static final double CALLUS = 1.3;
  private static final double CALLUS_HIGH = 2.0;

  public WoundClosure {
    if (!(width >= 0 && Double.isFinite(width))) {
      throw new IllegalArgumentException("a wound of width " + width);
    }
    Objects.requireNonNull(years, "years");
  }

  /**
   * Of a wound. Ring and callus are doubted independently: the ends of the band are where both
   * doubts together are as unlikely as each end alone.
   */
  public static WoundClosure of(double width, YearlyRing ring, CutTime time) {
    if (width == 0) {
      return new WoundClosure(0, Years.NONE);
    }
    Years callus = ring.middle() == 0 ? withoutRing(width, ring) : withRing(width, ring);
    Years delay = time.delay();
    return new WoundClosure(
        width,
        new Years(
            callus.low() + delay.low(),
            callus.likely() + delay.likely(),
            callus.high() + delay.high()));
  }

  private static Years withRing(double width, YearlyRing ring) {
    double likely = width / 2 / (CALLUS * ring.middle());
    double faster = together(ring.high() / ring.middle(), CALLUS_HIGH / CALLUS);
    double slower = together(ring.middle() / ring.low(), CALLUS / CALLUS_LOW);
    return new Years(likely / faster, likely, likely * slower);
  }

  private static Years withoutRing(double width, YearlyRing ring) {
    double never = Double.POSITIVE_INFINITY;
    return new Years(width / 2 / (CALLUS_HIGH * ring.high()), never, never);
  }

  private static double together(double one, double other) {
    return Math.exp(Math.hypot(Math.log(one), Math.log(other)));
  }

  /** True if it most likely closes too late to keep decay out. */
  public boolean isLate() {
    return years.likely() > LATE_YEARS;
  }

  /** True if it may close too late, were growth slow. */
  public boolean mayBeLate() {
    return years.high() > LATE_YEARS;
  }
}
