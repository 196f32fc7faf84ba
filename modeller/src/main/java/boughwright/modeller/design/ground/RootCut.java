// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.ground;

import java.util.Objects;

/**
 * A cut that a root needs to fit.
 *
 * @param root the root
 * @param piece the piece it is on, counted within the root
 * @param at where on that piece, as a fraction of it; 0 takes the whole piece [1]
 * @param length length it takes off, with what sits beyond [m]
 * @param volume volume it takes off [m3]
 */
public record RootCut(Root root, int piece, double at, double length, double volume) {
  public RootCut {
    Objects.requireNonNull(root, "root");
    Objects.checkIndex(piece, root.pieces().size());
    if (!(at >= 0 && at <= 1) || !(length >= 0 && volume >= 0)) {
      throw new IllegalArgumentException("a cut at " + at + " takes " + length + ", " + volume);
    }
  }

  /** Name of the segment it is on. */
  public String segment() {
    return root.pieces().get(piece).id();
  }

  /** Length along the roots from where the root leaves the trunk [m]. */
  public double fromTrunk() {
    double length = at * root.pieces().get(piece).wood().length();
    for (int n = piece;
        root.pieces().get(n).on() != RootPiece.TRUNK;
        n = root.pieces().get(n).on()) {
      RootPiece carrier = root.pieces().get(root.pieces().get(n).on());
      length += root.pieces().get(n).along() * carrier.wood().length();
    }
    return length;
  }

  /** Where on the segment, as a fraction of it [1]. */
  public double along() {
    return root.pieces().get(piece).onSegment(at);
  }

  /** Diameter over bark at the cut [m]. */
  public double caliper() {
    return 2 * root.pieces().get(piece).radius(at);
  }

  /** True if it takes the whole root, from the trunk on. */
  public boolean takesAll() {
    return piece == 0 && at == 0;
  }
}
