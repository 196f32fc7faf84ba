// SPDX-License-Identifier: Apache-2.0
/**
 * How wood answers strain: stiffness, limits.
 *
 * <p>May import {@code rod} and the modeller.
 */
package boughwright.physics.wood;
