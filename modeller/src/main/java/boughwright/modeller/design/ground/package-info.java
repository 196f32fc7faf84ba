// SPDX-License-Identifier: Apache-2.0
/**
 * The root base: where roots leave the trunk, how level they lie at a planting angle, what a
 * container leaves of them, and how safely the tree stands in it.
 *
 * <p>Values and reasons only; words for people are told elsewhere. Everything is SI. What is told
 * of a pose is in the viewer's frame: x to the viewer's right, y away from the viewer, z up from
 * the soil line, origin at the centre of the trunk base. May import {@code problem}, {@code
 * geometry}, {@code species}, {@code tree}, {@code plan} and {@code design.shape}.
 */
package boughwright.modeller.design.ground;
