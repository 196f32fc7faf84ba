// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * How the stress of wood falls while its strain is held: a generalised Maxwell law, a part that
 * stays and parts that fade each at a time of its own (Tschoegl, The Phenomenological Theory of
 * Linear Viscoelastic Behavior, 1989; from memory). What fades is the stress, not the wood: let go,
 * all of it comes back in time.
 *
 * @param modes the parts that fade; what is missing from 1 stays
 */
public record Relaxation(List<Mode> modes) {
  /** Nothing fades. */
  public static final Relaxation NONE = new Relaxation(List.of());

  /**
   * A part of the stress that fades.
   *
   * @param weight its part of the first stress [1]
   * @param time time in which it falls to 1/e [s]
   */
  public record Mode(double weight, double time) {
    public Mode {
      if (!(weight > 0 && weight <= 1 && time > 0) || Double.isInfinite(time)) {
        throw new IllegalArgumentException("no mode of weight " + weight + ", time " + time);
      }
    }
  }

  /**
   * A part of the creep under constant stress: one Kelvin element of a chain.
   *
   * @param amount what it brings in the end over the instantaneous strain [1]
   * @param time time in which all but 1/e of it has come [s]
   */
  public record Retarded(double amount, double time) {
    public Retarded {
      if (!(amount > 0 && time > 0) || Double.isInfinite(amount + time)) {
        throw new IllegalArgumentException("no element of " + amount + " in " + time + " s");
      }
    }

    double crept(double seconds) {
      return -amount * Math.expm1(-seconds / time);
    }
  }

  public Relaxation {
    modes = List.copyOf(modes);
    double sum = modes.stream().mapToDouble(Mode::weight).sum();
    if (sum > 1 + 1e-9) {
      throw new IllegalArgumentException("more than the whole stress fades: " + sum);
    }
  }

  /** Part of the stress that never fades [1]. */
  public double equilibrium() {
    return Math.max(0, 1 - modes.stream().mapToDouble(Mode::weight).sum());
  }

  /** Part of the stress that is left after a time at fixed strain [1]. */
  public double left(double seconds) {
    double gone = 0;
    for (Mode mode : modes) {
      gone -= mode.weight() * Math.expm1(-seconds / mode.time());
    }
    return 1 - gone;
  }

  /**
   * The law of a spring in row with Kelvin elements, exactly: with s the rate, stress over strain
   * is E / D(s), D(s) = 1 + sum a_k / (1 + s t_k). D has one zero s = -x between each two of the
   * 1/t_k and one beyond the greatest; each is a mode of time 1/x and weight 1 / (x sum a_k t_k /
   * (1 - x t_k)^2), the residue there (Tschoegl 1989; from memory).
   *
   * @param chain elements of different times
   */
  public static Relaxation ofRetardation(List<Retarded> chain) {
    List<Retarded> slowFirst =
        chain.stream().sorted(Comparator.comparingDouble(Retarded::time).reversed()).toList();
    double all = chain.stream().mapToDouble(Retarded::amount).sum();
    List<Mode> modes = new ArrayList<>();
    for (int k = 0; k < slowFirst.size(); k++) {
      double from = 1 / slowFirst.get(k).time();
      double to =
          k + 1 < slowFirst.size() ? 1 / slowFirst.get(k + 1).time() : from * (1 + all) * 1.01;
      double rate = zero(slowFirst, from, to);
      double slope = 0;
      for (Retarded element : slowFirst) {
        double away = 1 - rate * element.time();
        slope += element.amount() * element.time() / (away * away);
      }
      modes.add(new Mode(1 / (rate * slope), 1 / rate));
    }
    return new Relaxation(modes);
  }

  /** D is below 0 just above each pole and rises through the interval. */
  private static double zero(List<Retarded> chain, double from, double to) {
    UnivariateFunction denominator =
        x -> 1 + chain.stream().mapToDouble(e -> e.amount() / (1 - x * e.time())).sum();
    double near = 1e-9;
    BracketingNthOrderBrentSolver solver = new BracketingNthOrderBrentSolver(1e-15, 0, 1e-15, 5);
    return solver.solve(1000, denominator, from * (1 + near), to * (1 - near));
  }

  /**
   * The law closest to a given relaxation.
   *
   * @param left part of the stress left after a time, 1 at first and never rising [1] of [s]
   * @param from shortest time that counts [s]
   * @param to longest time that counts [s]
   */
  public static Relaxation fitted(DoubleUnaryOperator left, double from, double to) {
    List<Mode> modes = new ArrayList<>();
    RelaxationFit.of(t -> 1 - left.applyAsDouble(t), from, to)
        .forEach((time, weight) -> modes.add(new Mode(weight, time)));
    return new Relaxation(modes);
  }

  /**
   * The law of wood that creeps as given.
   *
   * @param crept strain that creep has added after a time at constant stress, over the
   *     instantaneous strain; 0 at first and never falling [1] of [s]
   * @param from shortest time that counts [s]
   * @param to longest time that counts [s]
   */
  public static Relaxation fittedToCreep(DoubleUnaryOperator crept, double from, double to) {
    List<Retarded> chain = new ArrayList<>();
    RelaxationFit.of(crept, from, to)
        .forEach((time, amount) -> chain.add(new Retarded(amount, time)));
    return ofRetardation(chain);
  }
}
