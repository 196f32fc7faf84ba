// SPDX-License-Identifier: Apache-2.0
/**
 * Looking at wood along one line of sight: what is projected where, what hides what.
 *
 * <p>Projection is orthographic: what is seen depends on the direction of the line of sight alone.
 * Wood is tapered pieces with round ends, foliage is ellipsoids. Everything is SI. May import
 * {@code problem}, {@code geometry}, {@code tree}, {@code plan} and {@code design.shape}.
 */
package boughwright.modeller.design.sight;
