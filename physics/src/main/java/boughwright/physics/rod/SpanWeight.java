// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import boughwright.modeller.geometry.Vector3;
import java.util.Objects;

/**
 * A dead force spread along a span: {@code pull * (c0 + c1 s + c2 s^2)} per length.
 *
 * @param span index of the span
 * @param pull direction and scale [1]
 * @param c0 force per length at the start [N/m]
 * @param c1 its rate along the span [N/m2]
 * @param c2 half its second rate [N/m3]
 */
public record SpanWeight(int span, Vector3 pull, double c0, double c1, double c2) {
  public SpanWeight {
    Objects.requireNonNull(pull, "pull");
    if (span < 0 || !Double.isFinite(c0 + c1 + c2)) {
      throw new IllegalArgumentException("no weight on span " + span);
    }
  }

  /** Its sum over the part of the span between two places [N]. */
  double between(double from, double to) {
    return antiderivative(to) - antiderivative(from);
  }

  private double antiderivative(double s) {
    return s * (c0 + s * (c1 / 2 + s * c2 / 3));
  }
}
