// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.physics.hold.WireWound;

/**
 * A level cantilever with a coil along all of it, pulled straight down at its tip, by shooting in
 * the plane: midpoint steps, bisection for everything.
 */
final class CoilShooting {
  private static final int STEPS = 400;
  private static final double FARTHEST = 60;

  private final double wood;
  private final double[] table = new double[3001];
  private final double strands;

  /**
   * @param wood bending stiffness of the elastic wood [N m2]
   */
  CoilShooting(double wood, WireWound wire, double strands) {
    this.wood = wood;
    this.strands = strands;
    for (int i = 0; i < table.length; i++) {
      table[i] = wire.moment(i * FARTHEST / (table.length - 1));
    }
  }

  /** The line of one strand, straight between many points. */
  private double strand(double curvature) {
    double place = curvature / FARTHEST * (table.length - 1);
    int i = Math.min(table.length - 2, (int) place);
    return table[i] + (place - i) * (table[i + 1] - table[i]);
  }

  /** The curvature at which both together carry a moment. */
  private double bent(double moment) {
    double low = 0;
    double high = FARTHEST;
    for (int n = 0; n < 40; n++) {
      double k = (low + high) / 2;
      if (wood * k + strands * strand(k) < moment) {
        low = k;
      } else {
        high = k;
      }
    }
    return (low + high) / 2;
  }

  /** The curvature at which both together carry nothing, after one: the way back by Masing. */
  private double left(double bent) {
    double low = 0;
    double high = bent;
    for (int n = 0; n < 40; n++) {
      double k = (low + high) / 2;
      double coil = strands * (strand(bent) - 2 * strand((bent - k) / 2));
      if (wood * k + coil < 0) {
        low = k;
      } else {
        high = k;
      }
    }
    return (low + high) / 2;
  }

  /** The force that brings the tip down so far. */
  double forceFor(double drop) {
    double low = 0;
    double high = 30;
    for (int n = 0; n < 25; n++) {
      double force = (low + high) / 2;
      if (drop(loaded(force)) < drop) {
        low = force;
      } else {
        high = force;
      }
    }
    return (low + high) / 2;
  }

  /** How far down the tip stays once the force is gone. */
  double dropAfter(double force) {
    double[] curvature = loaded(force);
    for (int i = 0; i < STEPS; i++) {
      curvature[i] = left(curvature[i]);
    }
    return drop(curvature);
  }

  /** Curvatures under a force: the arm of the tip is found by going over it again and again. */
  private double[] loaded(double force) {
    double step = Wired.LENGTH / STEPS;
    double[] x = new double[STEPS];
    for (int i = 0; i < STEPS; i++) {
      x[i] = (i + 0.5) * step;
    }
    double tip = Wired.LENGTH;
    double[] curvature = new double[STEPS];
    for (int round = 0; round < 14; round++) {
      double angle = 0;
      double at = 0;
      for (int i = 0; i < STEPS; i++) {
        double next = bent(Math.max(0, force * (tip - x[i])));
        curvature[i] = round == 0 ? next : (curvature[i] + next) / 2;
        double middle = angle + curvature[i] * step / 2;
        x[i] = at + Math.cos(middle) * step / 2;
        at += Math.cos(middle) * step;
        angle += curvature[i] * step;
      }
      tip = at;
    }
    return curvature;
  }

  private static double drop(double[] curvature) {
    double step = Wired.LENGTH / STEPS;
    double angle = 0;
    double down = 0;
    for (double k : curvature) {
      down += Math.sin(angle + k * step / 2) * step;
      angle += k * step;
    }
    return down;
  }
}
