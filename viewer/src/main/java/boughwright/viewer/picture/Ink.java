// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.viewer.scene.Colour;
import java.awt.Color;
import java.util.List;
import java.util.Map;

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

  /** The days of poses on the way. */
  static final Color STAGE = new Color(0x6B4A78);

  /** The outline of what stays. */
  static final Color STAYS = new Color(0x155A4A);

  /** What would be lost of a bend. */
  static final Color SPRINGBACK = new Color(0x5A3A80);

  /** Things of one kind that are told apart, such as lines. */
  static final List<Color> SERIES =
      List.of(
          new Color(0x17457A),
          new Color(0xC65D12),
          new Color(0x2E8B78),
          new Color(0x9C2F6B),
          new Color(0x3D3A38),
          new Color(0xB08A00));

  /** What each ink is on a dark ground: as far from it as the ink is from paper. */
  private static final Map<Integer, Color> BY_NIGHT =
      Map.ofEntries(
          entry(PAPER, 0x1B1D1A),
          entry(FRAME, 0x484A42),
          entry(TEXT, 0xEAE7DE),
          entry(QUIET, 0xB4B3A8),
          entry(HAIR, 0x8F8F84),
          entry(APEX, 0x7FD1BC),
          entry(TROUBLE, 0xF4A093),
          entry(SOIL, 0x9A8A70),
          entry(STRETCHED, 0xF3A65A),
          entry(SQUEEZED, 0x9DB8FF),
          entry(STAGE, 0xCDAEDD),
          entry(STAYS, 0x7FD1BC),
          entry(SPRINGBACK, 0xC9B0EE));

  private Ink() {}

  private static Map.Entry<Integer, Color> entry(Color ink, int other) {
    return Map.entry(ink.getRGB(), new Color(other));
  }

  /** An ink as it is used on a dark ground, as clear as it is. */
  static Color byNight(Color ink) {
    Color other = BY_NIGHT.getOrDefault(ink.getRGB() | 0xFF000000, ink);
    return new Color(other.getRed(), other.getGreen(), other.getBlue(), ink.getAlpha());
  }

  static Color faded(Color colour, double alpha) {
    return new Color(
        colour.getRed(), colour.getGreen(), colour.getBlue(), (int) Math.round(alpha * 255));
  }

  static Color of(Colour colour) {
    return new Color(colour.rgb());
  }
}
