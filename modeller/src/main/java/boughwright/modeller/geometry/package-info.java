// SPDX-License-Identifier: Apache-2.0
/**
 * Points, directions, rotations and frames; knows no tree.
 *
 * <p>The tree frame is right-handed: x to the right, y away from a viewer standing at azimuth 0, z
 * up, origin at the centre of the trunk base on the soil line. Lengths are metres, angles radians.
 * Azimuths count clockwise seen from above, from the viewer's side of the tree: 0 points toward the
 * viewer (0, -1, 0), a quarter turn points to the viewer's left (-1, 0, 0).
 *
 * <p>Imports nothing else of the project.
 */
package boughwright.modeller.geometry;
