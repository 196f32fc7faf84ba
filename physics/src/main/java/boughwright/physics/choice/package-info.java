// SPDX-License-Identifier: Apache-2.0
/**
 * Plans of one tree side by side: what each risks, costs and leaves.
 *
 * <p>Everything is SI. May import all packages of the physics and the modeller.
 */
package boughwright.physics.choice;
