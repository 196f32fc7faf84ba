// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import java.util.List;

/** Single rods in the conventions of the reference tables (see the resource folder's README). */
final class Rods {
  private Rods() {}

  /** Axes d1 = (-sin a, cos a, 0), d3 = (cos i cos a, cos i sin a, sin i), d2 = d3 x d1. */
  static Rotation rootFrame(double inclination, double azimuth) {
    Direction3 d3 =
        Direction3.of(
            Math.cos(inclination) * Math.cos(azimuth),
            Math.cos(inclination) * Math.sin(azimuth),
            Math.sin(inclination));
    Direction3 d1 = Direction3.of(-Math.sin(azimuth), Math.cos(azimuth), 0);
    return Rotation.toAxes(d1, d3.vector().cross(d1.vector()).direction(), d3);
  }

  static RodModel single(Rotation frame, double length, Vector3 rest, SectionLine section) {
    return RodModel.of(
        Point3.ORIGIN,
        frame,
        List.of(new RodSpan(RodSpan.CLAMP, Vector3.ZERO, Rotation.NONE, length, rest, section)));
  }

  /** A straight level rod along x of unit length and unit stiffness at the base. */
  static RodModel unit(double taper, Vector3 rest) {
    return single(rootFrame(0, 0), 1, rest, tapered(taper));
  }

  /** Sections of unit stiffness at the base whose radius falls by a part along a unit length. */
  static SectionLine tapered(double taper) {
    return s -> {
      double r = 1 - taper * s;
      double ei = r * r * r * r;
      return new LinearSection(ei, ei, 0.8 * ei);
    };
  }

  static RodLoads tipForce(double x, double y, double z) {
    return RodLoads.ofForces(new RodLoads.DeadForce(RodPlace.onAxis(0, 1), new Vector3(x, y, z)));
  }
}
