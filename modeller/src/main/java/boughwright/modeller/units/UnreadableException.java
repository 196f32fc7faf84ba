// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.units;

import boughwright.modeller.problem.Place;
import boughwright.modeller.problem.Problem;

/** A text that is not the number or the measure it should be. */
public class UnreadableException extends Exception {
  private static final long serialVersionUID = 1L;

  private final String kind;
  private final String remedy;

  /**
   * @param kind short stable name, words joined by hyphens
   * @param found what the text is, and what was expected
   * @param remedy what to do
   */
  UnreadableException(String kind, String found, String remedy) {
    super(found);
    this.kind = kind;
    this.remedy = remedy;
  }

  /** The fault this is at a place the caller knows. */
  public Problem at(Place place) {
    return Problem.fault(place, kind, getMessage(), remedy);
  }
}
