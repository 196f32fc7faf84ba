// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import java.util.Objects;

/**
 * How much of the doubt about cracking comes from one input.
 *
 * @param input the input, in words
 * @param share part of the variance of the margin against cracking [1]
 * @param advice what a person can do about it, in words; empty where nothing can be done
 */
public record InputShare(String input, double share, String advice) {
  public InputShare {
    Objects.requireNonNull(input, "input");
    if (!(share >= 0 && share <= 1)) {
      throw new IllegalArgumentException("a share lies between 0 and 1, not " + share);
    }
    Objects.requireNonNull(advice, "advice");
  }
}
