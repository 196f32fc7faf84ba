// SPDX-License-Identifier: Apache-2.0
/**
 * From where a branch should come to what brings it there: lines, anchors, coils.
 *
 * <p>Everything is SI in the tree frame as measured. May import every package of the physics above
 * it, {@code stage} the last of them, and the modeller.
 */
package boughwright.physics.reach;
