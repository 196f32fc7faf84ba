// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.stage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Hold;
import boughwright.modeller.plan.Schedule;
import boughwright.modeller.plan.Stage;
import boughwright.modeller.species.Species;
import boughwright.modeller.species.SpeciesTable;
import boughwright.modeller.tree.Growing;
import boughwright.modeller.tree.Hemisphere;
import boughwright.modeller.tree.Setting;
import boughwright.modeller.tree.Tree;
import boughwright.physics.trial.PartRisk;
import boughwright.physics.trial.Peak;
import boughwright.physics.trial.RiskOptions;
import boughwright.physics.trial.RiskTrial;
import boughwright.physics.trial.Trial;
import boughwright.physics.trial.TrialRequest;
import boughwright.physics.trial.TrialResult;
import boughwright.physics.wood.Creep;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CoursesTest {
  private static final double DAY = 86_400;
  private static final double WEEK = 7 * DAY;
  private static final Species HORNBEAM = SpeciesTable.bundled().woodFor("carpinus-betulus");

  /** Strain is taken to go evenly between five poses. */
  private static final double EVEN = 1.05;

  @TempDir Path folder;

  private TrialRequest request(double shorten, String plan) throws Exception {
    String text =
        String.format(
            Locale.ROOT,
            "{\"format\": \"boughwright-tree\", \"version\": 1, \"name\": \"Course (invented)\","
                + " \"species\": \"carpinus-betulus\", \"bark_mm\": 0, \"unions\": \"axis\","
                + " \"segments\": [{\"id\": \"t\","
                + " \"parent\": null, \"kind\": \"trunk\", \"start_mm\": [0,0,0], \"end_mm\":"
                + " [250,0,0], \"caliper_start_mm\": 10, \"caliper_end_mm\": 8}], \"plans\":"
                + " [{\"id\": \"a\", %s \"proposals\": [{\"id\": \"p\", \"guy_lines\": [{\"id\":"
                + " \"g\", \"segment\": \"t\", \"along\": 1, \"anchor_mm\": [150, 0, -150],"
                + " \"shorten_mm\": %s}]}]}]}",
            plan,
            shorten);
    Path file = Files.writeString(folder.resolve("course.tree.json"), text);
    Document document = TreeFiles.read(file).document();
    Tree tree = inTheGround(document.tree());
    return TrialRequest.of(tree, document.plans().get(0), HORNBEAM);
  }

  private static Tree inTheGround(Tree tree) {
    Growing ground =
        new Growing(Optional.of(Growing.Where.GROUND), OptionalDouble.empty(), Map.of());
    return tree.withSetting(new Setting(Optional.empty(), ground, List.of()));
  }

  private static CourseOptions june() {
    return CourseOptions.USUAL.from(LocalDate.of(2026, 6, 1), Optional.of(Hemisphere.NORTH));
  }

  private static double strain(Course.Step step) {
    return step.pose().peak().map(Peak::bendingStrain).orElse(0.0);
  }

  private static List<Course.Step> stages(Course course) {
    return course.steps().stream()
        .filter(step -> step.act() == Course.Act.BEND || step.act() == Course.Act.TIGHTEN)
        .toList();
  }

  @Test
  void stages_addLittleStrainEach_andWaitAWeek() throws Exception {
    TrialRequest request = request(25, "");
    Course course = Courses.of(request, Trial.run(request), june());
    List<Course.Step> stages = stages(course);
    assertThat(stages.size()).isBetween(3, 8);
    double before = 0;
    for (int k = 0; k < stages.size(); k++) {
      assertThat(strain(stages.get(k)) - before).isBetween(0.0005, EVEN * 0.002);
      assertThat(stages.get(k).time()).isEqualTo(k * WEEK);
      before = strain(stages.get(k));
    }
    assertThat(stages.get(stages.size() - 1).part()).isEqualTo(1);
    assertThat(course.reached()).isEqualTo(1);
  }

  /** The first wait is one relaxation at fixed length. */
  @Test
  void pullBeforeTheSecondStage_isWhatRelaxationLeft() throws Exception {
    TrialRequest request = request(25, "");
    List<Course.Step> stages = stages(Courses.of(request, Trial.run(request), june()));
    double first = stages.get(0).pose().lines().get(0).tension();
    double left = stages.get(1).tensionsBefore().get("g").middle();
    assertThat(left / first).isCloseTo(Creep.MIDDLE.left(WEEK), within(0.01));
    assertThat(stages.get(1).tensionsBefore().get("g").low()).isLessThan(left);
    assertThat(stages.get(1).words()).contains("Draw", "g: ", "mm shorter");
  }

  @Test
  void planWithItsOwnSchedule_isFollowed() throws Exception {
    TrialRequest said = request(20, "");
    Schedule schedule =
        new Schedule(
            List.of(new Stage(0, 0.5), new Stage(10 * DAY, 1)), OptionalDouble.of(100 * DAY));
    TrialRequest request =
        TrialRequest.of(said.tree(), said.plan().withSchedule(schedule), HORNBEAM);
    Course course = Courses.of(request, Trial.run(request), june());
    assertThat(stages(course)).extracting(Course.Step::time).containsExactly(0.0, 10 * DAY);
    Course.Step last = course.steps().get(course.steps().size() - 1);
    assertThat(last.act()).isEqualTo(Course.Act.RELEASE);
    assertThat(last.time()).isEqualTo(100 * DAY);
    assertThat(last.words()).contains("% of the bend", "Untie");
    double held = stages(course).get(1).moved();
    Course.Sample then =
        course.samples().stream()
            .filter(sample -> sample.time() == 100 * DAY)
            .findFirst()
            .orElseThrow();
    assertThat(last.moved() / held).isCloseTo(1 - then.springback().middle(), within(0.02));
  }

  @Test
  void longerHeldInGrowth_lessIsLost_andInDormancyNothingChanges() throws Exception {
    TrialRequest request = request(20, "");
    TrialResult full = Trial.run(request);
    Course summer = Courses.of(request, full, june());
    double before = 1;
    for (Course.Sample sample : summer.samples()) {
      if (sample.sinceLast() > 0) {
        assertThat(sample.springback().middle()).isLessThanOrEqualTo(before + 1e-6);
        assertThat(sample.springback().low()).isLessThan(sample.springback().high());
        before = sample.springback().middle();
      }
    }
    assertThat(before).isLessThan(0.2);
    double soonest = summer.stays().earliest().orElseThrow();
    assertThat(soonest).isLessThan(summer.stays().likely().orElseThrow());
    Course winter =
        Courses.of(
            request,
            full,
            CourseOptions.USUAL.from(LocalDate.of(2026, 10, 1), Optional.of(Hemisphere.NORTH)));
    List<Course.Sample> after =
        winter.samples().stream().filter(sample -> sample.sinceLast() > 0).toList();
    // 8 and 13 weeks after autumn: still winter, and creep is over
    assertThat(after.get(2).springback().middle())
        .isCloseTo(after.get(1).springback().middle(), within(0.03));
    assertThat(winter.bites().earliest().orElseThrow()).isGreaterThan(150 * DAY);
    assertThat(String.join(" ", winter.notes())).contains("15 April to 10 September");
  }

  @Test
  void riskAskedFor_endsTheStagesWhereItIsMet() throws Exception {
    TrialRequest request = request(45, "");
    TrialResult full = RiskTrial.run(request, new RiskOptions(500, 1, part -> {}));
    double whole = PartRisk.breaking(full, full).orElseThrow().p();
    double asked = whole / 4;
    Course course = Courses.of(request, full, june().withRisk(asked));
    assertThat(course.reached()).isBetween(0.05, 0.95);
    List<Course.Step> stages = stages(course);
    double last = stages.get(stages.size() - 1).odds().orElseThrow().p();
    assertThat(last).isBetween(0.5 * asked, 1.02 * asked);
    List<Double> odds = new ArrayList<>();
    stages.forEach(stage -> odds.add(stage.odds().orElseThrow().p()));
    assertThat(odds).isSorted();
    assertThat(course.notes().get(0)).contains("more than the", "waiting does not make wood");
  }

  @Test
  void anchorsThatStayWhenTheTreeIsTurned_bringTheOrderOfWork() throws Exception {
    TrialRequest tilted =
        request(10, "\"planting\": {\"tilt_deg\": 5, \"toward_azimuth_deg\": 90},");
    TrialRequest plain = request(10, "");
    String order = "Bend first";
    assertThat(Courses.of(tilted, Trial.run(tilted), june()).notes())
        .anyMatch(note -> note.contains(order) && note.contains("anchors of g"));
    assertThat(Courses.of(plain, Trial.run(plain), june()).notes())
        .noneMatch(note -> note.contains(order));
    assertThat(Courses.of(plain, Trial.run(plain), june().repotting()).notes())
        .anyMatch(note -> note.contains(order));
  }

  @Test
  void bendThatDoesNotHold_isNotBegun() throws Exception {
    TrialRequest request = request(25, "");
    TrialRequest wild =
        TrialRequest.of(
            request.tree(),
            request
                .plan()
                .withProposals(
                    List.of(
                        request
                            .plan()
                            .proposals()
                            .get(0)
                            .withLines(
                                line ->
                                    line.with(line.at(), line.anchor(), new Hold.Tension(5000))))),
            HORNBEAM);
    TrialResult full = Trial.run(wild);
    assertThat(full.outcome().holds()).isFalse();
    Course course = Courses.of(wild, full, june());
    assertThat(course.steps()).isEmpty();
    assertThat(course.reached()).isZero();
    assertThat(course.notes().get(0)).contains("No pose holds");
  }

  @Test
  void optionsThatCannotBe_areRefused() {
    assertThatThrownBy(() -> new CourseOptions(Optional.empty(), Optional.empty(), 0, 0.8, false))
        .hasMessageContaining("0 to 1");
  }

  /** Force down by a fifth and nine tenths of a month; growers wait one to three weeks. */
  @Test
  void waits_areThoseOfTheDocuments() {
    assertThat(StageWait.of(Creep.MIDDLE)).isEqualTo(WEEK);
    assertThat(StageWait.of(Creep.LOW)).isEqualTo(5 * WEEK);
    assertThat(StageWait.of(Creep.HIGH)).isEqualTo(WEEK);
    assertThat(StageWait.of(Creep.NONE)).isEqualTo(WEEK);
  }
}
