// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.problem.Problem;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Texts that are no JSON: one fault, in plain words, at the right line and column. */
class SyntaxFaultTest {
  /** The parser shows a wrong word where the word ends: {@code -Infinity}. */
  private static final int PARSER_READS_AHEAD = 9;

  static Stream<Arguments> faults() {
    return Stream.of(
        Arguments.of("", 1, 1, "empty"),
        Arguments.of("  \n ", 1, 1, "empty"),
        Arguments.of("{\n  \"a\": NaN}", 2, 8, "NaN or Infinity is no number"),
        Arguments.of("{\n  \"a\": -Infinity}", 2, 8, "NaN or Infinity is no number"),
        Arguments.of("{\n  \"a\": 1,\n}", 3, 1, "a comma stands before"),
        Arguments.of("[1,\n]", 2, 1, "a comma stands before"),
        Arguments.of("{\"a\" 1}", 1, 6, "\"1\" (U+0031) is not expected"),
        Arguments.of("{'a': 1}", 1, 2, "straight double quotation mark"),
        Arguments.of("{\"a\": 01}", 1, 7, "needless 0"),
        Arguments.of("{\"a\": .5}", 1, 7, "not expected here"),
        Arguments.of("{\"a\": +5}", 1, 7, "not expected here"),
        Arguments.of("{\"a\": 0x1}", 1, 8, "not expected here"),
        Arguments.of("{\"a\": 1} // yes", 1, 10, "text goes on after the end"),
        Arguments.of("{ // no\n\"a\": 1}", 1, 3, "no comments"),
        Arguments.of("{\"a\": 1}{\"a\": 2}", 1, 9, "text goes on after the end"),
        Arguments.of("{\"a\": 12.", 1, 10, "cut short"),
        Arguments.of("{\"a\": [1, {\"b\": 2}", 1, 19, "cut short"),
        Arguments.of("{\"a\": \"un", 1, 10, "cut short"),
        Arguments.of("<!DOCTYPE html>\n<html></html>", 1, 1, "web page"),
        Arguments.of("<<<<<<< ours\n{}\n=======\n{}\n>>>>>>> theirs", 1, 1, "unfinished merge"),
        Arguments.of("{\"a\": 1,\n=======\n\"b\": 2}", 2, 1, "unfinished merge"),
        Arguments.of("{\"a\": \"x\ny\"}", 1, 9, "line break or control character"),
        Arguments.of("{\"a\": \"\\x\"}", 1, 9, "backslash"),
        Arguments.of("{\"a\": 1,\n \"a\": 2}", 2, 7, "stands twice in one object, first in line 1"),
        Arguments.of("{\"a\": 1, \"\\u0061\": 2}", 1, 20, "stands twice"));
  }

  @ParameterizedTest
  @MethodSource("faults")
  void fault_standsAlone_inPlainWords(String text, int line, int column, String words) {
    List<Problem> problems = Verdict.of(text).problems();
    assertThat(problems).hasSize(1);
    assertThat(problems.get(0).found() + problems.get(0).remedy()).contains(words);
    assertThat(problems.get(0).place().line()).isEqualTo(line);
    assertThat(problems.get(0).place().column()).isBetween(column - 1, column + PARSER_READS_AHEAD);
  }

  @ParameterizedTest
  @ValueSource(strings = {"UTF-16LE", "UTF-16BE", "UTF-16", "UTF-32LE"})
  void otherEncoding_isNamed(String charset) {
    String family = charset.substring(0, 6);
    assertThat(Verdict.of(Sample.text().getBytes(Charset.forName(charset))).problems())
        .singleElement()
        .satisfies(
            p ->
                assertThat(p.found())
                    .contains("not UTF-8")
                    .contains(charset.equals("UTF-32LE") ? "not UTF-8" : family));
  }

  @Test
  void latin1_isRefused_withItsPlace() {
    byte[] bytes =
        Change.of().text().replace("Five", "F\u00fcnf").getBytes(StandardCharsets.ISO_8859_1);
    assertThat(Verdict.of(bytes).problems())
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.found()).contains("0xFC", "Latin-1");
              assertThat(p.place().line()).isEqualTo(4);
              assertThat(p.place().column()).isEqualTo(14);
            });
  }

  @Test
  void byteOrderMarkOfUtf8_isPassedOver_withANote() {
    assertThat(Verdict.of("\ufeff" + Change.of().text()).kinds())
        .containsExactly("byte-order-mark");
  }

  @ParameterizedTest
  @CsvSource({"60, false", "61, true", "5000, true"})
  void nesting_isLimited(int depth, boolean refused) {
    String deep = "[".repeat(depth - 1) + "]".repeat(depth - 1);
    Verdict verdict =
        Verdict.of(Change.of().text().replaceFirst("\\{", "{\"deep\": " + deep + ","));
    assertThat(verdict.refused()).isEqualTo(refused);
    assertThat(verdict.kinds()).containsExactly(refused ? "too-much" : "unknown-field");
  }

  @Test
  void longNumber_isRefused() {
    String text = Change.of().text().replace("120", "1".repeat(5_000));
    assertThat(Verdict.of(text).kinds()).containsExactly("too-much");
  }

  @ParameterizedTest
  @ValueSource(strings = {"1e999", "-1e999"})
  void overflow_isRefused_namingIdAndAxis(String number) {
    String text = Change.of().text().replaceFirst("200\\.?0? ]", number + " ]");
    assertThat(Verdict.of(text).problems())
        .first()
        .satisfies(
            p -> {
              assertThat(p.kind()).isEqualTo("too-large");
              assertThat(p.line()).contains("s5").contains("z of end_mm").contains(number);
            });
  }
}
