// SPDX-License-Identifier: Apache-2.0
/**
 * A tree and the proposals of a plan become a pose, forces and strain.
 *
 * <p>Everything is SI in the tree frame as measured. May import {@code rod}, {@code wood}, {@code
 * hold} and the modeller.
 */
package boughwright.physics.trial;
