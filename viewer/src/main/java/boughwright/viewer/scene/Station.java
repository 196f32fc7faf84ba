// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;

/**
 * A place on a limb where a ring of its skin is drawn.
 *
 * @param point the axis [m, scene frame]
 * @param direction direction of the axis
 * @param radius radius over bark [m]
 * @param strain bending strain at the outermost wood [1]
 * @param tensionSide from the axis toward the most stretched side, length one or zero
 * @param bark the tone of the bark
 * @param sky how much open sky the place sees, 0 to 1
 * @param rest length along the limb at rest from its start [m]
 */
record Station(
    Point3 point,
    Direction3 direction,
    double radius,
    double strain,
    Vector3 tensionSide,
    Colour bark,
    double sky,
    double rest) {}
