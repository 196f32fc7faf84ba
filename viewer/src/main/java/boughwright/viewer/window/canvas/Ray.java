// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;

/**
 * The line of sight through a pixel.
 *
 * @param from a point on it, before everything that is drawn [m, tree frame as measured]
 * @param along away from the viewer [tree frame as measured]
 */
public record Ray(Point3 from, Direction3 along) {}
