// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The page for people says what the program reads. */
class TreeFilePageTest {
  private static final int LEAST_FIELDS = 60;

  private static String page() throws Exception {
    return Files.readString(Path.of("..", "docs", "user", "tree-file.md"));
  }

  @Test
  void wholeFileOfThePage_isReadWithoutAWord() throws Exception {
    String page = page();
    int start = page.indexOf("```json") + "```json".length();
    String file = page.substring(start, page.indexOf("```", start));
    Verdict verdict = Verdict.of(file);
    assertThat(verdict.lines()).isEmpty();
  }

  @Test
  void everyFieldOfTheSchema_isOnThePage() throws Exception {
    JsonNode schema =
        new ObjectMapper().readTree(Path.of("..", "docs", "tree-file.schema.json").toFile());
    Set<String> fields = new TreeSet<>();
    collect(schema, fields);
    fields.remove("units");
    assertThat(fields).hasSizeGreaterThan(LEAST_FIELDS);
    String page = page();
    assertThat(fields).allSatisfy(field -> assertThat(page).contains("`" + field + "`"));
  }

  private static void collect(JsonNode at, Set<String> fields) {
    if (at.has("properties")) {
      at.get("properties").fieldNames().forEachRemaining(fields::add);
    }
    at.forEach(inner -> collect(inner, fields));
  }
}
