// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.problem.Place;
import boughwright.modeller.problem.Problem;
import boughwright.modeller.problem.Severity;
import boughwright.modeller.tree.Finding.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Collects the problems of one file while it is read. Mutable, used by one reader. */
final class ProblemList {
  private static final Comparator<Problem> BY_PLACE =
      Comparator.comparingInt((Problem problem) -> problem.place().line())
          .thenComparingInt(problem -> problem.place().column());

  private final String source;
  private final List<Problem> problems = new ArrayList<>();
  private final Map<String, Unknown> unknown = new LinkedHashMap<>();
  private int faults;

  /** Fields of one name that this version does not know. */
  private static final class Unknown {
    final Place first;
    final String name;
    final String remedy;
    int count;

    Unknown(Place first, String name, String remedy) {
      this.first = first;
      this.name = name;
      this.remedy = remedy;
    }
  }

  ProblemList(String source) {
    this.source = source;
  }

  void fault(Value at, String subject, Words words) {
    add(Severity.FAULT, at, subject, words);
  }

  void warn(Value at, String subject, Words words) {
    add(Severity.WARNING, at, subject, words);
  }

  void add(Severity severity, Value at, String subject, Words words) {
    faults += severity == Severity.FAULT ? 1 : 0;
    problems.add(
        new Problem(severity, place(at, subject), words.kind(), words.found(), words.remedy()));
  }

  /** Notes a field this version does not know; fields of one name in like objects count up. */
  void unknownField(Value at, String subject, String name, String remedy) {
    String alike = subject.replaceAll("\"[^\"]*\"", "").strip() + "/" + name;
    unknown.computeIfAbsent(alike, key -> new Unknown(place(at, subject), name, remedy)).count++;
  }

  private Place place(Value at, String subject) {
    return new Place(source, at.line(), at.column(), subject);
  }

  /** Number of faults so far; a reader compares it before and after. */
  int faults() {
    return faults;
  }

  /** All problems in the order of the file. */
  List<Problem> sorted() {
    List<Problem> all = new ArrayList<>(problems);
    for (Unknown one : unknown.values()) {
      String more = one.count > 1 ? " (and " + (one.count - 1) + " more like it)" : "";
      all.add(
          Problem.warning(
              one.first,
              "unknown-field",
              "the field " + Value.Text.quoted(one.name) + " is not known" + more,
              one.remedy));
    }
    all.sort(BY_PLACE);
    return List.copyOf(all);
  }
}
