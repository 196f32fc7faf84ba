// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Problem;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The published schema and the reader say the same about every file a schema can judge. */
class SchemaTest {
  /** Faults that hang on more than one place of the file, which a schema cannot express. */
  private static final Set<String> BEYOND_A_SCHEMA =
      Set.of(
          "aid-too-large",
          "anchor-in-wood",
          "coil-no-path",
          "cut-away",
          "cuts-crowded",
          "duplicate-id",
          "impossible-moe",
          "no-length",
          "no-stretch",
          "no-such-gauge",
          "no-wood",
          "nothing-bent",
          "nothing-left",
          "released-too-early",
          "ring",
          "same-ends",
          "shear-above-moe",
          "shortened-to-nothing",
          "slot-twice",
          "stage-order",
          "unknown-parent",
          "unknown-segment",
          "weak-spot-too-large");

  private static final int LEAST_MUTANTS = 1_000;

  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static Schema schema;

  @BeforeAll
  static void loadSchema() throws Exception {
    String text = Files.readString(Path.of("..", "docs", "tree-file.schema.json"));
    schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(text, InputFormat.JSON);
  }

  private static boolean schemaAccepts(String text) {
    return schema
        .validate(
            text,
            InputFormat.JSON,
            context -> context.executionConfig(config -> config.formatAssertionsEnabled(true)))
        .isEmpty();
  }

  private static List<Problem> faults(String text) {
    try {
      TreeFiles.read("mutant", text.getBytes(StandardCharsets.UTF_8));
      return List.of();
    } catch (InputException e) {
      return e.problems().stream().filter(Problem::isFault).toList();
    }
  }

  @Test
  void schemaAndReader_accept_theFullSample() {
    assertThat(faults(Sample.text())).isEmpty();
    assertThat(schemaAccepts(Sample.text())).isTrue();
  }

  @ParameterizedTest
  @ValueSource(strings = {"smallest.tree.json", "own-wood.tree.json", "unknown-fields.tree.json"})
  void schemaAndReader_accept_otherValidFiles(String name) {
    assertThat(faults(Sample.text(name))).isEmpty();
    assertThat(schemaAccepts(Sample.text(name))).isTrue();
  }

  @Test
  void whatTheReaderWrites_isAccepted_byTheSchema() throws Exception {
    for (String name : List.of("full", "smallest", "own-wood", "unknown-fields")) {
      TreeFile read = TreeFiles.read(name, Sample.bytes(name + ".tree.json"));
      assertThat(schemaAccepts(TreeJson.text(read.document()))).as(name).isTrue();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"full.tree.json", "own-wood.tree.json"})
  void schemaAndReader_agree_onEveryMutant(String name) throws Exception {
    List<String> apart = new ArrayList<>();
    List<Mutant> mutants = mutants(MAPPER.readTree(Sample.bytes(name)));
    for (Mutant mutant : mutants) {
      List<Problem> faults = faults(mutant.text);
      boolean shape = faults.stream().anyMatch(p -> !BEYOND_A_SCHEMA.contains(p.kind()));
      if (schemaAccepts(mutant.text) == shape) {
        apart.add(mutant.what + ": schema accepts: " + shape + ", reader " + faults);
      }
    }
    assertThat(apart).isEmpty();
    assertThat(mutants).hasSizeGreaterThan(name.startsWith("full") ? LEAST_MUTANTS : 1);
  }

  /** A valid file with one thing changed. */
  private record Mutant(String what, String text) {}

  private static List<Mutant> mutants(JsonNode root) throws Exception {
    List<Mutant> mutants = new ArrayList<>();
    collect(root, root, "", mutants);
    return mutants;
  }

  private static void collect(JsonNode root, JsonNode at, String path, List<Mutant> mutants)
      throws Exception {
    if (at instanceof ObjectNode object) {
      for (String name : IntStream.range(0, object.size()).mapToObj(i -> nth(object, i)).toList()) {
        JsonNode old = object.get(name);
        for (String value : replacements()) {
          object.set(name, MAPPER.readTree(value));
          mutants.add(new Mutant(path + "/" + name + " = " + value, root.toString()));
        }
        object.remove(name);
        mutants.add(new Mutant(path + "/" + name + " removed", root.toString()));
        object.set(name, old);
        collect(root, old, path + "/" + name, mutants);
      }
    } else if (at instanceof ArrayNode array) {
      for (int i = 0; i < array.size(); i++) {
        JsonNode old = array.get(i);
        for (String value : replacements()) {
          array.set(i, MAPPER.readTree(value));
          mutants.add(new Mutant(path + "/" + i + " = " + value, root.toString()));
        }
        array.set(i, old);
        collect(root, old, path + "/" + i, mutants);
      }
    }
  }

  private static String nth(ObjectNode object, int i) {
    List<String> names = new ArrayList<>();
    object.fieldNames().forEachRemaining(names::add);
    return names.get(i);
  }

  private static List<String> replacements() {
    return List.of(
        "null",
        "true",
        "-1",
        "0",
        "0.5",
        "2",
        "1e12",
        "\"x\"",
        "\"\"",
        "\" \"",
        "\"2026-02-30\"",
        "[]",
        "[1,2,3]",
        "{}");
  }
}
