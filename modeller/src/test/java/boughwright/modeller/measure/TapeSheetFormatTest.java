// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.measure;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Problem;
import boughwright.modeller.tree.Tree;
import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Ways of writing the same sheet that are all read, some with a remark. */
class TapeSheetFormatTest {
  private static final String PLAIN = Sheets.of(Sheets.TRUNK, "b1,t1,branch,90,12.5,50,9,7.5");

  private static Tree plain() throws InputException {
    return Sheets.tree(PLAIN);
  }

  private static void assertReadWithRemarks(String sheet, String... kinds) throws InputException {
    MeasuredTree read = Sheets.read(sheet);
    assertThat(read.document().tree()).isEqualTo(plain());
    assertThat(read.warnings()).extracting(Problem::kind).containsExactlyInAnyOrder(kinds);
  }

  @Test
  void byteOrderMark_doesNotStickToTheFirstWord() throws InputException {
    assertReadWithRemarks("\uFEFF" + PLAIN);
  }

  @Test
  void windowsAndMixedLineEnds_areRead() throws InputException {
    assertReadWithRemarks(PLAIN.replace("\n", "\r\n"));
    assertReadWithRemarks(PLAIN.replaceFirst("\n", "\r\n"));
    assertReadWithRemarks(PLAIN.replaceFirst("\n$", ""));
  }

  @Test
  void blankLines_areSkipped() throws InputException {
    assertReadWithRemarks("\n" + PLAIN.replace("\n", "\n\n \n,,,,,,,\n"));
  }

  @Test
  void spacesAndCapitalsInHeadings_areRead() throws InputException {
    String headings =
        " Segment , PARENT,Kind,Azimuth (deg),elevation_deg, Length mm ,Caliper start [mm],"
            + "Caliper_End_MM,,";
    assertReadWithRemarks(PLAIN.replace(Sheets.HEADINGS, headings));
  }

  @Test
  void semicolonsAndDecimalCommas_areReadAndSaid() throws InputException {
    String sheet = PLAIN.replace(',', ';').replace('.', ',');
    assertReadWithRemarks(sheet, "separator", "decimal-comma");
    assertReadWithRemarks("sep=;\n" + sheet, "separator", "decimal-comma");
    assertThat(Sheets.read(sheet).warnings().get(0).line()).contains("semicolons");
  }

  @Test
  void tabs_areReadAndSaid() throws InputException {
    assertReadWithRemarks(PLAIN.replace(',', '\t'), "separator");
  }

  @Test
  void decimalCommasInQuotes_areReadBetweenCommas() throws InputException {
    assertReadWithRemarks(
        PLAIN.replace("12.5", "\"12,5\"").replace("7.5", "\"7,5\""), "decimal-comma");
  }

  @Test
  void commentsASpreadsheetHasPadded_areRead() throws InputException {
    assertReadWithRemarks(
        PLAIN
            .replace("# name: Test\n", "\"# name: Test\",,,,,,,\n")
            .replace("betulus\n", "betulus,,,,,,,\n"));
  }

  @Test
  void commentBetweenRows_isLeftOutAndSaid() throws InputException {
    assertReadWithRemarks(PLAIN.replace("b1,", "# later, \"perhaps\nb1,"), "comment-between-rows");
    assertReadWithRemarks(PLAIN + "# the end", "comment-between-rows");
  }

  @Test
  void unknownColumn_isLeftOutAndSaid() throws InputException {
    String sheet =
        PLAIN
            .replace("caliper_end_mm", "caliper_end_mm,colour")
            .replace("24,20", "24,20,grey")
            .replace("7.5", "7.5,brown");
    assertReadWithRemarks(sheet, "unknown-column");
    assertThat(Sheets.read(sheet).warnings().get(0).line())
        .contains("bench.csv:3")
        .contains("colour");
  }

  @Test
  void unitInACell_isReadAndSaid() throws InputException {
    assertReadWithRemarks(PLAIN.replace("24,20", "24 mm,20mm"), "unit-in-cell");
    assertReadWithRemarks(PLAIN.replace("24,20", "2.4 cm,20"), "other-unit");
  }

  @Test
  void missingName_isTakenFromTheFileAndSaid() throws InputException {
    MeasuredTree read = Sheets.read(PLAIN.replace("# name: Test\n", ""));
    assertThat(read.document().tree().name()).isEqualTo("bench");
    assertThat(read.warnings()).extracting(Problem::kind).containsExactly("no-name");
  }

  @Test
  void unknownTitle_isACommentAndSaid() throws InputException {
    assertReadWithRemarks("# specie: x\n" + PLAIN, "unknown-title");
    assertReadWithRemarks("# three words: are no title\n# dug up in spring\n" + PLAIN);
  }

  @Test
  void doubledQuotes_areOneQuote() throws InputException {
    String sheet = PLAIN.replace("_end_mm", "_end_mm,note").replace("24,20", "24,20,\"3\"\" pot\"");
    Tree tree = Sheets.tree(sheet.replace("7.5", "7.5,"));
    assertThat(tree.segments().get(0).extras()).containsEntry("note", "3\" pot");
  }

  @Test
  void similarNames_stayApartAndAreSaid() throws InputException {
    for (String twin : List.of("T1", "t1\u200D", "\uFF54\uFF11")) {
      MeasuredTree read = Sheets.read(Sheets.of(Sheets.TRUNK, twin + ",t1,branch,90,0,50,9,7"));
      assertThat(read.document().tree().segments()).hasSize(2);
      assertThat(read.document().tree().segments().get(1).id()).isEqualTo(twin);
      assertThat(read.warnings()).extracting(Problem::kind).contains("ids-look-alike");
    }
  }

  @Test
  void invisibleCharacterInAName_isKeptAndSaid() throws InputException {
    MeasuredTree read = Sheets.read(Sheets.of(Sheets.TRUNK, "2\u200D,t1,branch,90,0,50,9,7"));
    assertThat(read.warnings()).extracting(Problem::kind).containsExactly("hidden-character");
    assertThat(read.warnings().get(0).line()).contains("U+200D");
  }

  @Test
  void windows1252_isReadAndSaid() throws InputException {
    String sheet = PLAIN.replace("name: Test", "name: \u00C9rable 1\u201D");
    MeasuredTree read =
        TapeSheet.read(sheet.getBytes(Charset.forName("windows-1252")), "bench.csv");
    assertThat(read.document().tree().name()).isEqualTo("\u00C9rable 1\u201D");
    assertThat(read.warnings()).extracting(Problem::kind).containsExactly("not-utf-8");
    assertThat(read.warnings().get(0).line())
        .contains("bench.csv:1")
        .contains("\u00C9rable 1\u201D");
  }

  @Test
  void otherEncodings_areRefused() {
    byte[] little = ("\uFEFF" + PLAIN).getBytes(StandardCharsets.UTF_16LE);
    for (byte[] sheet : List.of(little, PLAIN.getBytes(StandardCharsets.UTF_16BE))) {
      assertThat(Sheets.faults(sheet))
          .singleElement()
          .extracting(Problem::kind)
          .isEqualTo("not-text");
    }
  }

  @Test
  void bytesThatAreNoText_areRefused() {
    byte[] head = PLAIN.replace("Test", "\u00FCber").getBytes(StandardCharsets.UTF_8);
    for (byte[] bad :
        List.of(new byte[] {(byte) 0xE9}, new byte[] {(byte) 0xFF, (byte) 0xFE, '('})) {
      ByteArrayOutputStream sheet = new ByteArrayOutputStream();
      sheet.writeBytes(head);
      sheet.writeBytes(bad);
      List<Problem> faults = Sheets.faults(sheet.toByteArray());
      assertThat(faults).singleElement().extracting(Problem::kind).isEqualTo("not-utf-8");
      assertThat(faults.get(0).line()).contains("bench.csv:6").contains("UTF-8");
    }
    byte[] strange = PLAIN.replace("Test", "\u00FF\u00FE(").getBytes(StandardCharsets.ISO_8859_1);
    assertThat(Sheets.faults(strange)).extracting(Problem::kind).containsExactly("not-utf-8");
  }
}
