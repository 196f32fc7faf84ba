// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Vector3;

/**
 * From how far up the tree is looked at.
 *
 * @param elevation how far the line of sight looks down, between -pi/2 and pi/2 [rad]
 */
public record Eye(double elevation) {
  /** Level with the middle of the tree. */
  public static final Eye LEVEL = new Eye(0);

  public Eye {
    if (!(Math.abs(elevation) <= Math.PI / 2)) {
      throw new IllegalArgumentException("the line of sight looks down by " + elevation);
    }
  }

  /**
   * The eye of a viewer who looks at the middle of the tree.
   *
   * @param height of the eye above the soil line [m]
   * @param distance level distance of the eye from the trunk base [m]
   * @param treeHeight height of the tree above the soil line [m]
   */
  public static Eye at(double height, double distance, double treeHeight) {
    if (!(distance > 0) || !Double.isFinite(height + distance + treeHeight)) {
      throw new IllegalArgumentException("the eye is at " + height + ", " + distance + " away");
    }
    return new Eye(Math.atan2(height - treeHeight / 2, distance));
  }

  /** The direction from the tree to the viewer, in the tree frame as measured. */
  public Direction3 towardViewer(FrontPose pose) {
    Vector3 seen = new Vector3(0, -Math.cos(elevation), Math.sin(elevation));
    return pose.toViewer().inverse().turn(seen).direction();
  }
}
