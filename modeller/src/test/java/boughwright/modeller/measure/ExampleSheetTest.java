// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Tree;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The sheets in {@code examples/} against the tree files beside them, whose points were worked out
 * by a program outside this project.
 */
class ExampleSheetTest {
  private static final Path EXAMPLES = Path.of("..", "examples");

  /** Both sides round to the micrometre, and may fall on either side of it [mm]. */
  private static final double ROUNDED_MM = 0.0011;

  private static Tree sheet(String name) throws InputException {
    MeasuredTree read = TapeSheet.read(EXAMPLES.resolve(name + ".sheet.csv"));
    assertThat(read.warnings()).isEmpty();
    return read.document().tree();
  }

  @ParameterizedTest
  @CsvSource({"hedge-hornbeam", "larch"})
  void sheet_givesTheTreeOfTheFileBesideIt(String name) throws InputException, IOException {
    Tree tree = sheet(name);
    JsonNode file = new ObjectMapper().readTree(EXAMPLES.resolve(name + ".tree.json").toFile());
    assertThat(tree.name()).isEqualTo(file.get("name").asText()).contains("invented");
    assertThat(tree.measuredOn().orElseThrow()).hasToString(file.get("measured_on").asText());
    assertThat(file.get("segments")).hasSameSizeAs(tree.segments());
    for (int i = 0; i < tree.segments().size(); i++) {
      assertSame(tree.segments().get(i), file.get("segments").get(i));
    }
  }

  private static void assertSame(Segment segment, JsonNode json) {
    assertThat(segment.id()).isEqualTo(json.get("id").asText());
    assertThat(segment.parent().orElse("null")).isEqualTo(json.get("parent").asText());
    assertThat(segment.along()).isEqualTo(json.path("along").asDouble(1));
    assertThat(segment.kind()).hasToString(json.get("kind").asText().toUpperCase(Locale.ROOT));
    double[] end = {segment.end().x(), segment.end().y(), segment.end().z()};
    for (int axis = 0; axis < end.length; axis++) {
      assertThat(1000 * end[axis])
          .as(segment.id())
          .isCloseTo(json.get("end_mm").get(axis).asDouble(), within(ROUNDED_MM));
    }
    assertThat(1000 * segment.caliperStart())
        .isCloseTo(json.get("caliper_start_mm").asDouble(), within(ROUNDED_MM));
    assertThat(1000 * segment.caliperEnd())
        .isCloseTo(json.get("caliper_end_mm").asDouble(), within(ROUNDED_MM));
    assertThat(segment.bark().isPresent()).isEqualTo(json.has("bark_mm"));
    assertThat(1000 * segment.bark().orElse(0))
        .isCloseTo(json.path("bark_mm").asDouble(0), within(ROUNDED_MM));
  }

  @Test
  void hornbeam_hasTheSizeItsDescriptionSays() throws InputException {
    Tree tree = sheet("hedge-hornbeam");
    assertThat(tree.segments()).hasSizeGreaterThanOrEqualTo(45);
    assertThat(tree.segments())
        .filteredOn(s -> s.kind() == Kind.ROOT && s.parent().orElse("").equals("t1"))
        .hasSize(8);
    assertThat(tree.segments().get(0).caliperStart()).isEqualTo(0.062);
  }
}
