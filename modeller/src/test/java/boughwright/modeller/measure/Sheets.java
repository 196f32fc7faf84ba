// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.measure;

import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Problem;
import boughwright.modeller.tree.Tree;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Small sheets for tests. */
final class Sheets {
  static final String TITLE = "# name: Test\n# species: carpinus-betulus\n";
  static final String HEADINGS =
      "segment,parent,kind,azimuth_deg,elevation_deg,length_mm,caliper_start_mm,caliper_end_mm";
  static final String TRUNK = "t1,,trunk,,90,90,24,20";

  private Sheets() {}

  /** A sheet with the usual title and headings. */
  static String of(String... rows) {
    return TITLE + HEADINGS + '\n' + String.join("\n", rows) + '\n';
  }

  static MeasuredTree read(String sheet) throws InputException {
    return TapeSheet.read(sheet.getBytes(StandardCharsets.UTF_8), "bench.csv");
  }

  static Tree tree(String sheet) throws InputException {
    return read(sheet).document().tree();
  }

  /** What is wrong with a sheet that must be refused. */
  static List<Problem> faults(String sheet) {
    return faults(sheet.getBytes(StandardCharsets.UTF_8));
  }

  static List<Problem> faults(byte[] sheet) {
    try {
      TapeSheet.read(sheet, "bench.csv");
    } catch (InputException e) {
      return e.problems();
    }
    throw new AssertionError("the sheet was read, though it should have been refused");
  }
}
