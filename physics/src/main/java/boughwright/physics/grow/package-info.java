// SPDX-License-Identifier: Apache-2.0
/**
 * What growth does to a bend: new wood that locks it, wire that bites, the growing season.
 *
 * <p>Everything is SI. May import {@code rod}, {@code wood}, {@code hold} and the modeller; knows
 * no trial.
 */
package boughwright.physics.grow;
