// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.species;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/** Brings names of woods into a form in which those that mean the same are equal. */
final class WoodName {
  /** Letters of other alphabets that look like a Latin one, each followed by that Latin letter. */
  private static final String TWINS =
      "АAВBЕEКKМMНHОOРPСCТTХXаaеeоoрpсcуyхxіiјjѕsԁdɡgΑAΒBΕEΖZΗHΙIΚKΜMΝNΟOΡPΤTΥYΧXοoνvιiαaρp";

  private static final Pattern MARKS = Pattern.compile("\\p{M}");
  private static final Pattern NO_LETTERS = Pattern.compile("[^\\p{L}\\p{N}]+");

  /** The multiplication sign of a hybrid, written as the letter x. */
  private static final Pattern HYBRID_SIGN = Pattern.compile("(^| )x (?=\\p{L})");

  private WoodName() {}

  /** Lower case, without accents; everything but letters and digits is one space. */
  static String plain(String name) {
    String apart = Normalizer.normalize(name, Normalizer.Form.NFKD);
    String bare = MARKS.matcher(apart).replaceAll("").toLowerCase(Locale.ROOT);
    String spaced = NO_LETTERS.matcher(bare).replaceAll(" ");
    return HYBRID_SIGN.matcher(spaced).replaceAll("$1").strip();
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
