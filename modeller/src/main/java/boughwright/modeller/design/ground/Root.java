// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.ground;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import java.util.List;
import java.util.Objects;

/**
 * A root from where it leaves the trunk, with the roots that sit on it.
 *
 * @param segment index of the segment it starts with
 * @param id name of that segment
 * @param pieces its wood outside the trunk, each piece after the one it sits on [tree frame]
 * @param main how many of the pieces, the first ones, are the root itself; the others sit on it
 * @param tap whether it goes down under the trunk, so that it is no part of the root base that is
 *     seen
 */
public record Root(int segment, String id, List<RootPiece> pieces, int main, boolean tap) {
  public Root {
    Objects.requireNonNull(id, "id");
    pieces = List.copyOf(pieces);
    if (main < 1 || main > pieces.size()) {
      throw new IllegalArgumentException("root " + id + " has no wood outside the trunk");
    }
  }

  /** Middle of the root where it leaves the trunk [m, tree frame]. */
  public Point3 start() {
    return pieces.get(0).wood().start();
  }

  /** Its end [m, tree frame]. */
  public Point3 tip() {
    return pieces.get(main - 1).wood().end();
  }

  /** Way it leaves the trunk [tree frame]. */
  public Direction3 direction() {
    return pieces.get(0).wood().direction();
  }

  /** Diameter over bark where it leaves the trunk [m]. */
  public double caliper() {
    return 2 * pieces.get(0).wood().startRadius();
  }

  /** Length of the root itself outside the trunk [m]. */
  public double length() {
    return pieces.stream().limit(main).mapToDouble(piece -> piece.wood().length()).sum();
  }

  /** Volume of all its wood outside the trunk [m3]. */
  public double volume() {
    return pieces.stream().mapToDouble(piece -> piece.volume(1)).sum();
  }
}
