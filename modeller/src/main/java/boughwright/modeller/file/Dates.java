// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import java.time.LocalDate;
import java.util.Optional;

/** Reads days, and questions those no grower alive writes down. */
final class Dates {
  private static final int FIRST_YEAR = 1900;
  private static final int LAST_YEAR = 2100;

  private Dates() {}

  /** A day that may be missing; one centuries away is kept and warned of. */
  static Optional<LocalDate> read(ObjectReader object, String field) {
    Optional<LocalDate> day = object.date(field);
    day.filter(d -> d.getYear() < FIRST_YEAR || d.getYear() > LAST_YEAR)
        .ifPresent(
            d ->
                object.warn(
                    field,
                    "far-date",
                    field + " is " + d + ", centuries away",
                    "Check the year; days from " + FIRST_YEAR + " to " + LAST_YEAR + " are usual"));
    return day;
  }
}
