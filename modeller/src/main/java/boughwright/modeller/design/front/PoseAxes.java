// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Rotation;

/**
 * Where a viewer's directions point in the tree frame as measured.
 *
 * @param right to the viewer's right
 * @param toward level toward the viewer
 * @param up up
 */
record PoseAxes(Direction3 right, Direction3 toward, Direction3 up) {
  private static final Direction3 RIGHT = new Direction3(1, 0, 0);
  private static final Direction3 TOWARD = new Direction3(0, -1, 0);

  static PoseAxes of(FrontPose pose) {
    Rotation toTree = pose.toViewer().inverse();
    return new PoseAxes(toTree.turn(RIGHT), toTree.turn(TOWARD), toTree.turn(Direction3.UP));
  }

  /** The same tilt seen from an azimuth that is further round by an angle [rad]. */
  PoseAxes fromFurtherRound(double angle) {
    double cosine = Math.cos(angle);
    double sine = -Math.sin(angle);
    return new PoseAxes(
        turned(right, cosine, sine), turned(toward, cosine, sine), turned(up, cosine, sine));
  }

  private static Direction3 turned(Direction3 one, double cosine, double sine) {
    return new Direction3(
        one.x() * cosine - one.y() * sine, one.x() * sine + one.y() * cosine, one.z());
  }
}
