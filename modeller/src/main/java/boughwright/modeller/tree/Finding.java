// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import boughwright.modeller.problem.Severity;
import java.util.List;
import java.util.Objects;

/**
 * Something wrong with a set of segments, before anyone knows which line of which file it is on.
 *
 * @param severity fault or warning
 * @param subjects ids of the segments or wounds concerned, the one to mend first
 * @param field the field to look at, as files call it, with its place in the list that was judged,
 *     such as {@code segments[3].parent}; may be empty
 * @param kind short stable name, words joined by hyphens
 * @param found what is wrong
 * @param remedy what to do
 */
public record Finding(
    Severity severity,
    List<String> subjects,
    String field,
    String kind,
    String found,
    String remedy) {
  public Finding {
    Objects.requireNonNull(severity, "severity");
    subjects = List.copyOf(subjects);
    Objects.requireNonNull(field, "field");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(found, "found");
    Objects.requireNonNull(remedy, "remedy");
  }

  /**
   * What a finding says.
   *
   * @param kind short stable name, words joined by hyphens
   * @param found what is wrong
   * @param remedy what to do
   */
  public record Words(String kind, String found, String remedy) {}

  /** Something that makes the tree or plan unusable. */
  public static Finding fault(List<String> subjects, String field, Words words) {
    return of(Severity.FAULT, subjects, field, words);
  }

  /** Something to look at again. */
  public static Finding warning(List<String> subjects, String field, Words words) {
    return of(Severity.WARNING, subjects, field, words);
  }

  private static Finding of(Severity severity, List<String> subjects, String field, Words words) {
    return new Finding(severity, subjects, field, words.kind(), words.found(), words.remedy());
  }

  public boolean isFault() {
    return severity == Severity.FAULT;
  }

  /** What this finding says. */
  public Words words() {
    return new Words(kind, found, remedy);
  }
}
