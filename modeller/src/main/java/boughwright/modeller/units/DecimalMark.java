// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.units;

import java.util.Collection;
import java.util.regex.Pattern;

/** The sign between the whole and the broken part of a number. */
public enum DecimalMark {
  POINT,
  COMMA,
  /** Either of them, where it is not known which. */
  EITHER;

  /**
   * A comma that cannot stand between thousands: not three digits after it, or only zeros before.
   */
  private static final Pattern CERTAIN_COMMA =
      Pattern.compile("[+-]?(?:[0-9]*,(?:[0-9]{1,2}|[0-9]{4,})|0*,[0-9]{3})");

  /** A comma with three digits after it, which could stand between thousands. */
  private static final Pattern DOUBTFUL_COMMA = Pattern.compile("[+-]?[0-9]+,[0-9]{3}");

  /**
   * The mark a collection of measures is written with: comma if at least one of them holds a comma
   * that can only be decimal, point if none holds a comma, and either if every comma could also
   * stand between thousands.
   */
  public static DecimalMark of(Collection<String> measures) {
    boolean doubtful = false;
    for (String measure : measures) {
      String number = Measures.number(measure);
      if (CERTAIN_COMMA.matcher(number).matches()) {
        return COMMA;
      }
      doubtful |= isDoubtful(number);
    }
    return doubtful ? EITHER : POINT;
  }

  static boolean isDoubtful(String number) {
    return DOUBTFUL_COMMA.matcher(number).matches() && !CERTAIN_COMMA.matcher(number).matches();
  }
}
