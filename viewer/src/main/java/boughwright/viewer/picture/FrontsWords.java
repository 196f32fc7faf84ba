// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import java.util.List;

/**
 * The words of a picture of fronts, or of their map.
 *
 * @param name name of the tree
 * @param about plan, style, eye
 * @param statement what came out, in one sentence
 * @param note what holds for all of it, at the foot
 * @param cards the fronts, the best first
 */
public record FrontsWords(
    String name, String about, String statement, String note, List<FrontCard> cards) {
  public FrontsWords {
    cards = List.copyOf(cards);
  }
}
