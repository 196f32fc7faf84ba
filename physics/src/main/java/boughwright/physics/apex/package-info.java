// SPDX-License-Identifier: Apache-2.0
/**
 * Which leader becomes the top of the tree: what each would take, and what it would leave.
 *
 * <p>Everything is SI. May import all packages of the physics but {@code choice}, and the modeller.
 */
package boughwright.physics.apex;
