// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

/**
 * A section of radius 1 and E = 1 in one plane, as strips that flow, creep as a chain of Kelvin
 * elements and set, taken through time in small steps. Written apart from the laws under test.
 */
final class BruteTime {
  private static final int STRIPS = 400;

  private final double yield;
  private final double[] amount;
  private final double[] time;
  private final double set;
  private final double setTime;
  private final double[] y = new double[STRIPS];
  private final double[] area = new double[STRIPS];
  private final double[] plastic = new double[STRIPS];
  private final double[] stretched = new double[STRIPS];
  private final double[] crushed = new double[STRIPS];
  private final double[][] late;
  private double middle;
  private double curvature;

  BruteTime(double yield, double[] amount, double[] time, double set, double setTime) {
    this.yield = yield;
    this.amount = amount;
    this.time = time;
    this.set = set;
    this.setTime = setTime;
    late = new double[STRIPS][amount.length];
    double width = 2.0 / STRIPS;
    for (int i = 0; i < STRIPS; i++) {
      y[i] = -1 + (i + 0.5) * width;
      area[i] = 2 * Math.sqrt(1 - y[i] * y[i]) * width;
    }
  }

  private double elastic(int i) {
    double out = middle + curvature * y[i] - plastic[i] - stretched[i] - crushed[i];
    for (double strain : late[i]) {
      out -= strain;
    }
    return out;
  }

  private double force() {
    double sum = 0;
    for (int i = 0; i < STRIPS; i++) {
      sum += area[i] * Math.max(-yield, elastic(i));
    }
    return sum;
  }

  double moment() {
    double sum = 0;
    for (int i = 0; i < STRIPS; i++) {
      sum += area[i] * y[i] * Math.max(-yield, elastic(i));
    }
    return sum;
  }

  /** Bends to a curvature; what is crushed beyond its limit flows. */
  void bendTo(double to) {
    curvature = to;
    balance();
    for (int i = 0; i < STRIPS; i++) {
      plastic[i] += Math.min(0, elastic(i) + yield);
    }
  }

  private void balance() {
    double low = -2 - Math.abs(curvature);
    double high = -low;
    for (int n = 0; n < 60; n++) {
      middle = (low + high) / 2;
      if (force() < 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
  }

  /** Lets it go: the curvature at which there is no moment. */
  double letGo() {
    double low = -5 * yield;
    double high = curvature;
    for (int n = 0; n < 50; n++) {
      curvature = (low + high) / 2;
      balance();
      if (moment() < 0) {
        low = curvature;
      } else {
        high = curvature;
      }
    }
    bendTo(curvature);
    return curvature;
  }

  /** Waits at its curvature, or free. */
  void waitFor(double seconds, boolean free) {
    double done = 0;
    double step = 1e-4 * setTime;
    while (done < seconds * (1 - 1e-12)) {
      double dt = Math.min(step, seconds - done);
      for (int i = 0; i < STRIPS; i++) {
        creep(i, dt);
      }
      if (free) {
        letGo();
      } else {
        bendTo(curvature);
      }
      done += dt;
      step = Math.max(step, 0.02 * done);
    }
  }

  private void creep(int i, double dt) {
    double e = elastic(i);
    for (int k = 0; k < amount.length; k++) {
      late[i][k] += (amount[k] * e - late[i][k]) * -Math.expm1(-dt / time[k]);
    }
    double part = -Math.expm1(-dt / setTime);
    if (e > 0) {
      stretched[i] += Math.max(0, set * e - stretched[i]) * part;
    } else {
      crushed[i] += Math.min(0, set * e - crushed[i]) * part;
    }
  }
}
