// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;

/**
 * The wood at one place of a segment, in the bent pose.
 *
 * @param along fraction of the segment's length from its start on the parent's axis [1]
 * @param point the axis there [m, tree frame]
 * @param direction the axis' direction there
 * @param radius wood radius under bark [m]
 * @param bendingStrain wood radius times added curvature [1]
 * @param tensionStrain strain of the most stretched fibre [1]
 * @param compressionStrain strain of the most compressed fibre, without sign [1]
 * @param tensionSide from the axis toward the most stretched side, of length one; zero where the
 *     wood is not bent [1, tree frame]
 * @param moment bending moment of the wood, without what coils carry [N m]
 */
public record PathSample(
    double along,
    Point3 point,
    Direction3 direction,
    double radius,
    double bendingStrain,
    double tensionStrain,
    double compressionStrain,
    Vector3 tensionSide,
    double moment) {}
