// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import java.util.Objects;

/**
 * One line, drawn in.
 *
 * @param place where it holds the limb
 * @param anchor what it is tied to
 * @param shortening taken out of the straight distance between the two as measured, more than 0 [m]
 */
public record Tie(TiePlace place, AnchorPlace anchor, double shortening) {
  public Tie {
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(anchor, "anchor");
    if (!(shortening > 0) || Double.isInfinite(shortening)) {
      throw new IllegalArgumentException("a line is shortened by more than 0, not " + shortening);
    }
  }

  /** The same line, drawn in otherwise. */
  Tie by(double other) {
    return new Tie(place, anchor, other);
  }
}
