// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.measure;

import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Place;
import boughwright.modeller.problem.Problem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Collects what is wrong with one sheet. Mutable; lives while the sheet is read. */
final class SheetProblems {
  /** Faults listed by name; a sheet with more of them has one cause, and the rest is counted. */
  static final int LISTED = 200;

  private final String source;
  private final List<Problem> problems = new ArrayList<>();
  private int unlisted;
  private int faults;

  SheetProblems(String source) {
    this.source = source;
  }

  String source() {
    return source;
  }

  Place place(int line, String subject) {
    return new Place(source, line, 0, subject);
  }

  void fault(Place place, String kind, String found, String remedy) {
    add(Problem.fault(place, kind, found, remedy));
  }

  void warn(Place place, String kind, String found, String remedy) {
    add(Problem.warning(place, kind, found, remedy));
  }

  void add(Problem problem) {
    faults += problem.isFault() ? 1 : 0;
    if (problems.size() < LISTED || problem.isFault() && faults == 1) {
      problems.add(problem);
    } else {
      unlisted++;
    }
  }

  int faults() {
    return faults;
  }

  void throwIfFaulty() throws InputException {
    if (faults > 0) {
      throw new InputException(inOrder());
    }
  }

  /** The fault just found makes everything after it meaningless. */
  InputException stop(Place place, String kind, String found, String remedy) {
    fault(place, kind, found, remedy);
    return new InputException(inOrder());
  }

  List<Problem> inOrder() {
    List<Problem> sorted = new ArrayList<>(problems);
    sorted.sort(Comparator.comparingInt(problem -> problem.place().line()));
    if (unlisted > 0) {
      sorted.add(
          Problem.warning(
              Place.of(source),
              "more-problems",
              "there are " + unlisted + " more problems like these",
              "Mend the ones above first"));
    }
    return sorted;
  }
}
