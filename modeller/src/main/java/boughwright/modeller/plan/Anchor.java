// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

import boughwright.modeller.geometry.Point3;
import java.util.Objects;

/** What a guy-line is tied to. */
public sealed interface Anchor {

  /**
   * A point that does not move.
   *
   * @param point where [m, tree frame as measured]
   */
  record Fixed(Point3 point) implements Anchor {
    public Fixed {
      Objects.requireNonNull(point, "point");
    }
  }

  /**
   * A place on the tree, which moves with the tree.
   *
   * @param spot where
   */
  record OnTree(Spot spot) implements Anchor {
    public OnTree {
      Objects.requireNonNull(spot, "spot");
    }
  }
}
