// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.work;

import java.util.Objects;

/**
 * Something said to the person in one line, without stopping their work.
 *
 * @param kind how it is meant
 * @param words what, where and how to mend it
 */
public record Notice(Kind kind, String words) {
  /** How a notice is meant. */
  public enum Kind {
    DONE,
    CAUTION,
    FAULT
  }

  public Notice {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(words, "words");
  }
}
