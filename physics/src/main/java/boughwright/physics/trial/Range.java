// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

/**
 * A number that is not known exactly.
 *
 * @param low 5 % point
 * @param middle median
 * @param high 95 % point
 */
public record Range(double low, double middle, double high) {
  public Range {
    if (!(low <= middle && middle <= high)) {
      throw new IllegalArgumentException("not a range: " + low + ", " + middle + ", " + high);
    }
  }
}
