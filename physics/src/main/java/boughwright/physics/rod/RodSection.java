// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;

/**
 * What a rod is like at one section of its pose.
 *
 * @param position where the axis is [m]
 * @param frame turns section axes into space
 * @param force force through the section, what lies beyond pulling on what lies toward the base [N,
 *     section frame]
 * @param moment moment through the section likewise [N m, section frame]
 * @param strain bending about axes 1 and 2 and twist beyond the stress-free shape [rad/m, section
 *     frame]
 */
public record RodSection(
    Point3 position, Rotation frame, Vector3 force, Vector3 moment, Vector3 strain) {
  /** Size of the bending moment [N m]. */
  public double bendingMoment() {
    return Math.hypot(moment.x(), moment.y());
  }

  /** Added curvature of bending [1/m]. */
  public double addedCurvature() {
    return Math.hypot(strain.x(), strain.y());
  }
}
