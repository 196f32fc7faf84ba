// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.species.SpeciesTable;
import boughwright.modeller.tree.Hemisphere;
import boughwright.physics.stage.Course;
import boughwright.physics.stage.CourseOptions;
import boughwright.physics.stage.Courses;
import boughwright.physics.trial.Trial;
import boughwright.physics.trial.TrialRequest;
import boughwright.viewer.scene.InventedCourses;
import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CourseTextTest {
  private static final Optional<LocalDate> DAY = Optional.of(LocalDate.of(2026, 6, 20));
  private static final String TREE =
      "{\"format\": \"boughwright-tree\", \"version\": 1, \"name\": \"Course (invented)\","
          + " \"species\": \"carpinus-betulus\", \"bark_mm\": 0, \"unions\": \"axis\","
          + " \"segments\": [{\"id\": \"t\","
          + " \"parent\": null, \"kind\": \"trunk\", \"start_mm\": [0,0,0], \"end_mm\": [250,0,0],"
          + " \"caliper_start_mm\": 10, \"caliper_end_mm\": 8}], \"plans\": [{\"id\": \"a\","
          + " \"proposals\": [{\"id\": \"p\", \"guy_lines\": [{\"id\": \"g\", \"segment\": \"t\","
          + " \"along\": 1, \"anchor_mm\": [150, 0, -150], \"shorten_mm\": 25}]}]}]}";

  @TempDir static Path folder;

  private static Course course;

  @BeforeAll
  static void plan() throws InputException {
    Document document =
        TreeFiles.read(TreeFixture.write(folder, "course.tree.json", TREE)).document();
    TrialRequest request =
        TrialRequest.of(
            document.tree(),
            document.plans().get(0),
            SpeciesTable.bundled().woodFor("carpinus-betulus"));
    course =
        Courses.of(
            request,
            Trial.run(request),
            CourseOptions.USUAL.from(DAY.orElseThrow(), Optional.of(Hemisphere.NORTH)));
  }

  private static String text(Optional<LocalDate> start) {
    TextPage page = new TextPage();
    CourseText.write(page, course, start, false);
    return page.toString();
  }

  @Test
  void text_saysWhenWhatHowFarAndWhatIsLeft() {
    String text = text(DAY);
    assertThat(text)
        .contains("In stages", "left N", "pull N", "When it is taken off")
        .containsPattern("2026-06-20 +to [0-9]+ % +g +[0-9.]+ mm +- +[0-9.]+ +[0-9]+ mm +-")
        .containsPattern(
            "2026-06-27 +to [0-9]+ % +g +[0-9.]+ mm +[0-9.]+-[0-9.]+ +[0-9.]+ +[0-9]+ mm +-")
        .containsPattern("4 weeks +[0-9]+ % +[0-9]+ % +[0-9]+ %")
        .containsPattern("104 weeks +[0-9]+ % +[0-9]+ % +[0-9]+ %")
        .contains("stays by itself", "begin to bite", "Stop, whatever the numbers say");
    assertThat(text.lines()).allSatisfy(line -> assertThat(line.length()).isLessThan(81));
  }

  @Test
  void withoutADay_daysAreCounted() {
    assertThat(text(Optional.empty())).contains("at first", "day 7").doesNotContain("2026");
  }

  /** Six lines, long names, wire and hands: nothing runs over the edge. */
  @Test
  void manyLines_withLongNames_fitTheTerminal() {
    Document document = InventedCourses.document(InventedCourses.crowded());
    TextPage page = new TextPage();
    CourseText.write(page, InventedCourses.staged(document, 0, 14, 140), DAY, true);
    String text = page.toString();
    assertThat(text.lines()).allSatisfy(line -> assertThat(line.length()).isLessThan(80));
    document.plans().get(0).proposals().stream()
        .flatMap(proposal -> proposal.guyLines().stream())
        .forEach(line -> assertThat(text).contains(line.id()));
  }

  @Test
  void bendByHand_hasNoLinesToDrawIn() {
    Document document = InventedCourses.document(InventedCourses.coiled());
    TextPage page = new TextPage();
    CourseText.write(page, InventedCourses.byHand(document), DAY, false);
    assertThat(page.toString())
        .contains("Bend by hand slowly", "hands off", "take off")
        .doesNotContain("Draw lines in");
  }

  private static JsonNode step(JsonNode course, String act) {
    for (JsonNode step : course.get("steps")) {
      if (step.get("act").textValue().equals(act)) {
        return step;
      }
    }
    throw new AssertionError("no step " + act);
  }

  @Test
  void json_holdsTheSame_andNoTimeThatNeverComes() {
    JsonNode node = CourseJson.of(course, DAY);
    assertThat(node.get("start").textValue()).isEqualTo("2026-06-20");
    JsonNode first = node.get("steps").get(0);
    assertThat(first.get("act").textValue()).isEqualTo("bend");
    assertThat(first.get("day").doubleValue()).isZero();
    assertThat(first.has("tensions_before_N")).isFalse();
    assertThat(first.get("guy_lines").get(0).get("tension_N").doubleValue()).isPositive();
    JsonNode second = step(node, "tighten");
    assertThat(second.get("tensions_before_N").get("g").get("middle").doubleValue())
        .isLessThan(first.get("guy_lines").get(0).get("tension_N").doubleValue());
    JsonNode last = node.get("over_time").get(node.get("over_time").size() - 1);
    assertThat(last.get("days_after_last").doubleValue()).isEqualTo(728);
    assertThat(last.get("springback").get("low").doubleValue())
        .isLessThanOrEqualTo(last.get("springback").get("high").doubleValue());
    assertThat(node.get("notes")).isNotEmpty();
    assertThat(node.get("stays_after_days").has("latest"))
        .isEqualTo(course.stays().latest().isPresent());
    assertThat(node.toString()).doesNotContain("null", "Infinity", "NaN");
  }
}
