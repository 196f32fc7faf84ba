// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import boughwright.modeller.geometry.Vector3;
import java.util.Objects;

/**
 * A place on or beside a span that moves with its section.
 *
 * @param span index of the span
 * @param s distance from the start of the span [m]
 * @param arm from the axis to the place [m, section frame]
 */
public record RodPlace(int span, double s, Vector3 arm) {
  public RodPlace {
    Objects.requireNonNull(arm, "arm");
    if (span < 0 || !(s >= 0)) {
      throw new IllegalArgumentException("no place on span " + span + " at " + s + " m");
    }
  }

  public static RodPlace onAxis(int span, double s) {
    return new RodPlace(span, s, Vector3.ZERO);
  }
}
