// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import boughwright.physics.rod.PeerChoice.Method;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.exception.MathRuntimeException;

/** Finds the fastest way to shoot that still meets an error. */
public final class PeerTuning {
  private static final double[] ROOTS = {1e-1, 1e-2, 1e-3, 1e-4, 1e-5, 1e-6};
  private static final int MOST_STEPS = 40;
  private static final double FASTER = 0.97;

  private PeerTuning() {}

  /**
   * The fastest choice among the integrators that choose their steps, or those of fixed steps.
   *
   * @param bend the case
   * @param error error of the tip allowed, as a fraction of the length
   * @param fixed whether steps are fixed
   */
  public static PeerChoice fastest(BendCase bend, double error, boolean fixed) {
    PeerChoice best = null;
    double bestTime = Double.POSITIVE_INFINITY;
    for (PeerChoice choice : choices(fixed)) {
      if (meets(choice, bend, error)) {
        double time = time(choice.on(bend));
        if (time < FASTER * bestTime) {
          bestTime = time;
          best = choice;
        }
      }
    }
    if (best == null) {
      throw new IllegalStateException("no way to shoot meets " + error);
    }
    return best;
  }

  private static List<PeerChoice> choices(boolean fixed) {
    List<PeerChoice> choices = new ArrayList<>();
    for (Method method : Method.values()) {
      if (method.isFixed() == fixed) {
        for (double root : ROOTS) {
          for (int k = 1; k <= MOST_STEPS; k++) {
            double tolerance = Math.pow(10, 0.5 - 0.25 * k);
            choices.add(new PeerChoice(method, fixed ? k : tolerance, root));
          }
        }
      }
    }
    return choices;
  }

  private static boolean meets(PeerChoice choice, BendCase bend, double error) {
    try {
      return choice.error(bend) <= error;
    } catch (MathRuntimeException e) {
      return false;
    }
  }

  /** The shortest of some batches [ns]. */
  private static double time(PlanarShooting shooting) {
    double[] times = new double[5];
    for (int k = 0; k < times.length; k++) {
      int runs = 100;
      long start = System.nanoTime();
      for (int i = 0; i < runs; i++) {
        shooting.solve();
      }
      times[k] = (System.nanoTime() - start) / (double) runs;
    }
    return Arrays.stream(times).min().orElseThrow();
  }
}
