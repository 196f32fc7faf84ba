// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

/** What can hurt a person or break the law, and what to do about it. */
public enum Caution {
  FLYING("Lines under tension and wire ends fly. Wear eye protection."),
  STAND_CLEAR("Do not stand in line with a taut line."),
  SLOWLY("Tighten slowly. Stop at the first sound."),
  SHARP("Sharp tools: cut away from your hand and from the tree you keep."),
  PASTES("Use sealing pastes and fungicides as their labels say."),
  LAW("Collecting and cutting trees follows local law."),
  ARBORIST(
      "For trees that can fall on people, or any climbing, rigging or cabling, leave it to a"
          + " licensed arborist. This program is for trees in containers."),
  ESTIMATES("Numbers are estimates. Watch the wood, not only the screen.");

  private final String words;

  Caution(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
