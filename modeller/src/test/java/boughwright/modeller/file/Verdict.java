// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Problem;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** What the reader says of a text. */
record Verdict(List<Problem> problems) {

  static Verdict of(byte[] bytes) {
    try {
      return new Verdict(TreeFiles.read("tree.json", bytes).warnings());
    } catch (InputException e) {
      return new Verdict(e.problems());
    }
  }

  static Verdict of(String text) {
    return of(text.getBytes(StandardCharsets.UTF_8));
  }

  boolean refused() {
    return problems.stream().anyMatch(Problem::isFault);
  }

  List<String> kinds() {
    return problems.stream().map(Problem::kind).toList();
  }

  List<String> lines() {
    return problems.stream().map(Problem::line).toList();
  }
}
