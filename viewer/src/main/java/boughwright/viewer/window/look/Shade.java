// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

import java.util.Locale;

/** A colour by what it is for; its value depends on the tone. */
public enum Shade {
  /** Behind the tree. */
  PAPER,
  /** Behind controls. */
  PANEL,
  /** Behind text that is typed, and popups. */
  RAISED,
  /** Thin lines that part things. */
  RULE,
  /** Text and drawn lines. */
  INK,
  /** Text of second rank. */
  QUIET,
  /** The one colour that says: here. */
  ACCENT,
  /** Text on the accent. */
  ON_ACCENT,
  /** A light wash of the accent, behind what is hovered or chosen. */
  WASH,
  /** Segments that are picked. */
  SELECTION,
  /** Words of caution. */
  CAUTION,
  /** Words about faults. */
  FAULT,
  /** The soil line. */
  SOIL;

  String key() {
    StringBuilder key = new StringBuilder("Boughwright.");
    String[] parts = name().toLowerCase(Locale.ROOT).split("_");
    key.append(parts[0]);
    for (int i = 1; i < parts.length; i++) {
      key.append(Character.toUpperCase(parts[i].charAt(0))).append(parts[i].substring(1));
    }
    return key.toString();
  }
}
