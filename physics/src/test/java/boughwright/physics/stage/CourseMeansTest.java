// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.stage;

import static org.assertj.core.api.Assertions.as;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.InstanceOfAssertFactories.DOUBLE;

import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Schedule;
import boughwright.modeller.plan.Stage;
import boughwright.modeller.species.Species;
import boughwright.modeller.species.SpeciesTable;
import boughwright.modeller.tree.Hemisphere;
import boughwright.physics.trial.CoilHold;
import boughwright.physics.trial.LetGo;
import boughwright.physics.trial.Trial;
import boughwright.physics.trial.TrialRequest;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Courses of bends by hand, held by coils, by lines, by both, or by nothing; turns of lines. */
class CourseMeansTest {
  private static final double DAY = 86_400;
  private static final Species HORNBEAM = SpeciesTable.bundled().woodFor("carpinus-betulus");

  private static final String COIL =
      "\"coils\": [{\"from\": {\"segment\": \"t\", \"along\": 0}, \"to\": {\"segment\": \"t\","
          + " \"along\": 1}, \"metal\": \"copper-annealed\", \"gauge_mm\": 6, \"strands\": 3,"
          + " \"angle_to_axis_deg\": 50, \"hand\": \"right\"}]";
  private static final String HAND =
      "\"hand_bends\": [{\"id\": \"h\", \"segment\": \"t\", \"along\": 1, \"direction\":"
          + " [0, 0, -1], \"move_mm\": 25}]";
  private static final String HAND_HALF_WAY =
      HAND.replace("\"along\": 1", "\"along\": 0.5").replace(": 25", ": 10");
  private static final String LINE =
      "\"guy_lines\": [{\"id\": \"g\", \"segment\": \"t\", \"along\": 1, \"anchor_mm\":"
          + " [150, 0, -150], \"shorten_mm\": 20%s}]";

  /** Poses of a course and of a hold are each rough, over the movement [1]. */
  private static final double ROUGH = 0.02;

  /** Turns are given to a tenth. */
  private static final double TENTH = 0.051;

  @TempDir Path folder;

  private TrialRequest request(String... means) throws Exception {
    String text =
        "{\"format\": \"boughwright-tree\", \"version\": 1, \"name\": \"Means (invented)\","
            + " \"species\": \"carpinus-betulus\", \"bark_mm\": 0, \"unions\": \"axis\","
            + " \"segments\": [{\"id\": \"t\", \"parent\": null, \"kind\": \"trunk\","
            + " \"start_mm\": [0,0,0], \"end_mm\": [250,0,0], \"caliper_start_mm\": 10,"
            + " \"caliper_end_mm\": 8}], \"plans\": [{\"id\": \"a\", \"proposals\": [{\"id\":"
            + " \"p\", "
            + String.join(", ", means)
            + "}]}]}";
    Path file = Files.writeString(folder.resolve("means.tree.json"), text);
    Document document = TreeFiles.read(file).document();
    return TrialRequest.of(document.tree(), document.plans().get(0), HORNBEAM);
  }

  private static Course course(TrialRequest request) {
    return Courses.of(
        request,
        Trial.run(request),
        CourseOptions.USUAL.from(LocalDate.of(2026, 4, 20), Optional.of(Hemisphere.NORTH)));
  }

  private static TrialRequest with(TrialRequest request, Schedule schedule) {
    return TrialRequest.of(request.tree(), request.plan().withSchedule(schedule), HORNBEAM);
  }

  private static Course.Step only(Course course, Course.Act act) {
    List<Course.Step> found = course.steps().stream().filter(s -> s.act() == act).toList();
    assertThat(found).as(act.name()).hasSize(1);
    return found.get(0);
  }

  private static final Schedule OFF_AFTER_A_YEAR =
      new Schedule(List.of(), OptionalDouble.of(365 * DAY));

  @Test
  void coil_bentByHand_isLetGoAndHeldAsTheCoilHolds() throws Exception {
    TrialRequest request = with(request(COIL, HAND), OFF_AFTER_A_YEAR);
    CoilHold hold = CoilHold.of(request).get(0);
    Course course = course(request);
    assertThat(course.steps())
        .extracting(Course.Step::act)
        .containsExactly(Course.Act.BEND, Course.Act.LET_GO, Course.Act.LOOK, Course.Act.RELEASE);
    assertThat(course.steps()).allMatch(step -> step.pose().outcome().holds());
    assertThat(only(course, Course.Act.BEND).moved())
        .isCloseTo(hold.forced(), within(ROUGH * hold.forced()));
    Course.Step letGo = only(course, Course.Act.LET_GO);
    assertThat(letGo.moved()).isCloseTo(hold.held(), within(ROUGH * hold.forced()));
    assertThat(letGo.words()).contains("stays, held by");
    assertThat(only(course, Course.Act.LOOK).words()).contains("coil", "cut the wire off");
    assertThat(only(course, Course.Act.RELEASE).words()).contains("Cut the wire", "eye protection");
  }

  /** Taken off at once nothing has crept, so what stays is what flowed. */
  @Test
  void springbackAtOnce_isThatOfTheCoilTakenOff() throws Exception {
    TrialRequest request = request(COIL, HAND);
    CoilHold hold = CoilHold.of(request).get(0);
    Course course = course(request);
    Course.Sample forced = course.samples().get(0);
    Course.Sample held = course.samples().get(1);
    assertThat(held.time()).isZero();
    assertThat(hold.unwired()).isLessThan(hold.held());
    double lost = 1 - hold.unwired() / hold.held();
    assertThat(held.springback().middle()).isCloseTo(lost, within(ROUGH));
    LetGo free = LetGo.of(request).orElseThrow();
    assertThat(forced.springback().middle())
        .isCloseTo(1 - free.stays() / free.moved(), within(ROUGH));
  }

  @Test
  void coilTooWeak_isSaidFirst() throws Exception {
    String thin =
        COIL.replace("\"gauge_mm\": 6, \"strands\": 3", "\"gauge_mm\": 2, \"strands\": 1");
    Course course = course(request(thin, HAND));
    assertThat(course.notes().get(0)).contains("Let go, it springs back", "stronger wire");
    assertThat(course.notes()).hasSizeLessThanOrEqualTo(6);
  }

  @Test
  void coilAndLine_holdMoreThanTheCoilAlone() throws Exception {
    Course alone = course(request(COIL, HAND_HALF_WAY));
    Course both = course(request(COIL, HAND_HALF_WAY, String.format(Locale.ROOT, LINE, "")));
    assertThat(only(both, Course.Act.LET_GO).pose().lines()).hasSize(1);
    double kept = only(both, Course.Act.LET_GO).moved() / only(both, Course.Act.BEND).moved();
    assertThat(kept)
        .isGreaterThan(
            only(alone, Course.Act.LET_GO).moved() / only(alone, Course.Act.BEND).moved());
    assertThat(only(both, Course.Act.BEND).words()).contains("by hand", "g: ");
  }

  @Test
  void handsAlone_holdNothing_andThatIsSaidFirst() throws Exception {
    Course course = course(request(HAND));
    assertThat(course.notes().get(0)).contains("Nothing holds what h bends by hand", "coil");
    assertThat(course.steps())
        .extracting(Course.Step::act)
        .containsExactly(Course.Act.BEND, Course.Act.LET_GO);
    Course.Step letGo = only(course, Course.Act.LET_GO);
    assertThat(letGo.words()).contains("nothing holds it");
    assertThat(letGo.moved()).isLessThan(0.5 * only(course, Course.Act.BEND).moved());
    assertThat(course.stays()).isEqualTo(Course.Span.NEVER);
    assertThat(course.bites()).isEqualTo(Course.Span.NEVER);
    assertThat(course.samples()).isEmpty();
  }

  @Test
  void takenOffTooEarly_isSaid_andNotesAreFew() throws Exception {
    TrialRequest early =
        with(
            request(String.format(Locale.ROOT, LINE, "")),
            new Schedule(List.of(), OptionalDouble.of(28 * DAY)));
    Course course = course(early);
    assertThat(course.notes()).anyMatch(note -> note.startsWith("Taken off after 4 weeks"));
    assertThat(course.notes()).hasSizeLessThanOrEqualTo(6);
  }

  /** A helix of two strands: strand² = span² + (π d n)², written out here. */
  @Test
  void turns_areThoseOfEachStep() throws Exception {
    String tackle =
        ", \"strand\": {\"material\": \"stainless\", \"gauge_mm\": 0.8, \"count\": 2},"
            + " \"tightener\": {\"kind\": \"twist-at-end\", \"turns_in\": 3}";
    TrialRequest request =
        with(
            request(String.format(Locale.ROOT, LINE, tackle)),
            new Schedule(
                List.of(new Stage(0, 0.4), new Stage(14 * DAY, 1)), OptionalDouble.empty()));
    Course course = course(request);
    double gap = Math.hypot(0.1, 0.15);
    double round = Math.PI * 0.8e-3;
    double strand = Math.hypot(gap, 3 * round);
    double first = Math.sqrt(strand * strand - Math.pow(gap - 0.4 * 0.02, 2)) / round;
    double second = Math.sqrt(strand * strand - Math.pow(gap - 0.02, 2)) / round;
    assertThat(turns(only(course, Course.Act.BEND)))
        .satisfies(
            turns -> {
              assertThat(turns[0]).isCloseTo(first - 3, within(TENTH));
              assertThat(turns[1]).isCloseTo(first, within(TENTH));
            });
    assertThat(only(course, Course.Act.BEND).turns().values())
        .singleElement(as(DOUBLE))
        .isCloseTo(first, within(TENTH));
    assertThat(turns(only(course, Course.Act.TIGHTEN)))
        .satisfies(
            turns -> {
              assertThat(turns[0]).isCloseTo(second - first, within(TENTH));
              assertThat(turns[1]).isCloseTo(second, within(TENTH));
            });
  }

  private static double[] turns(Course.Step step) {
    Matcher found =
        Pattern.compile("([0-9.]+) turns more \\(([0-9.]+) in all").matcher(step.words());
    assertThat(found.find()).as(step.words()).isTrue();
    return new double[] {Double.parseDouble(found.group(1)), Double.parseDouble(found.group(2))};
  }

  @Test
  void strandsThatJamBeforeTheLastStep_areToldFromTheStart() throws Exception {
    String tackle =
        ", \"strand\": {\"material\": \"cord\", \"gauge_mm\": 1, \"count\": 2},"
            + " \"tightener\": {\"kind\": \"twist-at-end\", \"turns_in\": 50}";
    Course course = course(request(String.format(Locale.ROOT, LINE, tackle)));
    assertThat(course.notes())
        .anyMatch(note -> note.contains("The strands of g jam at") && note.contains("turnbuckle"));
  }
}
