// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.sight;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.tree.PadShape;
import java.util.Objects;

/**
 * A pad of foliage.
 *
 * @param centre its middle [m, tree frame]
 * @param turn the turn that brings x, y, z onto its three axes
 * @param halfX half its size along its first axis [m]
 * @param halfY half its size along its second axis [m]
 * @param halfZ half its size along its third axis [m]
 */
public record Ellipsoid(Point3 centre, Rotation turn, double halfX, double halfY, double halfZ) {
  public Ellipsoid {
    Objects.requireNonNull(centre, "centre");
    Objects.requireNonNull(turn, "turn");
    if (!(halfX > 0 && halfY > 0 && halfZ > 0) || Double.isInfinite(halfX + halfY + halfZ)) {
      throw new IllegalArgumentException("half sizes are " + halfX + ", " + halfY + ", " + halfZ);
    }
  }

  /** A pad as a tree wears it. */
  public static Ellipsoid of(PadShape pad) {
    return new Ellipsoid(
        pad.centre(),
        Rotation.toAxes(pad.lengthway(), pad.thickway(), pad.widthway()),
        pad.halfLength(),
        pad.halfThickness(),
        pad.halfWidth());
  }

  /** A pad that is the same all round a level middle [m]. */
  public static Ellipsoid pad(Point3 centre, double halfWidth, double halfHeight) {
    return new Ellipsoid(centre, Rotation.NONE, halfWidth, halfWidth, halfHeight);
  }
}
