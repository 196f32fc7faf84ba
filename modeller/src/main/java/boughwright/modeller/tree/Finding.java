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
}
