// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.plan.Document;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.RecordComponent;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RoundTripTest {
  private static final ObjectMapper EXACT =
      new ObjectMapper().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);

  @TempDir Path folder;

  private static Document read(String name) throws Exception {
    return TreeFiles.read(name, Sample.bytes(name)).document();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "full.tree.json",
        "smallest.tree.json",
        "own-wood.tree.json",
        "unknown-fields.tree.json",
        "cases.tree.json"
      })
  void document_isTheSame_afterWritingAndReading(String name) throws Exception {
    Path file = folder.resolve("copy.tree.json");
    TreeFiles.write(read(name), file);
    assertThat(TreeFiles.read(file).document()).isEqualTo(read(name));
  }

  /** Every number comes out with the digits it came in with, every field where it was. */
  @ParameterizedTest
  @ValueSource(strings = {"full.tree.json", "unknown-fields.tree.json"})
  void file_saysTheSame_afterReadingAndWriting(String name) throws Exception {
    JsonNode before = EXACT.readTree(Sample.bytes(name));
    JsonNode after = EXACT.readTree(TreeJson.bytes(read(name)));
    ((ObjectNode) after).remove("unions");
    ((ObjectNode) before).remove("unions");
    assertThat(after.equals(RoundTripTest::byValue, before)).isTrue();
  }

  private static int byValue(JsonNode a, JsonNode b) {
    if (a.isNumber() && b.isNumber()) {
      return a.decimalValue().compareTo(b.decimalValue());
    }
    return a.equals(b) ? 0 : 1;
  }

  @Test
  void unknownFields_areWarnedOfOnce_andKept() throws Exception {
    List<String> names =
        List.of(
            "colour",
            "rings",
            "note",
            "age",
            "paste",
            "mood",
            "jaw",
            "knot",
            "sap",
            "look",
            "saw",
            "scale",
            "waited_s",
            "glaze",
            "feed",
            "wooden",
            "dye",
            "peg_mm",
            "hook",
            "grip",
            "layers",
            "weather",
            "lens",
            "light",
            "seat",
            "wedge");
    TreeFile read = TreeFiles.read("u", Sample.bytes("unknown-fields.tree.json"));
    assertThat(read.warnings()).extracting("kind").containsOnly("unknown-field");
    for (String name : names) {
      assertThat(read.warnings())
          .filteredOn(warning -> warning.found().contains('"' + name + '"'))
          .as(name)
          .hasSize(1);
    }
    assertThat(read.document().extras()).containsEntry("colour", null).containsKey("digits");
    assertThat(read.document().tree().segments().get(0).extras()).containsEntry("note", null);
  }

  @Test
  void segment_standsOnOneLine_idFirst() throws Exception {
    assertThat(TreeJson.text(read("full.tree.json")))
        .contains(
            "\n    {\"id\": \"b1\", \"parent\": \"t1\", \"kind\": \"branch\", \"along\": 0.85, \"joins\":"
                + " \"union\", \"end_mm\": [90, -10, 120], \"caliper_start_mm\": 17,"
                + " \"caliper_end_mm\": 14, \"bark_mm\": 0.4, \"live\": true},\n");
  }

  @Test
  void extras_keepDigitsAndOrder() throws Exception {
    String text = TreeJson.text(read("unknown-fields.tree.json"));
    assertThat(text).contains("9007199254740993").contains("1.2300");
    assertThat(text.indexOf("colour")).isLessThan(text.indexOf("\"big\""));
    assertThat(text.indexOf("\"big\"")).isLessThan(text.indexOf("\"digits\""));
  }

  /** A component no sample fills would be saved untested: this is how fields get lost. */
  @Test
  void samples_fillEveryComponentOfEveryRecord() throws Exception {
    Set<String> filled = new TreeSet<>();
    Set<String> all = new TreeSet<>();
    for (String name : List.of("full", "own-wood", "unknown-fields")) {
      visit(read(name + ".tree.json"), filled, all);
    }
    assertThat(filled).isEqualTo(all).hasSizeGreaterThan(110);
  }

  private static void visit(Object value, Set<String> filled, Set<String> all) throws Exception {
    if (value instanceof Collection<?> list) {
      for (Object inner : list) {
        visit(inner, filled, all);
      }
    } else if (value instanceof Optional<?> optional && optional.isPresent()) {
      visit(optional.get(), filled, all);
    } else if (value instanceof Record) {
      for (RecordComponent component : value.getClass().getRecordComponents()) {
        Object inner = component.getAccessor().invoke(value);
        String name = value.getClass().getSimpleName() + "." + component.getName();
        all.add(name);
        if (isFilled(inner)) {
          filled.add(name);
        }
        visit(inner, filled, all);
      }
    }
  }

  private static boolean isFilled(Object value) {
    if (value instanceof Collection<?> list) {
      return !list.isEmpty();
    }
    if (value instanceof Map<?, ?> map) {
      return !map.isEmpty();
    }
    if (value instanceof OptionalDouble number) {
      return number.isPresent();
    }
    return !(value instanceof Optional<?> optional) || optional.isPresent();
  }
}
