// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.ground;

import boughwright.modeller.design.shape.Frustum;
import java.util.Objects;

/**
 * A straight piece of a root, outside the trunk.
 *
 * @param id name of its segment
 * @param wood the piece [tree frame]
 * @param from fraction of its segment at which it starts: more than 0 where the segment starts
 *     inside the trunk [1]
 * @param to fraction of its segment at which it ends [1]
 * @param on the piece it starts on, counted within the root; {@link #TRUNK} for the first
 * @param along where on that piece it starts, as a fraction of it [1]
 */
public record RootPiece(String id, Frustum wood, double from, double to, int on, double along) {
  /** Stands for the trunk. */
  public static final int TRUNK = -1;

  public RootPiece {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(wood, "wood");
    if (!(from >= 0 && to > from && to <= 1)) {
      throw new IllegalArgumentException("a piece from " + from + " to " + to);
    }
  }

  /** The fraction of its segment at a fraction of the piece [1]. */
  public double onSegment(double part) {
    return from + part * (to - from);
  }

  /** Radius at a fraction of the piece [m]. */
  double radius(double part) {
    return wood.startRadius() + part * (wood.endRadius() - wood.startRadius());
  }

  /** Volume of its first part, a fraction of its length [m3]. */
  double volume(double part) {
    double a = wood.startRadius();
    double b = radius(part);
    return Math.PI / 3 * part * wood.length() * (a * a + a * b + b * b);
  }
}
