// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import boughwright.modeller.design.front.Parts.Role;
import boughwright.modeller.design.shape.Frustum;
import boughwright.modeller.design.shape.Mass;
import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Vector3;
import java.util.ArrayList;
import java.util.List;

/** Where the ends and the middle of mass of the wood above the roots stand. Immutable. */
final class Standings {
  /** Shape: three per piece; its end from the trunk base [m]. */
  private final double[] ends;

  /** Middle of mass of the wood above the roots, from the trunk base [m]. */
  private final Vector3 mass;

  Standings(Parts parts) {
    List<Frustum> above = new ArrayList<>();
    for (int p = 0; p < parts.count(); p++) {
      if (parts.roles.get(p) != Role.ROOT) {
        above.add(parts.pieces.get(p));
      }
    }
    ends = new double[3 * above.size()];
    for (int n = 0; n < above.size(); n++) {
      Vector3 end = above.get(n).end().minus(parts.base);
      ends[3 * n] = end.x();
      ends[3 * n + 1] = end.y();
      ends[3 * n + 2] = end.z();
    }
    mass = Mass.of(above).centre().minus(parts.base);
  }

  /** From the lowest to the highest end of wood, the trunk base among them [m]. */
  double extent(Direction3 up) {
    double high = 0;
    double low = 0;
    for (int k = 0; k < ends.length; k += 3) {
      double z = ends[k] * up.x() + ends[k + 1] * up.y() + ends[k + 2] * up.z();
      high = Math.max(high, z);
      low = Math.min(low, z);
    }
    return high - low;
  }

  /** Level distance of the middle of mass from the trunk base [m]. */
  double overhang(Direction3 up) {
    return mass.minus(up.times(mass.dot(up.vector()))).norm();
  }
}
