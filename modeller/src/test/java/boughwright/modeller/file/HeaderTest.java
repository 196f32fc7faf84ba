// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.problem.InputException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HeaderTest {
  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      value = {
        "2, newer-version, 2",
        "1.9, newer-version, 1.9",
        "9999, newer-version, 9999",
        "1e999, newer-version, 1e999",
        "0, unknown-version, 0",
        "-1, unknown-version, -1",
        "\"one\", unknown-version, one",
        "null, unknown-version, null"
      })
  void otherVersion_isRefused_namingFoundAndKnown(String version, String kind, String named)
      throws Exception {
    String text =
        Sample.text("cases.tree.json").replace("\"version\": 1", "\"version\": " + version);
    Path file = folder.resolve("other.tree.json");
    Files.writeString(file, text);
    assertThat(TreeFiles.check(file))
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.kind()).isEqualTo(kind);
              assertThat(problem.isFault()).isTrue();
              assertThat(problem.found()).contains(named).contains("known is version 1");
            });
    assertThat(Files.readString(file)).isEqualTo(text);
  }

  @Test
  void missingVersion_isRefused() {
    assertThat(Verdict.of(Change.of().remove("/version").text()).kinds())
        .containsExactly("missing-field");
  }

  @Test
  void versionWrittenWithDecimals_isTheSameNumber() {
    String text = Sample.text("cases.tree.json").replace("\"version\": 1", "\"version\": 1.0");
    assertThat(Verdict.of(text).refused()).isFalse();
  }

  @Test
  void otherFormat_standsAlone() {
    String text = Change.of().set("/format", "\"tree\"").set("/name", "7").text();
    assertThat(Verdict.of(text).kinds()).containsExactly("no-tree-file");
  }

  @Test
  void write_leavesANewerTree_asItIs() throws Exception {
    Path file = folder.resolve("newer.tree.json");
    String newer = Change.of().set("/version", "2").text();
    Files.writeString(file, newer);
    TreeFile ours = TreeFiles.read("ours", Change.of().bytes());
    Assertions.assertThatExceptionOfType(InputException.class)
        .isThrownBy(() -> TreeFiles.write(ours.document(), file))
        .withMessageContaining("newer version");
    assertThat(Files.readString(file)).isEqualTo(newer);
    assertThat(folder.toFile().list()).containsExactly("newer.tree.json");
  }
}
