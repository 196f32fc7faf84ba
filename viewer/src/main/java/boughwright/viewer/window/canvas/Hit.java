// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Spot;

/**
 * The wood under a pixel, in the pose that is shown.
 *
 * @param spot the place on the axis
 * @param at that place on the axis [m, tree frame as measured]
 * @param bark where the line of sight meets the bark [m, tree frame as measured]
 * @param round where round the segment that is, as {@link boughwright.modeller.tree.Wound} counts
 *     [rad]
 */
public record Hit(Spot spot, Point3 at, Point3 bark, double round) {}
