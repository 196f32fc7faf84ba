// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import boughwright.modeller.design.shape.FrontPose;

/**
 * The poses that are looked at: every azimuth with every tilt of a range. Immutable.
 *
 * @param range the tilts
 * @param azimuths how many azimuths, from 0 on, all round
 * @param sideways how many tilts to each side of none
 * @param forward how many tilts toward the viewer, and as many away
 */
public record FrontGrid(FrontRange range, int azimuths, int sideways, int forward) {
  /** Azimuths when nothing is said: every 2 degrees. */
  public static final int AZIMUTHS = 180;

  private static final double TILT_STEP = Math.toRadians(1);

  /** Ranges given in degrees do not come out as whole numbers of steps. */
  private static final double ROUNDING = 1e-9;

  public FrontGrid {
    if (azimuths < 1 || sideways < 0 || forward < 0) {
      throw new IllegalArgumentException(azimuths + " x " + sideways + " x " + forward + " poses");
    }
  }

  /** Azimuths every 2 degrees, tilts every degree or a little less. */
  public static FrontGrid of(FrontRange range) {
    return new FrontGrid(range, AZIMUTHS, steps(range.sideways()), steps(range.forward()));
  }

  private static int steps(double most) {
    return (int) Math.ceil(most / TILT_STEP - ROUNDING);
  }

  /** How many tilts to the sides. */
  public int sidewaysCount() {
    return 2 * sideways + 1;
  }

  /** How many tilts toward the viewer and away. */
  public int forwardCount() {
    return 2 * forward + 1;
  }

  /** How many poses. */
  public long size() {
    return (long) azimuths * sidewaysCount() * forwardCount();
  }

  /** From one azimuth to the next [rad]. */
  public double azimuthStep() {
    return 2 * Math.PI / azimuths;
  }

  /** The n-th azimuth [rad]. */
  public double azimuth(int n) {
    return n * azimuthStep();
  }

  /** The n-th tilt to the right, the furthest to the left being 0 [rad]. */
  public double tiltRight(int n) {
    return sideways == 0 ? 0 : range.sideways() * (n - sideways) / sideways;
  }

  /** The n-th tilt toward the viewer, the furthest away being 0 [rad]. */
  public double tiltToward(int n) {
    return forward == 0 ? 0 : range.forward() * (n - forward) / forward;
  }

  /**
   * A pose of the grid.
   *
   * @param azimuth number of the azimuth
   * @param right number of the tilt to the right
   * @param toward number of the tilt toward the viewer
   */
  public FrontPose pose(int azimuth, int right, int toward) {
    return new FrontPose(azimuth(azimuth), tiltRight(right), tiltToward(toward));
  }
}
