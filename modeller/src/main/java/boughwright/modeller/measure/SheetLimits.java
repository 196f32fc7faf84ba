// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.measure;

import boughwright.modeller.problem.VisibleText;

/** How much a tape sheet may hold, and what can be measured on a tree in a container. */
final class SheetLimits {
  /** Bytes of a sheet: 20,000 rows with a few words of notes each. */
  static final int BYTES = 8_000_000;

  static final int ROWS = 20_000;

  /** Columns of a sheet: those read here and as many again for other uses, several times over. */
  static final int COLUMNS = 100;

  /** Characters of one cell: a long note. */
  static final int CELL = 2_000;

  /** Characters of a name of a segment. */
  static final int ID = 100;

  /** Calipers below this are slips: no caliper or twig is as fine [m]. */
  static final double LEAST_CALIPER = 0.1e-3;

  static final double MOST_CALIPER = 2;

  static final double LEAST_LENGTH = 0.1e-3;

  static final double MOST_LENGTH = 20;

  private static final int SHOWN = 40;

  private SheetLimits() {}

  /** A text short enough for one line of a message. */
  static String shown(String text) {
    String start = text.substring(0, Math.min(text.length(), SHOWN));
    return VisibleText.of(start) + (start.length() < text.length() ? "..." : "");
  }
}
