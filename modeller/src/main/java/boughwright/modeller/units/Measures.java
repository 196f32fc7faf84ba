// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.units;

import boughwright.modeller.problem.VisibleText;

/** Splits a measure such as {@code 24 mm} into its number and its unit. */
final class Measures {
  private static final String SIGNS_OF_UNITS = "\"\u2033\u201D\u00B0";
  private static final int SHOWN = 30;

  private Measures() {}

  /** What stands before the unit; the whole text if it is all letters. */
  static String number(String measure) {
    String text = measure.strip();
    int split = split(text);
    return split == 0 ? text : text.substring(0, split).stripTrailing();
  }

  /** The letters and inch or degree signs at the end; empty if there are none, or nothing else. */
  static String unit(String measure) {
    String text = measure.strip();
    int split = split(text);
    return split == 0 ? "" : text.substring(split);
  }

  private static int split(String text) {
    int at = text.length();
    while (at > 0 && isOfUnit(text.charAt(at - 1))) {
      at--;
    }
    return at;
  }

  private static boolean isOfUnit(char sign) {
    return Character.isLetter(sign) || SIGNS_OF_UNITS.indexOf(sign) >= 0;
  }

  /** The text in quotes, short enough for one line and without anything invisible. */
  static String shown(String text) {
    String visible = VisibleText.of(text.substring(0, Math.min(text.length(), 2 * SHOWN)));
    return visible.length() <= SHOWN
        ? '"' + visible + '"'
        : '"' + visible.substring(0, SHOWN) + "...\"";
  }
}
