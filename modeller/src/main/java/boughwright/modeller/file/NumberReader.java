// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.tree.Finding.Words;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Takes numbers out of one JSON object and turns them into SI. */
final class NumberReader {
  private static final String[] AXES = {"x", "y", "z"};

  /** Beyond this a coordinate or size is no measurement, and squares of it lose all meaning. */
  private static final double LARGEST = 1e100;

  private final ObjectReader object;

  NumberReader(ObjectReader object) {
    this.object = object;
  }

  /** Which numbers are allowed. */
  enum Range {
    ANY("a number") {
      @Override
      boolean holds(double value) {
        return true;
      }
    },
    POSITIVE("a number above 0") {
      @Override
      boolean holds(double value) {
        return value > 0;
      }
    },
    NOT_NEGATIVE("0 or more") {
      @Override
      boolean holds(double value) {
        return value >= 0;
      }
    },
    ZERO_TO_ONE("a number from 0 to 1") {
      @Override
      boolean holds(double value) {
        return value >= 0 && value <= 1;
      }
    };

    final String words;

    Range(String words) {
      this.words = words;
    }

    abstract boolean holds(double value);
  }

  /** A number that may be missing. */
  OptionalDouble optional(String field, Quantity quantity, Range range) {
    Optional<Value.Numeral> number = object.value(field, Value.Numeral.class, "a number");
    return number.isEmpty()
        ? OptionalDouble.empty()
        : checked(number.get(), field, quantity, range);
  }

  /** A number that must be there; NaN after a fault. */
  double required(String field, Quantity quantity, Range range) {
    if (!object.has(field)) {
      object.missing(field, remedy(quantity, range));
      return Double.NaN;
    }
    if (object.at(field) instanceof Value.Nothing) {
      object.fault(
          field, "null-value", field + " is null, nobody knows it", remedy(quantity, range));
      return Double.NaN;
    }
    return optional(field, quantity, range).orElse(Double.NaN);
  }

  private static String remedy(Quantity quantity, Range range) {
    return "Measure it and give " + range.words + quantity.suffix();
  }

  /** A fraction along a segment that must be there. */
  double along(String field) {
    return required(field, Quantity.FRACTION, Range.ZERO_TO_ONE);
  }

  private OptionalDouble checked(
      Value.Numeral number, String field, Quantity quantity, Range range) {
    double value = quantity.toSi(number.digits());
    if (Math.abs(value) > LARGEST) {
      object.fault(
          field, "too-large", field + " is " + shown(number) + ", too large", "Correct the number");
      return OptionalDouble.empty();
    }
    if (!range.holds(value)) {
      String found = field + " is " + shown(number) + quantity.suffix();
      object.fault(
          field,
          "out-of-range",
          found + ": " + range.words + " is expected",
          "Check the reading and correct the number");
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(value);
  }

  private static String shown(Value.Numeral number) {
    String digits = number.digits();
    return digits.length() <= 30 ? digits : digits.substring(0, 30) + "…";
  }

  /** A point [x, y, z] in millimetres of the tree frame; a fault names the axis. */
  Optional<Point3> point(String field) {
    Optional<Value.Items> list =
        object.value(field, Value.Items.class, "a list [x, y, z] of three numbers");
    if (list.isEmpty()) {
      return Optional.empty();
    }
    List<Value> values = list.get().values();
    if (values.size() != AXES.length) {
      object.fault(
          field,
          "no-point",
          field + " has " + values.size() + " numbers, three are expected",
          "Give [x, y, z] in mm");
      return Optional.empty();
    }
    double[] point = new double[AXES.length];
    boolean sound = true;
    for (int axis = 0; axis < AXES.length; axis++) {
      point[axis] = coordinate(values.get(axis), field, AXES[axis]);
      sound &= Double.isFinite(point[axis]);
    }
    return sound ? Optional.of(new Point3(point[0], point[1], point[2])) : Optional.empty();
  }

  private double coordinate(Value value, String field, String axis) {
    if (value instanceof Value.Numeral number) {
      double metres = Quantity.MILLIMETRES.toSi(number.digits());
      if (Math.abs(metres) <= LARGEST) {
        return metres;
      }
    }
    boolean number = value instanceof Value.Numeral;
    String found = axis + " of " + field + " is " + value.words();
    object
        .problems()
        .fault(
            value,
            object.subject(),
            new Words(
                number ? "too-large" : "no-number",
                number ? found + ", too large" : found + ": a number is expected",
                "Measure the point again and give " + axis + " in mm"));
    return Double.NaN;
  }
}
