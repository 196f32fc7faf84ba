// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import java.util.Objects;

/**
 * A measure beside its limit.
 *
 * @param limit what is measured
 * @param value what it is, SI
 * @param bound the value of the limit, SI
 */
public record Measured(Limit limit, double value, double bound) {
  public Measured {
    Objects.requireNonNull(limit, "limit");
    if (!Double.isFinite(value) || !(bound > 0)) {
      throw new IllegalArgumentException(limit + " is " + value + " beside " + bound);
    }
  }

  /** How far from the limit, as a share of it [1]. */
  public double over() {
    return Math.abs(value - bound) / bound;
  }
}
