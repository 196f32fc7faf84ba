// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.file.NumberReader.Range;
import boughwright.modeller.problem.Amount;
import boughwright.modeller.tree.Condition;
import boughwright.modeller.tree.Hemisphere;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads what the tree has been through, and how well its calipers were read. */
final class ConditionReader {
  /** No caliper in a working hand errs by more [m]. Common practice, no source. */
  private static final double WORST_CALIPER = 3e-3;

  private ConditionReader() {}

  static Condition condition(ObjectReader top) {
    Optional<ObjectReader> given = top.object("condition", "condition");
    if (given.isEmpty()) {
      return Condition.UNKNOWN;
    }
    ObjectReader object = given.get();
    return new Condition(
        object.choice("hemisphere", Hemisphere.class),
        Dates.read(object, "repotted_on"),
        Dates.read(object, "collected_on"),
        Dates.read(object, "worked_on"),
        object.extras());
  }

  static OptionalDouble caliperError(ObjectReader top) {
    OptionalDouble error =
        top.numbers().optional("caliper_error_mm", Quantity.MILLIMETRES, Range.POSITIVE);
    if (error.isPresent() && error.getAsDouble() > WORST_CALIPER) {
      top.warn(
          "caliper_error_mm",
          "large-error",
          "caliper_error_mm is "
              + Amount.millimetres(error.getAsDouble())
              + ", more than a caliper errs",
          "Nine readings in ten lie this near the truth: 0.3 mm is usual, 1 mm for a tape");
    }
    return error;
  }
}
