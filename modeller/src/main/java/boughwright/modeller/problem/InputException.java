// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.problem;

import java.util.List;
import java.util.stream.Collectors;

/** An input that cannot be used, with every fault found in it. */
public class InputException extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient List<Problem> problems;

  /**
   * @param problems all problems found, at least one of them a fault
   */
  public InputException(List<Problem> problems) {
    super(problems.stream().map(Problem::line).collect(Collectors.joining("\n")));
    if (problems.stream().noneMatch(Problem::isFault)) {
      throw new IllegalArgumentException("an input is refused only for a fault");
    }
    this.problems = List.copyOf(problems);
  }

  public InputException(Problem problem) {
    this(List.of(problem));
  }

  public List<Problem> problems() {
    return problems;
  }
}
