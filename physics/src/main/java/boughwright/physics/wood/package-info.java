// SPDX-License-Identifier: Apache-2.0
/**
 * How wood answers strain: stiffness, the response of its sections, limits.
 *
 * <p>May import {@code rod} and the modeller.
 */
package boughwright.physics.wood;
