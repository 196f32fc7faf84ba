// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.entry;

import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Skeleton;

/**
 * Calipers to begin with until the person types what they read. Common practice, no source.
 *
 * @param start at the start [m]
 * @param end at the end [m]
 */
public record CaliperGuess(double start, double end) {
  /** A side branch is about half as thick as what it grows on. */
  private static final double BRANCH = 0.5;

  /** How much of its caliper a branch keeps to its end. */
  private static final double KEPT = 0.75;

  /** Steps in a metre that a guess is rounded to. */
  private static final double STEPS = 1e4;

  /** A guess for a segment of a length [m] at a seat: the shoot's taper goes on, if it tapers. */
  public static CaliperGuess of(Skeleton skeleton, Seat seat, double length) {
    double there = seat.caliper(skeleton);
    if (seat.joins() == Joint.UNION) {
      double start = rounded(BRANCH * there);
      return new CaliperGuess(start, rounded(KEPT * start));
    }
    int parent = seat.parent();
    double below = skeleton.segment(parent).caliperStart();
    double taper = Math.max(0, below - there) / skeleton.length(parent);
    double end = Math.max(KEPT * there, there - taper * length);
    return new CaliperGuess(there, rounded(end));
  }

  private static double rounded(double metres) {
    return Math.max(1, Math.round(metres * STEPS)) / STEPS;
  }
}
