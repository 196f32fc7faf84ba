// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

import java.util.Objects;

/**
 * What a number is, for the person who wonders.
 *
 * @param what what it says, in a sentence
 * @param howSure how far to trust it, in a sentence
 * @param source where it comes from: a publication, or what was computed from what
 */
public record Explanation(String what, String howSure, String source) {
  public Explanation {
    Objects.requireNonNull(what, "what");
    Objects.requireNonNull(howSure, "howSure");
    Objects.requireNonNull(source, "source");
  }
}
