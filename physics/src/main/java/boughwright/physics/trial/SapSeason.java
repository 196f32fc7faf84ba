// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.species.Species;
import boughwright.modeller.tree.Hemisphere;
import boughwright.physics.grow.TreeKind;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.format.TextStyle;
import java.util.Locale;

/**
 * When sap rises and bark slips, by the kind of tree. Northern dates; half a year later in the
 * south (Rossi et al. 2006, New Phytologist: growth follows the solstice).
 *
 * <p>That bark slips while the cambium divides, and most before leaves have hardened, is common
 * practice, no source; so are all days, read off the months that each constant names.
 */
enum SapSeason {
  /**
   * Leafless in winter, growth rings without large early pores. Cambium of maple, beech and birch
   * from mid April on (from memory); sap a month before; bending again once leaves have hardened
   * (common practice, no source).
   */
  DECIDUOUS("deciduous trees", MonthDay.of(3, 15), MonthDay.of(6, 15)),
  /** Elm, ash, oak, zelkova, hackberry: two to four weeks earlier (from memory). */
  RING_POROUS("elm, ash, oak and their like", MonthDay.of(3, 1), MonthDay.of(6, 15)),
  /**
   * Cambium of Norway spruce from early May to the end of August (iForest 9:375, 2016), fastest at
   * the solstice (Rossi et al. 2006); growers bend conifers from late summer on (common practice,
   * no source).
   */
  CONIFER("evergreen conifers", MonthDay.of(4, 15), MonthDay.of(7, 31)),
  /** No rule of its own was found: taken as for deciduous trees. */
  EVERGREEN(
      "evergreen broadleaved trees (taken as for deciduous ones, for no rule of their own is known)",
      MonthDay.of(3, 15),
      MonthDay.of(6, 15)),
  /** Everything that any of the others avoids. */
  UNKNOWN("a tree of unknown kind", MonthDay.of(3, 1), MonthDay.of(7, 31));

  private final String kind;
  private final MonthDay from;
  private final MonthDay to;

  SapSeason(String kind, MonthDay from, MonthDay to) {
    this.kind = kind;
    this.from = from;
    this.to = to;
  }

  /** The season of a wood, by the kind of its tree. */
  static SapSeason of(Species species) {
    return switch (TreeKind.of(species)) {
      case DECIDUOUS -> DECIDUOUS;
      case RING_POROUS -> RING_POROUS;
      case CONIFER -> CONIFER;
      case EVERGREEN -> EVERGREEN;
      case UNKNOWN -> UNKNOWN;
    };
  }

  /** The kind of tree, in words. */
  String kind() {
    return kind;
  }

  /** True if bark slips on that day. */
  boolean isOn(LocalDate day, Hemisphere hemisphere) {
    MonthDay now = MonthDay.from(day);
    MonthDay first = turned(from, hemisphere);
    MonthDay last = turned(to, hemisphere);
    return first.isBefore(last)
        ? !now.isBefore(first) && !now.isAfter(last)
        : !now.isBefore(first) || !now.isAfter(last);
  }

  /** The first day on which bark holds again, after a day on which it slips. */
  LocalDate over(LocalDate day, Hemisphere hemisphere) {
    LocalDate last = turned(to, hemisphere).atYear(day.getYear());
    return (last.isBefore(day) ? last.plusYears(1) : last).plusDays(1);
  }

  /** The span in words: {@code 15 March to 15 June}. */
  String span(Hemisphere hemisphere) {
    return said(turned(from, hemisphere)) + " to " + said(turned(to, hemisphere));
  }

  private static MonthDay turned(MonthDay day, Hemisphere hemisphere) {
    return hemisphere == Hemisphere.NORTH ? day : day.with(day.getMonth().plus(6));
  }

  private static String said(MonthDay day) {
    return day.getDayOfMonth()
        + " "
        + day.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH);
  }
}
