// SPDX-License-Identifier: Apache-2.0
/**
 * What growth does: new wood that locks a bend, wire that bites, wounds that close, calipers that
 * thicken, the growing season.
 *
 * <p>Everything is SI. May import {@code rod}, {@code wood}, {@code hold} and the modeller; knows
 * no trial.
 */
package boughwright.physics.grow;
