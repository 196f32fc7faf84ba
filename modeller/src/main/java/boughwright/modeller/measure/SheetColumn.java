// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.measure;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** A column of the tape sheet. */
enum SheetColumn {
  SEGMENT(Measure.TEXT, true),
  PARENT(Measure.TEXT, true),
  KIND(Measure.TEXT, true),
  AZIMUTH(Measure.ANGLE, true),
  ELEVATION(Measure.ANGLE, true),
  LENGTH(Measure.LENGTH, true),
  CALIPER_START(Measure.LENGTH, true),
  CALIPER_END(Measure.LENGTH, true),
  ALONG(Measure.FRACTION, false),
  FROM_PARENT_START(Measure.LENGTH, false),
  JOINS(Measure.TEXT, false),
  BARK(Measure.LENGTH, false),
  LIVE(Measure.TEXT, false),
  KNOTS(Measure.TEXT, false),
  GRAIN(Measure.TEXT, false),
  INCLUDED_BARK(Measure.TEXT, false),
  HOLLOW(Measure.LENGTH, false),
  NOTE(Measure.TEXT, false);

  /** What stands in the cells of a column. */
  enum Measure {
    TEXT,
    FRACTION,
    ANGLE,
    LENGTH
  }

  private final Measure measure;
  private final boolean required;

  SheetColumn(Measure measure, boolean required) {
    this.measure = measure;
    this.required = required;
  }

  Measure measure() {
    return measure;
  }

  boolean isRequired() {
    return required;
  }

  /** Whether the heading of this column ends in a unit. */
  boolean hasUnit() {
    return measure == Measure.ANGLE || measure == Measure.LENGTH;
  }

  /** The heading without its unit. */
  String title() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The heading with an example of its unit. */
  String example() {
    return switch (measure) {
      case LENGTH -> title() + "_mm";
      case ANGLE -> title() + "_deg";
      default -> title();
    };
  }

  /** The column a heading means, once in small letters with underscores; the unit is not judged. */
  static Optional<SheetColumn> of(String heading) {
    return Arrays.stream(values())
        .filter(
            column ->
                heading.equals(column.title())
                    || column.hasUnit() && heading.startsWith(column.title() + "_"))
        .findFirst();
  }
}
