// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

/**
 * A probability and how well it is known.
 *
 * @param p the best single probability [1]
 * @param low the end that nine tenths of what is not known about species and tree leave it above,
 *     half of the rest each side: 5 % point [1]
 * @param high the 95 % point likewise [1]
 */
public record Probability(double p, double low, double high) {
  public Probability {
    if (!(p >= 0 && p <= 1 && low >= 0 && high <= 1 && low <= high)) {
      throw new IllegalArgumentException("not a probability: " + p + ", " + low + " to " + high);
    }
  }
}
