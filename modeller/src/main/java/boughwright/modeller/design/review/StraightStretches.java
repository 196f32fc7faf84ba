// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import boughwright.modeller.geometry.Point3;
import java.util.ArrayList;
import java.util.List;

/** Stretches of the trunk line without movement. */
final class StraightStretches {
  /** Places along the trunk that are looked at. */
  private static final int STEPS = 60;

  /** A trunk that is straight over more than this share is meant to be straight [1]. */
  private static final double WHOLE = 0.9;

  private final Structure structure;
  private final WoodLine line;

  /** Shape of x, y and z: one more than steps; places at even distances [m, tree frame]. */
  private final double[] x = new double[STEPS + 1];

  private final double[] y = new double[STEPS + 1];
  private final double[] z = new double[STEPS + 1];
  private final Run whole;

  StraightStretches(Structure structure) {
    this.structure = structure;
    line = structure.main().line();
    for (int n = 0; n <= STEPS; n++) {
      Point3 point = line.point(at(n));
      x[n] = point.x();
      y[n] = point.y();
      z[n] = point.z();
    }
    whole = longest(0, STEPS);
  }

  private double at(int n) {
    return line.length() * n / STEPS;
  }

  /** From one place to another, as numbers of places. */
  private record Run(int from, int to) {
    int size() {
      return to - from;
    }
  }

  /** Whether the trunk is straight from base to apex. */
  boolean isWhole() {
    return whole.size() >= WHOLE * STEPS;
  }

  /** None where the trunk is straight from base to apex: that is a style. */
  List<Found> find() {
    List<Found> out = new ArrayList<>();
    if (!isWhole()) {
      look(0, STEPS, out);
    }
    return out;
  }

  private void look(int low, int high, List<Found> out) {
    Run run = longest(low, high);
    double share = (double) run.size() / STEPS;
    double length = at(run.to()) - at(run.from());
    double caliper = line.caliper((at(run.from()) + at(run.to())) / 2);
    if (share < structure.limit(Limit.STRAIGHT_LENGTH)) {
      return;
    }
    if (length >= structure.limit(Limit.STRAIGHT_CALIPERS) * caliper) {
      out.add(
          Found.stretch(
              FaultKind.STRAIGHT,
              new Found.Subject.Stretch(structure.main(), at(run.from()), at(run.to())),
              List.of(
                  structure.measured(Limit.STRAIGHT_LENGTH, share),
                  structure.measured(Limit.STRAIGHT_CALIPERS, length / caliper),
                  structure.measured(Limit.STRAIGHT_BOW, bow(run.from(), run.to())))));
    }
    look(low, run.from(), out);
    look(run.to(), high, out);
  }

  private Run longest(int low, int high) {
    Run best = new Run(low, low);
    for (int from = low; from < high; from++) {
      int to = high;
      while (to - from > best.size() && bow(from, to) > structure.limit(Limit.STRAIGHT_BOW)) {
        to--;
      }
      if (to - from > best.size()) {
        best = new Run(from, to);
      }
    }
    return best;
  }

  /** How far it leaves the straight way from end to end, over that way [1]. */
  private double bow(int from, int to) {
    double wx = x[to] - x[from];
    double wy = y[to] - y[from];
    double wz = z[to] - z[from];
    double square = wx * wx + wy * wy + wz * wz;
    double most = 0;
    for (int n = from + 1; n < to; n++) {
      double ox = x[n] - x[from];
      double oy = y[n] - y[from];
      double oz = z[n] - z[from];
      double cx = oy * wz - oz * wy;
      double cy = oz * wx - ox * wz;
      double cz = ox * wy - oy * wx;
      most = Math.max(most, cx * cx + cy * cy + cz * cz);
    }
    return square > 0 ? Math.sqrt(most) / square : Double.MAX_VALUE;
  }
}
