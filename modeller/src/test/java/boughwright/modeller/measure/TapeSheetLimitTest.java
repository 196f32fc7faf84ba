// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.measure;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Problem;
import java.time.Duration;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;

class TapeSheetLimitTest {
  private static final int ROWS = 20_000;

  /** Far more than a sheet takes; only a reader that grows with the square of it is as slow. */
  private static final Duration HANG = Duration.ofSeconds(20);

  private static String chain(int rows) {
    return Sheets.TITLE
        + Sheets.HEADINGS
        + "\ns0,,trunk,,90,5,24,20\n"
        + IntStream.range(1, rows)
            .mapToObj(i -> "s" + i + ",s" + (i - 1) + ",trunk," + i % 360 + ",80,5,24,20")
            .collect(Collectors.joining("\n"));
  }

  @Test
  void longestSheet_isRead_howeverDeep() {
    MeasuredTree read = Assertions.assertTimeoutPreemptively(HANG, () -> Sheets.read(chain(ROWS)));
    assertThat(read.document().tree().segments()).hasSize(ROWS);
  }

  @Test
  void longerSheet_isRefused() {
    assertThat(Sheets.faults(chain(ROWS + 1)))
        .singleElement()
        .satisfies(fault -> assertThat(fault.line()).contains("20000 rows"));
  }

  @Test
  void ringOfTwentyThousand_isRefusedAtOnce() {
    String ring = chain(ROWS).replace("s0,,trunk", "s0,s" + (ROWS - 1) + ",trunk");
    Assertions.assertTimeoutPreemptively(
        HANG, () -> assertThat(Sheets.faults(ring)).extracting(Problem::kind).contains("ring"));
  }

  @Test
  void manyFaults_areCountedAfterTheFirstHundreds() {
    String sheet = chain(1_000).replace(",24,20", ",0,20");
    assertThat(Sheets.faults(sheet)).hasSize(SheetProblems.LISTED + 1);
    assertThat(Sheets.faults(sheet).get(SheetProblems.LISTED).line()).contains("800 more");
  }

  @Test
  void hugeCells_areRefusedWithTheirPlace() {
    String cell = "n".repeat(300_000);
    String sheet = Sheets.of(Sheets.TRUNK).replace("_end_mm", "_end_mm,note");
    assertThat(Sheets.faults(sheet.replace("24,20", "24,20," + cell)))
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.kind()).isEqualTo("long-cell");
              assertThat(fault.line()).contains("bench.csv:4: column 9").hasSizeLessThan(200);
            });
  }

  @Test
  void longName_isRefused() {
    String sheet = Sheets.of("i".repeat(101) + ",,trunk,,90,90,24,20");
    assertThat(Sheets.faults(sheet)).extracting(Problem::kind).containsExactly("long-id");
  }

  @Test
  void longestName_isRead() throws InputException {
    String id = "i".repeat(100);
    assertThat(Sheets.tree(Sheets.of(id + ",,trunk,,90,90,24,20")).segments().get(0).id())
        .isEqualTo(id);
  }

  @Test
  void oddLines_doNotHangTheReader() {
    String commas = ",".repeat(3_000_000);
    for (String line :
        new String[] {"# x" + commas + "x", commas + "x", "\"#" + "\",".repeat(500_000)}) {
      Assertions.assertTimeoutPreemptively(
          HANG, () -> assertThat(Sheets.faults(line + "\n" + Sheets.HEADINGS)).isNotEmpty());
    }
  }

  @Test
  void tooManyColumns_areRefused() {
    String headings = Sheets.HEADINGS + ",x".repeat(93) + '\n';
    assertThat(Sheets.faults(Sheets.TITLE + headings))
        .singleElement()
        .satisfies(fault -> assertThat(fault.line()).contains("bench.csv:3", "101 columns"));
  }

  @Test
  void fileBeyondTheLimit_isRefused() {
    assertThat(Sheets.faults(new byte[8_000_001]))
        .singleElement()
        .satisfies(fault -> assertThat(fault.line()).contains("8000000 bytes"));
  }
}
