// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Point3;

/**
 * What a trial does to one guy-line.
 *
 * @param id line id
 * @param tension pull in the line, 0 when slack [N]
 * @param length distance from pad to anchor in the bent pose [m]
 * @param shortening how much shorter that is than in the measured pose [m]
 * @param slack whether the line hangs loose
 * @param pad where it holds the tree in the bent pose [m, tree frame]
 * @param anchor where it is tied in the bent pose [m, tree frame]
 */
public record LineTrial(
    String id,
    double tension,
    double length,
    double shortening,
    boolean slack,
    Point3 pad,
    Point3 anchor) {}
