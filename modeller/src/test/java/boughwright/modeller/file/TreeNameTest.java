// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.tree.NameRules;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Odd texts as the name of a tree: kept exactly, or refused with the reason. */
class TreeNameTest {
  private static final Set<String> REFUSED =
      Set.of("text_spaces.txt", "text_nul.txt", "text_xml_fffe.txt");

  @TempDir Path folder;

  static List<Path> texts() throws Exception {
    Path files = Path.of(TreeNameTest.class.getResource("badinputs/files").toURI());
    try (Stream<Path> all = Files.list(files)) {
      return all.filter(p -> p.getFileName().toString().startsWith("text_")).sorted().toList();
    }
  }

  private static String fileNamed(String name) {
    return Change.of().set("/name", TextNode.valueOf(name).toString()).text();
  }

  @Test
  void texts_areAllThere() throws Exception {
    assertThat(texts()).hasSize(25);
  }

  @ParameterizedTest
  @MethodSource("texts")
  void name_isKeptExactly_orRefusedWithTheReason(Path text) throws Exception {
    byte[] raw = Files.readAllBytes(text);
    String name = new String(raw, StandardCharsets.UTF_8);
    if (REFUSED.contains(text.getFileName().toString())) {
      Verdict verdict = Verdict.of(fileNamed(name));
      assertThat(verdict.kinds()).containsExactly("bad-name");
      assertThat(verdict.problems().get(0).found()).containsAnyOf("blank", "U+0000", "U+FFFE");
      return;
    }
    Path file = folder.resolve("a.tree.json");
    TreeFiles.write(
        TreeFiles.read("a", fileNamed(name).getBytes(StandardCharsets.UTF_8)).document(), file);
    assertThat(TreeFiles.read(file).document().tree().name().getBytes(StandardCharsets.UTF_8))
        .isEqualTo(raw);
  }

  @ParameterizedTest
  @ValueSource(strings = {"\\ud800", "\\udc00x", "a\\ud800\\ud800"})
  void halfACharacter_isRefused_whereverItStands(String half) {
    String name = Change.of().text().replace("Five pieces (invented)", half);
    assertThat(Verdict.of(name).kinds()).containsExactly("lone-surrogate");
    String unknown =
        Change.of().text().replaceFirst("\\{", "{\"x\": \"" + half.replace("\\", "\\\\") + "\",");
    assertThat(Verdict.of(unknown).kinds()).containsExactly("lone-surrogate");
  }

  @Test
  void halfACharacterAsBytes_isNotUtf8() throws IOException {
    byte[] bytes =
        Change.of().text().replace("Five", "\u0001\u0001\u0001").getBytes(StandardCharsets.UTF_8);
    for (int i = 0; i < bytes.length; i++) {
      if (bytes[i] == 1) {
        bytes[i] = (byte) 0xED;
        bytes[i + 1] = (byte) 0xA0;
        bytes[i + 2] = (byte) 0x80;
        break;
      }
    }
    assertThat(Verdict.of(bytes).kinds()).containsExactly("not-utf-8");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "b*", " ", "\u00a0", "x\u0000"})
  void idThatCannotBeUsed_isRefused(String id) {
    String text = Change.of().set("/segments/0/id", TextNode.valueOf(id).toString()).text();
    assertThat(Verdict.of(text).kinds()).contains("bad-id");
  }

  @Test
  void longId_isRefused() {
    String id = TextNode.valueOf("a".repeat(NameRules.LONGEST_ID + 1)).toString();
    assertThat(Verdict.of(Change.of().set("/segments/0/id", id).text()).kinds()).contains("bad-id");
  }
}
