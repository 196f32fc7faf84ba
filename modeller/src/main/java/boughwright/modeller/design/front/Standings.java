// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import boughwright.modeller.design.front.Parts.Role;
import boughwright.modeller.design.shape.Frustum;
import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;

/** Where the ends and the middle of mass of the wood above the roots stand. Immutable. */
final class Standings {
  /** Shape: three per piece; its end from the trunk base [m]. */
  private final double[] ends;

  /** Middle of mass of the wood above the roots, from the trunk base [m]. */
  private final Vector3 mass;

  Standings(Parts parts) {
    ends = new double[3 * parts.count()];
    Vector3 sum = Vector3.ZERO;
    double volumes = 0;
    int n = 0;
    for (int p = 0; p < parts.count(); p++) {
      if (parts.roles.get(p) != Role.ROOT) {
        Frustum piece = parts.pieces.get(p);
        Vector3 end = piece.end().minus(parts.base);
        ends[n++] = end.x();
        ends[n++] = end.y();
        ends[n++] = end.z();
        double a = piece.startRadius();
        double b = piece.endRadius();
        double square = a * a + a * b + b * b;
        double volume = Math.PI / 3 * piece.length() * square;
        double along = (a * a + 2 * a * b + 3 * b * b) / (4 * square);
        Point3 centre = piece.start().toward(piece.end(), along);
        sum = sum.plus(centre.minus(parts.base).times(volume));
        volumes += volume;
      }
    }
    for (; n < ends.length; n++) {
      ends[n] = 0;
    }
    mass = sum.times(1 / volumes);
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
