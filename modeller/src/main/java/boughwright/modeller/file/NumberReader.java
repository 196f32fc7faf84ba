// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.geometry.Direction3;
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

  /** A direction this near length 1 is taken for one [1]. */
  private static final double UNIT = 1e-12;

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
    },
    ABOVE_ZERO_TO_ONE("a number above 0 and at most 1") {
      @Override
      boolean holds(double value) {
        return value > 0 && value <= 1;
      }
    },
    /** Of a percentage, which stands for a fraction. */
    PERCENTAGE("a number from 0 to 100") {
      @Override
      boolean holds(double value) {
        return value >= 0 && value <= 1;
      }
    },
    /** Of an angle in degrees, which stands for one in radians. */
    UP_TO_A_TURN("a number above 0 and at most 360") {
      @Override
      boolean holds(double value) {
        return value > 0 && value <= TURN;
      }
    };

    /** Degrees are turned into the nearest radian, which may lie above 2 pi by a rounding. */
    private static final double TURN = 2 * Math.PI * (1 + 1e-12);

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
    return triple(field, Quantity.MILLIMETRES).map(p -> new Point3(p[0], p[1], p[2]));
  }

  /** A direction [x, y, z] of any length but 0; one of length 1 is kept digit for digit. */
  Optional<Direction3> direction(String field) {
    Optional<double[]> triple = triple(field, Quantity.FRACTION);
    if (triple.isEmpty()) {
      return Optional.empty();
    }
    double[] v = triple.get();
    double largest = Math.max(Math.abs(v[0]), Math.max(Math.abs(v[1]), Math.abs(v[2])));
    if (largest == 0) {
      object.fault(
          field,
          "no-direction",
          field + " is [0, 0, 0], which points nowhere",
          "Give [x, y, z] along the pull, such as [0, 0, -1] for a hung weight");
      return Optional.empty();
    }
    double norm = Math.hypot(Math.hypot(v[0], v[1]), v[2]);
    return Optional.of(
        Math.abs(norm - 1) <= UNIT
            ? new Direction3(v[0], v[1], v[2])
            : Direction3.of(v[0] / largest, v[1] / largest, v[2] / largest));
  }

  /** A point [x, y] on the soil in millimetres of the tree frame; a fault names the axis. */
  Optional<double[]> planPoint(String field) {
    return tuple(field, Quantity.MILLIMETRES, 2);
  }

  /** A place [x, y] in a picture, in pixels; a fault names the axis. */
  Optional<double[]> pixel(String field) {
    return tuple(field, Quantity.FRACTION, 2);
  }

  /** A whole number that may be missing. */
  int count(String field, int least, int most, int usual) {
    double count = optional(field, Quantity.FRACTION, Range.ANY).orElse(usual);
    if (count < least || count > most || count % 1 != 0) {
      object.fault(
          field,
          "out-of-range",
          field + " is no whole number from " + least + " to " + most,
          "Count again and give a whole number");
      return usual;
    }
    return (int) count;
  }

  private Optional<double[]> triple(String field, Quantity quantity) {
    return tuple(field, quantity, AXES.length);
  }

  private Optional<double[]> tuple(String field, Quantity quantity, int size) {
    String brackets = size == AXES.length ? "[x, y, z]" : "[x, y]";
    Optional<Value.Items> list =
        object.value(
            field,
            Value.Items.class,
            "a list " + brackets + " of " + (size == AXES.length ? "three" : "two") + " numbers");
    if (list.isEmpty()) {
      return Optional.empty();
    }
    List<Value> values = list.get().values();
    if (values.size() != size) {
      object.fault(
          field,
          "no-point",
          field
              + " has "
              + values.size()
              + " numbers, "
              + (size == AXES.length ? "three" : "two")
              + " are expected",
          "Give " + brackets + quantity.in());
      return Optional.empty();
    }
    double[] point = new double[size];
    boolean sound = true;
    for (int axis = 0; axis < size; axis++) {
      point[axis] = coordinate(values.get(axis), AXES[axis] + " of " + field, quantity);
      sound &= Double.isFinite(point[axis]);
    }
    return sound ? Optional.of(point) : Optional.empty();
  }

  private double coordinate(Value value, String name, Quantity quantity) {
    if (value instanceof Value.Numeral number) {
      double si = quantity.toSi(number.digits());
      if (Math.abs(si) <= LARGEST) {
        return si;
      }
    }
    boolean number = value instanceof Value.Numeral;
    String found = name + " is " + value.words();
    object
        .problems()
        .fault(
            value,
            object.subject(),
            new Words(
                number ? "too-large" : "no-number",
                number ? found + ", too large" : found + ": a number is expected",
                "Measure it again and give [x, y, z]" + quantity.in()));
    return Double.NaN;
  }
}
