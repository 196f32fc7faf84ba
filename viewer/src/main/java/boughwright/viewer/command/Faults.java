// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Place;
import boughwright.modeller.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Collects the faults of a command, so that a person sees all of them at once. */
final class Faults {
  private final List<Problem> problems = new ArrayList<>();

  /** Something that reads an input. */
  @FunctionalInterface
  interface Reading<T> {
    T read() throws InputException;
  }

  /** What a reading gives; empty, with its faults noted, if it fails. */
  <T> Optional<T> tryTo(Reading<T> reading) {
    try {
      return Optional.of(reading.read());
    } catch (InputException e) {
      problems.addAll(e.problems());
      return Optional.empty();
    }
  }

  void add(Problem problem) {
    problems.add(problem);
  }

  /** Notes a fault of an option or a file. */
  void add(String where, String kind, String found, String remedy) {
    add(Problem.fault(Place.of(where), kind, found, remedy));
  }

  List<Problem> all() {
    return List.copyOf(problems);
  }

  /**
   * Goes on only without faults.
   *
   * @throws InputException with all of them, in the order they were found
   */
  void throwIfAny() throws InputException {
    if (problems.stream().anyMatch(Problem::isFault)) {
      throw new InputException(problems);
    }
  }
}
