// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.measure;

import java.util.List;

/**
 * One row of a sheet, as text.
 *
 * @param line line of the file it begins on
 * @param cells its cells without the spaces around them, one for each heading
 */
record SheetRow(int line, List<String> cells) {
  SheetRow {
    cells = List.copyOf(cells);
  }
}
