// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import java.awt.Color;
import java.util.List;

/**
 * Words to be placed near a point of a view.
 *
 * @param places points the words may point at, the best first: x, y in the view [pixels]
 * @param clearance how far from the point they start at least [pixels]
 * @param words lines, the most important first
 * @param colour colour of the first line
 * @param quiet whether its first line is written small, and it is left out where it would stand
 *     badly, for the key tells the same
 */
record Label(
    List<double[]> places, double clearance, List<String> words, Color colour, boolean quiet) {
  Label {
    places = List.copyOf(places);
    words = List.copyOf(words);
  }

  Label(List<double[]> places, double clearance, List<String> words, Color colour) {
    this(places, clearance, words, colour, false);
  }

  /** The colour of the line that leads to the words: quiet unless the words have their own. */
  Color leader() {
    return colour.equals(Ink.TEXT) || colour.equals(Ink.APEX) ? Ink.HAIR : colour;
  }

  Label firstLineOnly() {
    return new Label(places, clearance, words.subList(0, 1), colour, quiet);
  }
}
