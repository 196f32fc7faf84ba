// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.problem;

import java.util.Objects;

/**
 * Where in an input something was found.
 *
 * @param source name of the file or option, as the person gave it
 * @param line line in the file, counted from 1; 0 when there is none
 * @param column column in the line, counted from 1; 0 when there is none
 * @param subject the thing at that place in the person's words, such as {@code segment "b1"}; may
 *     be empty
 */
public record Place(String source, int line, int column, String subject) {
  public Place {
    Objects.requireNonNull(source, "source");
    Objects.requireNonNull(subject, "subject");
    if (line < 0 || column < 0) {
      throw new IllegalArgumentException("line and column count from 1, or are 0: " + line);
    }
  }

  /** A whole file or option. */
  public static Place of(String source) {
    return new Place(source, 0, 0, "");
  }

  /** A thing in a file whose line is not known, or an option's value. */
  public static Place of(String source, String subject) {
    return new Place(source, 0, 0, subject);
  }

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(source);
    if (line > 0) {
      text.append(':').append(line);
      if (column > 0) {
        text.append(':').append(column);
      }
    }
    if (!subject.isEmpty()) {
      text.append(": ").append(subject);
    }
    return text.toString();
  }
}
