// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Problem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TreeFilesTest {
  private static final String MANY_FAULTS =
      """
      {
        "format": "boughwright-tree", "version": 1,
        "name": "  ", "species": "Larch",
        "unions": "skin",
        "segments": [
          {"id": "t", "parent": null, "kind": "trunk", "start_mm": [0, 0, 0], "end_mm": [0, 0, "9"],
           "caliper_start_mm": -2, "caliper_end_mm": 10},
          {"id": "b", "parent": "x", "kind": "bough", "end_mm": [50, 0, 90],
           "caliper_start_mm": 5}
        ],
        "wounds": [{"id": "w", "segment": "q", "along": 2, "round_deg": 0, "width_mm": 1, "height_mm": 1}],
        "plans": [{"id": "a", "apex": "top"}],
        "colour": "green"
      }
      """;

  @TempDir Path folder;

  @Test
  void check_givesAllFaultsAtOnce_inTheOrderOfTheFile() throws Exception {
    Path file = Files.writeString(folder.resolve("many.tree.json"), MANY_FAULTS);
    List<Problem> problems = TreeFiles.check(file);
    assertThat(problems)
        .extracting(p -> p.place().line() + ":" + p.place().column() + " " + p.kind())
        .containsExactly(
            "3:11 bad-name",
            "4:13 unknown-word",
            "6:90 no-number",
            "7:26 out-of-range",
            "8:5 missing-field",
            "8:27 unknown-parent",
            "8:40 unknown-word",
            "11:51 out-of-range",
            "12:33 unknown-segment",
            "13:13 unknown-field");
    assertThat(problems).allSatisfy(p -> assertThat(p.place().source()).isEqualTo(file.toString()));
    assertThatExceptionOfType(InputException.class)
        .isThrownBy(() -> TreeFiles.read(file))
        .satisfies(e -> assertThat(e.problems()).isEqualTo(problems));
  }

  @Test
  void missingFile_isOneFault() {
    assertThat(TreeFiles.check(folder.resolve("none.tree.json")))
        .extracting(Problem::kind)
        .containsExactly("no-file");
  }

  @Test
  void folder_isNoFile() {
    assertThat(TreeFiles.check(folder)).extracting(Problem::kind).containsExactly("is-folder");
  }

  @Test
  void schemaReference_isKept_withoutAWarning() throws Exception {
    byte[] bytes = Change.of().set("/$schema", "\"tree-file.schema.json\"").bytes();
    TreeFile read = TreeFiles.read("s", bytes);
    assertThat(read.warnings()).isEmpty();
    assertThat(read.document().extras()).containsKey("$schema");
  }

  @Test
  void tooManyPlans_areRefused() {
    StringBuilder plans = new StringBuilder("[");
    for (int i = 0; i <= Limits.PLANS; i++) {
      plans.append(i > 0 ? "," : "").append("{\"id\":\"p").append(i).append("\"}");
    }
    assertThat(Verdict.of(Change.of().set("/plans", plans + "]").text()).kinds())
        .containsExactly("too-many-plans");
  }

  @Test
  void numberAsId_isRefused_withTheRemedy() {
    assertThat(Verdict.of(Change.of().set("/segments/4/id", "5").remove("/plans").text()).lines())
        .singleElement()
        .satisfies(line -> assertThat(line).contains("id is 5", "in quotation marks"));
  }
}
