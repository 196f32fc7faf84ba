// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import boughwright.modeller.geometry.Point3;
import java.util.List;
import java.util.Objects;

/**
 * The answer of a rod solve.
 *
 * @param status whether there is a pose that holds; when not, the pose is the last that did
 * @param pose the pose
 * @param lines the lines, in the order of the loads
 * @param error the solver's estimate of its own error; infinite where no pose holds
 * @param elements elements of the mesh it was found on
 */
public record RodSolution(
    RodStatus status, RodPose pose, List<LineState> lines, Error error, int elements) {

  /**
   * A line in the pose.
   *
   * @param tension pull [N]
   * @param length distance between its ends [m]
   * @param slack whether it hangs loose
   * @param at its end on the rods [m]
   * @param other its other end [m]
   */
  public record LineState(double tension, double length, boolean slack, Point3 at, Point3 other) {}

  /**
   * Error estimates, from the change when elements were halved last.
   *
   * @param position largest error of any point [m]
   * @param tension largest relative error of any tension [1]
   * @param strain largest error of the added curvature, relative to its peak [1]
   */
  public record Error(double position, double tension, double strain) {
    /** No two meshes in a row gave a pose. */
    static final Error UNKNOWN =
        new Error(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
  }

  public RodSolution {
    Objects.requireNonNull(status, "status");
    Objects.requireNonNull(pose, "pose");
    lines = List.copyOf(lines);
    Objects.requireNonNull(error, "error");
  }
}
