// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.species;

import java.text.Normalizer;
import java.util.Locale;

/** Brings names of woods into a form in which those that mean the same are equal. */
final class WoodName {
  /** Letters of other alphabets that look like a Latin one, each followed by that Latin letter. */
  private static final String TWINS =
      "АAВBЕEКKМMНHОOРPСCТTХXаaеeоoрpсcуyхxіiјjѕsԁdɡgΑAΒBΕEΖZΗHΙIΚKΜMΝNΟOΡPΤTΥYΧXοoνvιiαaρp";

  private WoodName() {}

  /** Lower case, without accents; everything but letters and digits is one space. */
  static String plain(String name) {
    String apart = Normalizer.normalize(name, Normalizer.Form.NFKD).replaceAll("\\p{M}", "");
    return apart
        .toLowerCase(Locale.ROOT)
        .replaceAll("[^\\p{L}\\p{N}]+", " ")
        .replaceAll("(^| )x (?=\\p{L})", "$1")
        .strip();
  }

  /** The name with letters that only look Latin replaced by the Latin ones. */
  static String inLatinLetters(String name) {
    StringBuilder latin = new StringBuilder(name.length());
    for (char c : name.toCharArray()) {
      int at = TWINS.indexOf(c);
      latin.append(at >= 0 && at % 2 == 0 ? TWINS.charAt(at + 1) : c);
    }
    return latin.toString();
  }
}
