// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

/**
 * Strains of the outermost fibres of one section.
 *
 * @param tension of the most stretched fibre [1]
 * @param compression of the most compressed fibre, without sign [1]
 * @param deadFibreIsStretchedMost whether the most stretched fibre lies in a dead face
 */
record FibreStrains(double tension, double compression, boolean deadFibreIsStretchedMost) {}
