// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Twisted double strands against helices measured point by point. */
class StrandTwistTest {
  private static final int POINTS = 20_000;

  /** A chord of a helix is shorter than its arc by (turn per point)² / 24, here under 2e-8 [1]. */
  private static final double CHORDS = 1e-7;

  /** Length of a helix of a radius that makes so many turns over a height, chord by chord [m]. */
  private static double helix(double radius, double height, double turns) {
    double length = 0;
    double[] before = {radius, 0, 0};
    for (int k = 1; k <= POINTS; k++) {
      double angle = 2 * Math.PI * turns * k / POINTS;
      double[] here = {radius * Math.cos(angle), radius * Math.sin(angle), height * k / POINTS};
      length +=
          Math.hypot(Math.hypot(here[0] - before[0], here[1] - before[1]), here[2] - before[2]);
      before = here;
    }
    return length;
  }

  @ParameterizedTest
  @CsvSource({"0.30, 0.0008, 12", "0.12, 0.002, 5", "0.05, 0.001, 0.5"})
  void strandTurnedAtItsEnd_isAHelixOnACylinderOfItsOwnThickness(
      double height, double gauge, double turns) {
    double strand = helix(gauge / 2, height, turns);
    StrandTwist twist = new StrandTwist(strand, gauge, false);
    assertThat(twist.span(turns)).isCloseTo(height, within(CHORDS * height));
    assertThat(twist.turns(height)).isCloseTo(turns, within(1e-4 * turns));
    assertThat(StrandTwist.spanning(height, gauge, turns, false).strand())
        .isCloseTo(strand, within(CHORDS * strand));
  }

  /** Each half holds all turns of the stick: two helices of half the height. */
  @ParameterizedTest
  @CsvSource({"0.30, 0.0008, 12", "0.12, 0.002, 5"})
  void stickInTheMiddle_makesTwoHelices(double height, double gauge, double turns) {
    double strand = 2 * helix(gauge / 2, height / 2, turns);
    assertThat(new StrandTwist(strand, gauge, true).span(turns))
        .isCloseTo(height, within(CHORDS * height));
  }

  /** The steepness of the same polyline: rise over round. */
  @Test
  void lay_isTheSlopeOfTheHelix() {
    double height = 0.2;
    double turns = 40;
    StrandTwist twist = StrandTwist.spanning(height, 0.001, turns, false);
    double slope = Math.atan2(Math.PI * 0.001 * turns, height);
    assertThat(twist.lay(turns)).isCloseTo(slope, within(1e-12));
    assertThat(twist.lay(twist.turnsTouching())).isCloseTo(Math.toRadians(45), within(1e-9));
  }

  /**
   * Two tubes round one axis: at 45° the strands' centres, half a turn apart, are one gauge off.
   */
  @Test
  void strandsTouch_near45Degrees_asTheirCentresComeWithinOneGauge() {
    double gauge = 0.001;
    // nearest centres of two opposite helices of radius d / 2 and lay a, by search
    double at45 = nearest(gauge, Math.toRadians(45));
    double at55 = nearest(gauge, Math.toRadians(55));
    double at35 = nearest(gauge, Math.toRadians(35));
    assertThat(at35).isCloseTo(gauge, within(1e-9));
    assertThat(at45).isCloseTo(gauge, within(1e-4 * gauge));
    assertThat(at55).isLessThan(0.95 * gauge);
  }

  private static double nearest(double gauge, double lay) {
    double radius = gauge / 2;
    double rise = radius / Math.tan(lay);
    double least = Double.POSITIVE_INFINITY;
    for (int k = -POINTS; k <= POINTS; k++) {
      double angle = Math.PI * k / POINTS;
      double x = radius * (Math.cos(angle + Math.PI) - 1);
      double y = radius * Math.sin(angle + Math.PI);
      least = Math.min(least, Math.hypot(Math.hypot(x, y), rise * angle));
    }
    return least;
  }

  /** The curvature of three neighbouring points of the helix, times half a gauge. */
  @Test
  void turnsStraining_bendTheWireSoFar() {
    double gauge = 0.001;
    StrandTwist twist = new StrandTwist(0.3, gauge, false);
    double turns = twist.turnsStraining(0.125);
    double rise = twist.span(turns) / (2 * Math.PI * turns);
    double step = 1e-3;
    double chord = Math.hypot(gauge / 2 * step, rise * step);
    double sag = gauge / 2 * (1 - Math.cos(step));
    double curvature = 2 * sag / (chord * chord);
    assertThat(curvature * gauge / 2).isCloseTo(0.125, within(1e-6));
  }
}
