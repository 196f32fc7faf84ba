// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Problem;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TapeSheetFaultTest {

  private static void assertOneFault(String sheet, String kind, String... named) {
    List<Problem> faults = Sheets.faults(sheet).stream().filter(Problem::isFault).toList();
    assertThat(faults).as("%s", faults).hasSize(1);
    assertThat(faults.get(0).kind()).isEqualTo(kind);
    assertThat(faults.get(0).line()).contains(named).hasSizeLessThan(300);
  }

  /** Row b1 stands in line 5; each cell is bad in one way. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0x1F|not-a-number|0x1",
        "0x1.8p3|not-a-number|0x1.8p3",
        "1e400|not-a-number|1e400",
        "1e-12|not-a-number|1e-12",
        "0.000000000001|out-of-range|0.1 and 2000 mm",
        "NaN|not-a-number|NaN",
        "Infinity|not-a-number|Infinity",
        "\u0662\u0664|not-a-number|U+0662",
        "\uFF12\uFF14|not-a-number|U+FF12",
        "\u22125|not-a-number|U+2212",
        "-3|out-of-range|-3",
        "0|out-of-range|0 is not between",
        "24000|out-of-range|24000",
        "\"1,234.5\"|ambiguous-number|separator",
        "\"1,234\"|ambiguous-number|two ways",
        "1'234|ambiguous-number|separator",
        "9 furlong|unknown-unit|furlong",
        "true|not-a-number|true",
        "999999999999999999999|number-too-long|20 digits",
        "''|no-caliper|no caliper"
      })
  void caliper_isRefused(String cell, String kind, String named) {
    String text = cell.equals("''") ? "" : cell;
    assertOneFault(
        Sheets.of(Sheets.TRUNK, "b1,t1,branch,90,0,50," + text + ",0.2"),
        kind,
        "bench.csv:5: segment \"b1\", column caliper_start_mm",
        named);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "b1,t1,branch,90,0,0,9,7|out-of-range|length_mm",
        "b1,t1,branch,90,0,30000,9,7|out-of-range|length_mm",
        "b1,t1,branch,90,0,,9,7|empty-cell|length_mm",
        "b1,t1,branch,361,0,50,9,7|out-of-range|azimuth_deg",
        "b1,t1,branch,,0,50,9,7|empty-cell|azimuth_deg",
        "b1,t1,branch,north,0,50,9,7|not-a-number|azimuth_deg",
        "b1,t1,branch,90,91,50,9,7|out-of-range|elevation_deg",
        "b1,t1,branch,90,,50,9,7|empty-cell|elevation_deg",
        "b1,t1,branch,90,10 gon,50,9,7|unknown-unit|elevation_deg",
        "b1,t1,twig,90,0,50,9,7|unknown-word|kind",
        "b1,t1,,90,0,50,9,7|empty-cell|kind",
        ",t1,branch,90,0,50,9,7|empty-cell|segment",
        "b1,t1,branch,90,0,50,9|short-row|7 cells under 8 headings",
        "b1,t1,branch,90,12,5,50,9,7|long-row|9 cells under 8 headings",
        "b1,t9,branch,90,0,50,9,7|unknown-parent|t9",
        "b1,T1,branch,90,0,50,9,7|unknown-parent|but \"t1\" is",
        "b1,b1,branch,90,0,50,9,7|ring|its own parent",
        "t1,t1,branch,90,0,50,9,7|duplicate-id|line 4",
        "x,,branch,90,0,50,9,7|two-bases|\"t1\", \"x\"",
        "b1,t1,branch,90,0,50,9,\"7\"x|broken-quotes|bench.csv:5",
        "b1,t1,branch,90,0,50,9,\"7|broken-quotes|bench.csv:5"
      })
  void row_isRefused(String row, String kind, String named) {
    assertOneFault(Sheets.of(Sheets.TRUNK, row), kind, "bench.csv:5", named);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "length_mm|length|no-unit|length_mm",
        "length_mm|length_furlong|unknown-unit|length_furlong",
        "azimuth_deg|azimuth|no-unit|azimuth_deg",
        "azimuth_deg|azimuth_gon|unknown-unit|azimuth_gon",
        "kind|sort|missing-column|kind",
        "kind|segment|duplicate-column|segment"
      })
  void heading_isRefused(String good, String bad, String kind, String named) {
    String sheet = Sheets.of(Sheets.TRUNK).replace(good, bad);
    List<Problem> faults = Sheets.faults(sheet).stream().filter(Problem::isFault).toList();
    assertThat(faults).extracting(Problem::kind).contains(kind);
    assertThat(faults.get(0).line()).contains("bench.csv:3", named);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "measured: 2027-02-30|not-a-date|2027-02-30",
        "measured: 2100-02-29|not-a-date|2100-02-29",
        "measured: 99999-01-01|not-a-date|99999-01-01",
        "measured: 02.03.2026|not-a-date|02.03.2026",
        "measured: 2027-03-14T02:30|not-a-date|2027-03-14T02:30",
        "unions: inside|unknown-word|inside",
        "bark: 0.8|no-unit|0.8",
        "bark: -1 mm|bad-bark|-1 mm",
        "name: Second|duplicate-title|twice",
        "unions:|empty-title|colon"
      })
  void title_isRefused(String line, String kind, String named) {
    String sheet = Sheets.of(Sheets.TRUNK).replace("\nsegment", "\n# " + line + "\nsegment");
    assertOneFault(sheet, kind, "bench.csv:3", named);
  }

  @Test
  void blankName_isRefused() {
    assertOneFault(
        Sheets.of(Sheets.TRUNK).replace("name: Test", "name:   "), "empty-title", "bench.csv:1");
  }

  @Test
  void missingSpecies_isRefused() {
    String sheet = Sheets.of(Sheets.TRUNK).replace("# species: carpinus-betulus\n", "");
    assertOneFault(sheet, "no-species", "# species: carpinus-betulus");
  }

  @Test
  void ring_isRefusedWithAllItsNames() {
    String ring = Sheets.of(Sheets.TRUNK, "b1,b3,branch,90,0,50,9,7", "b2,b1,branch,90,0,50,9,7");
    String sheet = ring + "b3,b2,branch,90,0,50,9,7\nb4,b3,branch,90,0,50,9,7\n";
    assertOneFault(sheet, "ring", "\"b1\", \"b3\", \"b2\"");
  }

  @Test
  void sheetWithoutABase_isRefused() {
    List<Problem> faults = Sheets.faults(Sheets.of("a,b,trunk,,90,50,9,7", "b,a,trunk,,90,50,9,7"));
    assertThat(faults).extracting(Problem::kind).containsExactlyInAnyOrder("no-base", "ring");
  }

  @Test
  void placeOnTheParent_isRefused_whenItCannotBe() {
    String sheet = Sheets.TITLE + Sheets.HEADINGS + ",along,from_parent_start_mm\n";
    String trunk = sheet + "t1,,trunk,,90,90,24,20,,\n";
    String branch = "b1,t1,branch,90,0,50,9,7,";
    assertOneFault(trunk + branch + ",91", "beyond-parent", "91.0 mm along \"t1\"", "90.0 mm long");
    assertOneFault(trunk + branch + "0.5,45", "two-places", "b1");
    assertOneFault(trunk + branch + "1.5,", "out-of-range", "between 0 and 1");
    assertOneFault(trunk + branch + "half,", "not-a-number", "half");
    assertOneFault(sheet + "t1,,trunk,,90,90,24,20,0.5,", "no-parent", "t1");
  }

  @Test
  void barkThatLeavesNoWood_isRefused() {
    String sheet = Sheets.TITLE + Sheets.HEADINGS + ",bark_mm\nt1,,trunk,,90,90,24,5,2.5\n";
    assertOneFault(sheet, "no-wood", "bark_mm");
  }

  @Test
  void mixedDecimalMarks_areRefused() {
    String sheet = Sheets.of("t1,,trunk,,90,90,24.5,\"20,5\"");
    assertOneFault(sheet, "mixed-decimal-marks", "caliper_start_mm", "24.5");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"1,,0,0,0,24,base|no-headings|bench.csv:3", "sep=|unknown-separator|sep"})
  void sheetWithoutHeadings_isRefused(String line, String kind, String named) {
    boolean separator = line.startsWith("sep");
    assertOneFault(
        separator ? line + '\n' + Sheets.of(Sheets.TRUNK) : Sheets.TITLE + line + '\n',
        kind,
        named);
  }

  @Test
  void emptySheets_areRefused() {
    assertOneFault("", "empty-file", "bench.csv");
    assertOneFault("\uFEFF", "empty-file", "bench.csv");
    assertOneFault(" \n\n", "empty-file", "bench.csv");
    assertOneFault(Sheets.TITLE, "no-headings", "bench.csv");
    assertOneFault("sep=;\n" + Sheets.TITLE, "no-rows", "bench.csv");
    assertOneFault(Sheets.of(), "no-rows", "bench.csv");
  }

  @Test
  void allFaults_areNamedAtOnce() {
    String sheet =
        Sheets.of(
                "t1,,trunk,,90,90,24,0x14",
                "b1,t1,twig,90,0,50,9,7",
                "b2,t9,branch,400,0,-5,9,",
                "b2,t1,branch,90,0,50,9,7")
            .replace("carpinus-betulus", "");
    assertThat(Sheets.faults(sheet))
        .extracting(problem -> problem.place().line() + " " + problem.kind())
        .containsExactly(
            "2 empty-title",
            "4 not-a-number",
            "5 unknown-word",
            "6 out-of-range",
            "6 out-of-range",
            "6 unknown-parent",
            "7 duplicate-id");
  }

  @Test
  void missingFile_isRefused(@TempDir Path folder) {
    for (Path file : List.of(folder.resolve("none.csv"), folder)) {
      assertThatThrownBy(() -> TapeSheet.read(file))
          .isInstanceOf(InputException.class)
          .hasMessageContaining(file.toString());
    }
  }
}
