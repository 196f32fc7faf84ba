// SPDX-License-Identifier: Apache-2.0
/**
 * What a tree shows to the viewer from a front and at a planting angle, how that is weighed, and
 * which fronts are best.
 *
 * <p>Everything is SI. May import {@code design.shape}, {@code design.sight}, {@code design.ground}
 * and what those may import.
 */
package boughwright.modeller.design.front;
