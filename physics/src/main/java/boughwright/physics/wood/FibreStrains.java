// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

/**
 * Strains of the outermost living fibres of a bent section.
 *
 * @param tension of the most stretched fibre [1]
 * @param compression of the most compressed fibre, without sign [1]
 */
public record FibreStrains(double tension, double compression) {}
