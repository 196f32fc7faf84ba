// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import boughwright.modeller.problem.Amount;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.NearNames;
import boughwright.modeller.problem.Place;
import boughwright.modeller.problem.Problem;
import java.util.Collection;
import java.util.List;

/** Says why an edit is not made, and what to do instead. */
final class Refusal {
  private static final String SOURCE = "the tree";

  /** Beyond this a size or a place is a slip of the unit [m]. */
  private static final double LARGEST = 100;

  private static final int MOST_FOR_NEAR_NAMES = 300;

  private Refusal() {}

  static InputException of(String subject, String kind, String found, String remedy) {
    return new InputException(problem(subject, kind, found, remedy));
  }

  static Problem problem(String subject, String kind, String found, String remedy) {
    return Problem.fault(Place.of(SOURCE, subject), kind, found, remedy);
  }

  /** Nothing is called so. */
  static InputException unknown(String what, String id, Collection<String> known) {
    List<String> near = known.size() > MOST_FOR_NEAR_NAMES ? List.of() : NearNames.of(id, known);
    return of(
        what + " " + quoted(id),
        "unknown-" + what.replace(' ', '-'),
        "there is no " + what + " called " + quoted(id),
        near.isEmpty() ? "Choose one that is there" : "Did you mean " + String.join(" or ", near));
  }

  static String quoted(String id) {
    return "\"" + id + "\"";
  }

  /** A size, more than 0 [m]. */
  static double size(String subject, String what, double metres) throws InputException {
    if (!(metres > 0) || metres > LARGEST) {
      throw of(
          subject,
          "out-of-range",
          what + " is " + Amount.millimetres(metres) + ", a size above 0 is expected",
          "Measure it again and look at the unit");
    }
    return metres;
  }

  /** A size, 0 or more [m]. */
  static double sizeOrNone(String subject, String what, double metres) throws InputException {
    return metres == 0 ? 0.0 : size(subject, what, metres);
  }

  /** A number that is one, within reach of a tree [m]. */
  static double coordinate(String subject, String what, double metres) throws InputException {
    if (!(Math.abs(metres) <= LARGEST)) {
      throw of(
          subject,
          "out-of-range",
          what + " is " + Amount.millimetres(metres) + ", far from any tree",
          "Measure it again and look at the unit");
    }
    return metres + 0.0;
  }

  /** An angle that is one [rad]. */
  static double angle(String subject, String what, double radians) throws InputException {
    if (!Double.isFinite(radians)) {
      throw of(subject, "out-of-range", what + " is no angle", "Give it in degrees");
    }
    return radians + 0.0;
  }

  /** A fraction of a length. */
  static double fraction(String subject, double along) throws InputException {
    if (!(along >= 0 && along <= 1)) {
      throw of(
          subject,
          "out-of-range",
          "the place is at " + Amount.number(along) + " of the length",
          "Give a place from 0 (the start) to 1 (the end)");
    }
    return along + 0.0;
  }
}
