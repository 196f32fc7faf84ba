// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boughwright.modeller.problem.Problem;
import boughwright.modeller.tree.Backdrop;
import com.fasterxml.jackson.databind.node.TextNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Photos to trace over, as the tree file names them. */
class BackdropFileTest {
  private static Change with(String backdrop) {
    return Change.of().set("/backdrops", "[" + backdrop + "]");
  }

  private static Change named(String photo) {
    return with("{\"photo\":" + TextNode.valueOf(photo) + ",\"base_px\":[1,2]}");
  }

  private static boolean schemaAccepts(Change file) throws Exception {
    String text = Files.readString(Path.of("..", "docs", "tree-file.schema.json"));
    Schema schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(text, InputFormat.JSON);
    return schema.validate(file.text(), InputFormat.JSON).isEmpty();
  }

  @Test
  void photo_isRead_withItsScaleAndPlace() throws Exception {
    Change file =
        with(
            "{\"photo\":\"side.png\",\"seen_from_azimuth_deg\":90,\"mm_per_px\":0.42,"
                + "\"base_px\":[512,900],\"shown\":0.25}");
    Backdrop found = TreeFiles.read("b", file.bytes()).document().backdrops().get(0);
    assertThat(found)
        .isEqualTo(
            new Backdrop(
                "side.png", Math.PI / 2, OptionalDouble.of(0.00042), 512, 900, 0.25, Map.of()));
  }

  @Test
  void photo_hasUsualValues_whenOnlyNameAndPlaceAreGiven() throws Exception {
    Backdrop found = TreeFiles.read("b", named("a.jpg").bytes()).document().backdrops().get(0);
    assertThat(found)
        .isEqualTo(new Backdrop("a.jpg", 0, OptionalDouble.empty(), 1, 2, 0.6, Map.of()));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "front.jpg",
        "photos/front.JPG",
        "a b/été (1).png",
        "...a",
        ".hidden.png",
        "concorde.jpg",
        "a..b.jpg",
        "x"
      })
  void name_isAccepted_whenItIsThatOfAFileBelow(String photo) throws Exception {
    assertThat(Verdict.of(named(photo).text()).lines()).isEmpty();
    assertThat(schemaAccepts(named(photo))).isTrue();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "..",
        ".",
        "../front.jpg",
        "a/../../front.jpg",
        "a/./b.jpg",
        "/etc/passwd",
        "//host/share/a.jpg",
        "C:/a.jpg",
        "C:a.jpg",
        "a\\b.jpg",
        "..\\a.jpg",
        "a.jpg/",
        "a//b.jpg",
        "a.jpg.",
        "a.jpg ",
        "a /b.jpg",
        "con",
        "photos/NUL.jpg",
        "com1/a.jpg",
        "a.jpg:stream",
        "a?.jpg",
        "a\u0000.jpg",
        "a\nb.jpg",
        "a\u007fb.jpg"
      })
  void name_isRefused_whenItCouldLeadElsewhere(String photo) throws Exception {
    List<Problem> faults = Verdict.of(named(photo).text()).problems();
    assertThat(faults).extracting(Problem::kind).containsExactly("bad-photo-name");
    assertThat(faults.get(0).line()).contains("photo").contains("front.jpg");
    assertThat(schemaAccepts(named(photo))).isFalse();
    assertThatThrownBy(() -> new Backdrop(photo, 0, OptionalDouble.empty(), 0, 0, 1, Map.of()))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void name_isRefused_inAShortLine_whenItIsLong() {
    List<Problem> faults = Verdict.of(named("a/".repeat(40_000) + "b").text()).problems();
    assertThat(faults).extracting(Problem::kind).containsExactly("bad-photo-name");
    assertThat(faults.get(0).line()).hasSizeLessThan(300);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{\"base_px\":[1,2]}|missing-field|photo",
        "{\"photo\":\"a.jpg\"}|missing-field|base_px",
        "{\"photo\":7,\"base_px\":[1,2]}|wrong-type|photo",
        "{\"photo\":\"a.jpg\",\"base_px\":[1]}|no-point|base_px",
        "{\"photo\":\"a.jpg\",\"base_px\":[1,\"x\"]}|no-number|base_px",
        "{\"photo\":\"a.jpg\",\"base_px\":[1,2],\"mm_per_px\":0}|out-of-range|mm_per_px",
        "{\"photo\":\"a.jpg\",\"base_px\":[1,2],\"mm_per_px\":-1}|out-of-range|mm_per_px",
        "{\"photo\":\"a.jpg\",\"base_px\":[1,2],\"shown\":1.5}|out-of-range|shown",
        "7|wrong-type|backdrops"
      })
  void fault_namesTheField(String backdrop, String kind, String field) {
    List<Problem> faults = Verdict.of(with(backdrop).text()).problems();
    assertThat(faults).extracting(Problem::kind).containsExactly(kind);
    assertThat(faults.get(0).line()).contains(field);
  }

  @Test
  void faults_areToldAllAtOnce() {
    Change file = with("{\"photo\":\"../a\",\"base_px\":[1,2],\"shown\":-1},{\"photo\":\"b.jpg\"}");
    assertThat(Verdict.of(file.text()).problems())
        .extracting(Problem::kind)
        .containsExactlyInAnyOrder("bad-photo-name", "out-of-range", "missing-field");
  }
}
