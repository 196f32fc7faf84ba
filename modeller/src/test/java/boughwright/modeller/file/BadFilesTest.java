// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import boughwright.modeller.problem.Problem;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Files of every other kind, none of which is a tree (origin: badinputs/ORIGIN.md). */
class BadFilesTest {
  /** A hang, not a speed: the slowest takes milliseconds. */
  private static final Duration HANG = Duration.ofSeconds(5);

  private static final int FILES = 171;

  @TempDir Path folder;

  /** A row of the index. */
  record Row(String name, String category) {
    @Override
    public String toString() {
      return name;
    }
  }

  private static Path home() {
    try {
      return Path.of(BadFilesTest.class.getResource("badinputs/INDEX.csv").toURI()).getParent();
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  static List<Row> rows() throws IOException {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser =
        CSVParser.parse(home().resolve("INDEX.csv"), StandardCharsets.UTF_8, format)) {
      return parser.stream().map(BadFilesTest::row).toList();
    }
  }

  private static Row row(CSVRecord fields) {
    return new Row(fields.get("file").replaceFirst("files/", ""), fields.get("category"));
  }

  /** The file of a row; the largest, and one with a name some systems refuse, are made here. */
  private Path file(String name) throws IOException {
    Path stored =
        home().resolve("files").resolve(name.startsWith("photo name") ? "jpg_good.jpg" : name);
    if (Files.exists(stored)) {
      return stored;
    }
    String text =
        name.startsWith("json")
            ? "{\"" + "k".repeat(200_000) + "\":1}"
            : "id,parent,x_mm,y_mm,z_mm,caliper_mm,note\n1,,0,0,0,24," + "n".repeat(300_000) + "\n";
    return Files.writeString(folder.resolve(name), text);
  }

  @Test
  void index_listsAllFiles() throws IOException {
    assertThat(rows()).hasSize(FILES);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void check_refusesTheFile_namingItAndThePlace(Row row) throws IOException {
    Path file = file(row.name());
    byte[] before = Files.readAllBytes(file);
    List<Problem> problems = assertTimeoutPreemptively(HANG, () -> TreeFiles.check(file));
    assertThat(problems).filteredOn(Problem::isFault).hasSize(1);
    Problem fault = problems.stream().filter(Problem::isFault).findFirst().orElseThrow();
    assertThat(fault.place().source()).isEqualTo(file.toString());
    assertThat(fault.found()).isNotBlank();
    assertThat(fault.remedy()).isNotBlank();
    assertThat(fault.line()).doesNotContain("Exception", "com.fasterxml", "\n", "\tat ");
    assertThat(fault.line()).hasSizeLessThan(500 + file.toString().length());
    if (!fault.found().contains("looks like")) {
      assertThat(fault.place().line()).as(fault.line()).isPositive();
      assertThat(fault.place().column()).as(fault.line()).isPositive();
    }
    assertThat(Files.readAllBytes(file)).isEqualTo(before);
  }
}
