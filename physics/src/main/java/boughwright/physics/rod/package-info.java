// SPDX-License-Identifier: Apache-2.0
/**
 * Large-deflection rods and their equilibrium under a section law they are given; knows no tree and
 * no wood.
 *
 * <p>Imports nothing of the project but {@code modeller.geometry}.
 */
package boughwright.physics.rod;
