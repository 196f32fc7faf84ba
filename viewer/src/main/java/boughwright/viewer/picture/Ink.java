// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.viewer.scene.Colour;
import java.awt.Color;

/** Colours of paper, words and lines; our own choice. */
final class Ink {
  static final Color PAPER = new Color(0xF7F4EC);
  static final Color FRAME = new Color(0xD8D0C1);
  static final Color TEXT = new Color(0x2A2825);
  static final Color QUIET = new Color(0x6B655C);
  static final Color HAIR = new Color(0x8F887D);
  static final Color APEX = new Color(0x1D6154);
  static final Color TROUBLE = new Color(0x8E2F1C);
  static final Color SOIL = new Color(0x7A6A57);

  /** The stretched side, and cracks. */
  static final Color STRETCHED = new Color(0xB4540A);

  /** The squeezed side, and kinks. */
  static final Color SQUEEZED = new Color(0x24459C);

  private Ink() {}

  static Color faded(Color colour, double alpha) {
    return new Color(
        colour.getRed(), colour.getGreen(), colour.getBlue(), (int) Math.round(alpha * 255));
  }

  static Color of(Colour colour) {
    return new Color(colour.rgb());
  }
}
