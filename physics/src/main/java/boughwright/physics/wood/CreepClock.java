// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import java.util.Arrays;
import java.util.List;

/**
 * Takes fibres through one spell in which their strain stays or changes evenly. What a fibre
 * remembers are the strains its modes have come to and what has set for good, stretched and crushed
 * apart: {@link #stride} numbers.
 *
 * <p>Each mode follows its exponential exactly. What sets follows the elastic strain e toward
 * {@code set * e} and never goes back; the two are taken in turns, half a step of the modes before
 * and after each (Strang splitting), in steps that grow from a tenth of the setting time.
 */
final class CreepClock {
  private static final double FIRST_STEP = 0.1;
  private static final int GROWING_STEPS = 6;

  private final int modes;
  private final double[] weight;
  private final double set;

  /** What half a step leaves of the way each mode has to go, shape (steps)(modes). */
  private final double[][] half;

  /** How far a mode lags behind a strain that goes on evenly, over the change in half a step. */
  private final double[][] lag;

  /** Part of the spell that is over after half a step and after a step, shape (steps)(2). */
  private final double[][] over;

  /** What a step takes of the way that setting has to go, shape (steps). */
  private final double[] taken;

  CreepClock(Creep creep, double seconds) {
    List<Relaxation.Mode> all = creep.recoverable().modes();
    modes = all.size();
    weight = all.stream().mapToDouble(Relaxation.Mode::weight).toArray();
    set = creep.set();
    double[] steps = steps(set > 0 ? creep.setTime() : Double.POSITIVE_INFINITY, seconds);
    half = new double[steps.length][modes];
    lag = new double[steps.length][modes];
    over = new double[steps.length][2];
    taken = new double[steps.length];
    double done = 0;
    for (int j = 0; j < steps.length; j++) {
      for (int k = 0; k < modes; k++) {
        double times = steps[j] / 2 / all.get(k).time();
        half[j][k] = Math.exp(-times);
        lag[j][k] = -Math.expm1(-times) / times;
      }
      over[j][0] = (done + steps[j] / 2) / seconds;
      done += steps[j];
      over[j][1] = done / seconds;
      taken[j] = -Math.expm1(-(1 + set) * steps[j] / creep.setTime());
    }
  }

  private static double[] steps(double setTime, double seconds) {
    double[] steps = new double[GROWING_STEPS + 1];
    int count = 0;
    double done = 0;
    for (int j = 0; j < GROWING_STEPS && done < seconds; j++) {
      double step = Math.min(seconds - done, FIRST_STEP * setTime * (1 << j));
      steps[count++] = step;
      done += step;
    }
    if (seconds - done > 1e-12 * seconds) {
      steps[count++] = seconds - done;
    }
    return Arrays.copyOf(steps, count);
  }

  /** Numbers that one fibre remembers. */
  int stride() {
    return modes + 2;
  }

  /** The strain at which the fibre would carry nothing, beyond what it flowed [1]. */
  double rest(double[] memory, int at) {
    double rest = memory[at + modes] + memory[at + modes + 1];
    for (int k = 0; k < modes; k++) {
      rest += weight[k] * memory[at + k];
    }
    return rest;
  }

  /** What of it has set for good [1]. */
  double forGood(double[] memory, int at) {
    return memory[at + modes] + memory[at + modes + 1];
  }

  /** Takes one fibre through the spell at fixed strain. */
  void hold(double strain, double[] memory, int at) {
    move(strain, strain, memory, at);
  }

  /**
   * Takes one fibre through the spell.
   *
   * @param from its strain beyond what it flowed, at first [1]
   * @param to the same in the end
   * @param memory what fibres remember, written over
   * @param at where this fibre's numbers start
   */
  void move(double from, double to, double[] memory, int at) {
    double strain = from;
    for (int j = 0; j < half.length; j++) {
      double middle = from + over[j][0] * (to - from);
      double end = from + over[j][1] * (to - from);
      fade(j, strain, middle, memory, at);
      if (set > 0) {
        settle(taken[j], middle, memory, at);
      }
      fade(j, middle, end, memory, at);
      strain = end;
    }
  }

  /** A mode goes after its aim, which goes on evenly: exact (from memory). */
  private void fade(int step, double from, double to, double[] memory, int at) {
    double good = forGood(memory, at);
    double change = to - from;
    double[] left = half[step];
    double[] behind = lag[step];
    for (int k = 0; k < modes; k++) {
      memory[at + k] = to - good - change * behind[k] + (memory[at + k] - (from - good)) * left[k];
    }
  }

  private void settle(double part, double strain, double[] memory, int at) {
    double elastic = strain - rest(memory, at);
    int side = elastic > 0 ? at + modes : at + modes + 1;
    double aim = set / (1 + set) * (elastic + memory[side]);
    if (Math.abs(aim) > Math.abs(memory[side])) {
      memory[side] += part * (aim - memory[side]);
    }
  }
}
