// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.problem;

import java.util.Objects;

/**
 * One fault or warning.
 *
 * @param severity fault or warning
 * @param place where it is
 * @param kind short stable name for machines, words joined by hyphens, such as {@code duplicate-id}
 * @param found what is wrong, with the value found and what was expected
 * @param remedy one thing the person can do next, in workshop words
 */
public record Problem(Severity severity, Place place, String kind, String found, String remedy) {
  public Problem {
    Objects.requireNonNull(severity, "severity");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(found, "found");
    Objects.requireNonNull(remedy, "remedy");
  }

  public static Problem fault(Place place, String kind, String found, String remedy) {
    return new Problem(Severity.FAULT, place, kind, found, remedy);
  }

  public static Problem warning(Place place, String kind, String found, String remedy) {
    return new Problem(Severity.WARNING, place, kind, found, remedy);
  }

  public boolean isFault() {
    return severity == Severity.FAULT;
  }

  /** The problem as one line of text, without control characters: place, what, remedy. */
  public String line() {
    String mark = isFault() ? "" : "note: ";
    return VisibleText.of(mark + place + ": " + found + ". " + remedy);
  }
}
