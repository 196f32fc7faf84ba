// SPDX-License-Identifier: Apache-2.0
/**
 * A tree and a trial become meshes, marks and colours that can be drawn.
 *
 * <p>The scene frame is the tree frame after planting: the measured frame turned about the trunk
 * base by the planting angle, metres, z up, the soil level at z = 0. Knows no OpenGL and no AWT.
 * May import the modeller and {@code physics.hold}, {@code trial} and {@code stage}.
 */
package boughwright.viewer.scene;
