// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import java.util.Objects;

/**
 * One unbranched piece of a rooted tree of rods, at rest.
 *
 * <p>A section's own frame has axis 3 along the rod toward its end, and axes 1 and 2 across.
 *
 * @param parent index of the span it starts on, at that span's end; {@link #CLAMP} for the clamp
 * @param offset from the parent's end to this span's start, moving rigidly with the parent's end
 *     [m, parent's end frame]
 * @param turn from the parent's end frame to this span's start frame: a kink that carries no moment
 * @param length arc length [m]
 * @param restCurvature rate of turning of the rest shape about the section's axes [rad/m]
 * @param section stiffness along the span
 */
public record RodSpan(
    int parent,
    Vector3 offset,
    Rotation turn,
    double length,
    Vector3 restCurvature,
    SectionLine section) {
  /** Stands for the clamped base. */
  public static final int CLAMP = -1;

  public RodSpan {
    Objects.requireNonNull(offset, "offset");
    Objects.requireNonNull(turn, "turn");
    Objects.requireNonNull(restCurvature, "restCurvature");
    Objects.requireNonNull(section, "section");
    if (!(length > 0) || Double.isInfinite(length)) {
      throw new IllegalArgumentException("a span has a length, not " + length + " m");
    }
  }
}
