// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.grow;

import boughwright.modeller.tree.Hemisphere;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.format.TextStyle;
import java.util.Locale;

/**
 * When a kind of tree lays new wood. Northern days; half a year later in the south (Rossi et al.
 * 2006, New Phytologist: growth follows the solstice).
 */
public enum GrowingSeason {
  /** Cambium of maple, beech, birch from mid April to early September (from memory). */
  DECIDUOUS(MonthDay.of(4, 15), MonthDay.of(9, 10)),
  /** Elm, ash, oak and their like start two to four weeks earlier (from memory). */
  RING_POROUS(MonthDay.of(3, 25), MonthDay.of(9, 10)),
  /** Norway spruce, Czech lowland: beginning of May to end of August (iForest 9:375, 2016). */
  CONIFER(MonthDay.of(5, 1), MonthDay.of(8, 31)),
  /** No rule of their own was found: taken as for deciduous trees (assumption). */
  EVERGREEN(MonthDay.of(4, 15), MonthDay.of(9, 10)),
  /** What all the others share (assumption). */
  UNKNOWN(MonthDay.of(5, 1), MonthDay.of(8, 31));

  private final MonthDay from;
  private final MonthDay to;

  GrowingSeason(MonthDay from, MonthDay to) {
    this.from = from;
    this.to = to;
  }

  public static GrowingSeason of(TreeKind kind) {
    return switch (kind) {
      case DECIDUOUS -> DECIDUOUS;
      case RING_POROUS -> RING_POROUS;
      case CONIFER -> CONIFER;
      case EVERGREEN -> EVERGREEN;
      case UNKNOWN -> UNKNOWN;
    };
  }

  /**
   * Yearly rings laid up to a day, counted from some day long ago: only differences mean anything.
   * Within a season the rate rises and falls as a cosine, greatest half-way, which is within two
   * weeks of the solstice (conifers: Rossi et al. 2006, New Phytologist; the shape is an
   * assumption).
   *
   * @param day days since 1970-01-01, with parts of a day
   */
  double rings(double day, Hemisphere half) {
    int year = LocalDate.ofEpochDay((long) Math.floor(day)).getYear();
    LocalDate start = turned(from, half).atYear(year);
    if (start.toEpochDay() > day) {
      year--;
      start = turned(from, half).atYear(year);
    }
    LocalDate end = turned(to, half).atYear(year);
    if (!end.isAfter(start)) {
      end = end.plusYears(1);
    }
    double length = end.toEpochDay() - start.toEpochDay();
    double x = Math.min(1, (day - start.toEpochDay()) / length);
    return year + x - Math.sin(2 * Math.PI * x) / (2 * Math.PI);
  }

  /** The season in words: {@code 15 April to 10 September}. */
  public String span(Hemisphere half) {
    return said(turned(from, half)) + " to " + said(turned(to, half));
  }

  private static MonthDay turned(MonthDay day, Hemisphere half) {
    return half == Hemisphere.NORTH ? day : day.with(day.getMonth().plus(6));
  }

  private static String said(MonthDay day) {
    String month = day.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    return day.getDayOfMonth() + " " + month;
  }
}
