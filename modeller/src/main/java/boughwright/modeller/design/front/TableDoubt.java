// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import java.util.Arrays;

/**
 * How far off scores by tables are at most, upward and downward apart: a table blurs ridges, so
 * that it is further too low than too high where the best poses are.
 *
 * <p>Where a finer table changed a score much, there is an edge between its lines of sight and it
 * is likely to be off by much itself; so each table but the coarsest is off by so many times that
 * change, and a little. Immutable.
 */
final class TableDoubt {
  /** Shape: one per table from the coarsest to the finest; the usual change, 1 for the first. */
  private final double[] usual;

  /** Shape: one per table; how far truth is above it, over change and usual change together. */
  private final double[] above;

  /** The same below it. */
  private final double[] below;

  private TableDoubt(double[] usual, double[] above, double[] below) {
    this.usual = usual;
    this.above = above;
    this.below = below;
  }

  /**
   * Tables that are never off.
   *
   * @param usual one per table; how far it usually is from the one before [1]
   */
  static TableDoubt none(double[] usual) {
    return new TableDoubt(usual.clone(), new double[usual.length], new double[usual.length]);
  }

  /** The same tables, never off. */
  TableDoubt none() {
    return none(usual);
  }

  /**
   * How far above its score by a table a pose may truly be [1].
   *
   * @param change how far its score is from that by the table before, 0 for the coarsest [1]
   */
  double above(int table, double change) {
    return above[table] * (change + usual[table]);
  }

  /** How far below [1]. */
  double below(int table, double change) {
    return below[table] * (change + usual[table]);
  }

  /**
   * The same, or more where a table was found further off.
   *
   * @param truth how far above the score by the table the pose truly is [1]
   */
  TableDoubt or(int table, double change, double truth) {
    double part = truth / (change + usual[table]);
    if (part <= above[table] && -part <= below[table]) {
      return this;
    }
    TableDoubt more = new TableDoubt(usual, above.clone(), below.clone());
    more.above[table] = Math.max(part, above[table]);
    more.below[table] = Math.max(-part, below[table]);
    return more;
  }

  /** The larger of both. */
  TableDoubt or(TableDoubt other) {
    return new TableDoubt(usual, larger(above, other.above), larger(below, other.below));
  }

  private static double[] larger(double[] one, double[] other) {
    double[] both = new double[one.length];
    Arrays.setAll(both, n -> Math.max(one[n], other[n]));
    return both;
  }

  TableDoubt times(double factor) {
    return new TableDoubt(usual, times(above, factor), times(below, factor));
  }

  private static double[] times(double[] all, double factor) {
    return Arrays.stream(all).map(one -> factor * one).toArray();
  }

  /**
   * The same, raised to so many times what was found: how far truth lies above always, since what
   * is left unmeasured are just those a table has too low; how far below, where it was more than
   * was taken.
   */
  TableDoubt raised(TableDoubt found, double factor) {
    double[] lower = below.clone();
    for (int table = 0; table < lower.length; table++) {
      lower[table] = found.below[table] > below[table] ? factor * found.below[table] : below[table];
    }
    return new TableDoubt(usual, larger(above, times(found.above, factor)), lower);
  }

  /** Whether both say the same. */
  boolean isSame(TableDoubt other) {
    return Arrays.equals(above, other.above) && Arrays.equals(below, other.below);
  }
}
