// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

/**
 * How good a value of a measure is, from 0 to 1.
 *
 * <p>Every curve is smooth and rises or falls all along outside what is wanted, so that the worse
 * of two bad values is still told from the other.
 */
public sealed interface MeritCurve {
  /** How good a value is, 0 to 1 [1]. */
  double merit(double value);

  /**
   * The more the better.
   *
   * @param none value that is worth nothing
   * @param half value that is worth half, more than the other
   */
  record More(double none, double half) implements MeritCurve {
    public More {
      if (!(half > none)) {
        throw new IllegalArgumentException("worth half at " + half + ", nothing at " + none);
      }
    }

    @Override
    public double merit(double value) {
      double over = Math.max(0, value - none) / (half - none);
      return over * over / (over * over + 1);
    }
  }

  /**
   * The less the better.
   *
   * @param full value that could not be better
   * @param half value that is worth half, more than the other
   */
  record Less(double full, double half) implements MeritCurve {
    public Less {
      if (!(half > full)) {
        throw new IllegalArgumentException("worth half at " + half + ", all at " + full);
      }
    }

    @Override
    public double merit(double value) {
      double over = Math.max(0, value - full) / (half - full);
      return 1 / (1 + over * over);
    }
  }

  /**
   * Best between two values.
   *
   * @param from smallest value that could not be better
   * @param to largest one
   * @param off how far outside them a value is worth half
   */
  record Between(double from, double to, double off) implements MeritCurve {
    public Between {
      if (!(from <= to) || !(off > 0)) {
        throw new IllegalArgumentException("best from " + from + " to " + to + ", half off " + off);
      }
    }

    @Override
    public double merit(double value) {
      double beside = Math.max(0, Math.max(from - value, value - to)) / off;
      return 1 / (1 + beside * beside);
    }
  }
}
