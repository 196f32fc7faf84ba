// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.physics.stage.Course;
import boughwright.physics.trial.Outcome;
import boughwright.physics.trial.TrialResult;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class StagesViewTest {
  private static final double FLOAT_ROUNDING = 1e-5;

  private static Scene scene(Document document, Course course, double part) {
    Plan plan = document.plans().get(0);
    TrialResult trial = InventedCourses.bent(document.tree(), plan, part);
    return Scene.of(document, Optional.of(plan), Optional.of(trial), Optional.of(course));
  }

  private static Point3 end(TrialResult pose, String segment) {
    return pose.segment(segment).orElseThrow().end();
  }

  @Test
  void stages_areGhosts_eachWithItsDay_thePoseReachedIsSolid() {
    Document document = InventedCourses.document(InventedCourses.lined());
    Course course = InventedCourses.staged(document, 0, 14, 28, 42, 56);
    Scene scene = scene(document, course, 1);
    StagesView stages = scene.stages().orElseThrow();
    assertThat(stages.reached()).isEqualTo("bent, day 56");
    assertThat(stages.ghosts())
        .extracting(StagesView.Ghost::words)
        .containsExactly("day 0", "day 14", "day 28", "day 42");
    assertThat(scene.bodies().stream().filter(b -> b.role() == Body.Role.STAGE)).hasSize(4);
    List<Mark.StageEnd> ends =
        scene.marks().stream()
            .filter(Mark.StageEnd.class::isInstance)
            .map(Mark.StageEnd.class::cast)
            .toList();
    assertThat(ends).hasSize(4);
    Point3 first = end(course.steps().get(0).pose(), "l5");
    assertThat(ends.get(0).at().distance(first)).isCloseTo(0, within(0.01));
  }

  @Test
  void tones_growDarker_inOrderOfTime() {
    double before = 100;
    for (int n = 0; n < 5; n++) {
      double lightness = Palette.stage(n, 5).lab().lightness();
      assertThat(lightness).isLessThan(before - 5);
      before = lightness;
    }
  }

  /** The wood is shown as it is held; the pull of the hand is a ghost. */
  @Test
  void bendByHand_showsWhatIsHeld_andThePullAsAGhost() {
    Document document = InventedCourses.document(InventedCourses.coiled());
    Course course = InventedCourses.byHand(document);
    Scene scene = scene(document, course, 1.15);
    StagesView stages = scene.stages().orElseThrow();
    assertThat(stages.reached()).isEqualTo("held after letting go");
    assertThat(stages.ghosts())
        .extracting(StagesView.Ghost::words)
        .containsExactly("pulled by hand");
    Point3 held = end(course.steps().get(1).pose(), "l5");
    Mark.Apex apex = Mark.apex(scene.marks()).orElseThrow();
    assertThat(apex.at().distance(held)).isLessThan(FLOAT_ROUNDING);
    assertThat(scene.marks())
        .filteredOn(Mark.Hand.class::isInstance)
        .singleElement()
        .satisfies(hand -> assertThat(hand.words().get(0)).isEqualTo("h1  by hand"));
  }

  @Test
  void release_leavesAnOutline_ofWhatIsBent_notOfWhatIsCarriedAlong() {
    Document document = InventedCourses.document(InventedCourses.coiled());
    Course course = InventedCourses.byHand(document);
    StagesView stages = scene(document, course, 1.15).stages().orElseThrow();
    assertThat(stages.staysWords()).isEqualTo("stays, released after 12 months");
    assertThat(stages.stays()).hasSize(2);
    Point3 left = end(course.steps().get(4).pose(), "l5");
    assertThat(stages.stays())
        .allSatisfy(limb -> assertThat(limb.radii()).hasSameSizeAs(limb.axis()))
        .anySatisfy(
            limb ->
                assertThat(limb.axis().get(limb.axis().size() - 1).distance(left))
                    .isLessThan(FLOAT_ROUNDING));
  }

  @Test
  void noCourse_hasNoStages() {
    Document document = InventedCourses.document(InventedCourses.lined());
    Plan plan = document.plans().get(0);
    Scene scene =
        Scene.of(
            document,
            Optional.of(plan),
            Optional.of(InventedCourses.bent(document.tree(), plan, 1)));
    assertThat(scene.stages()).isEmpty();
    assertThat(scene.has(Body.Role.STAGE)).isFalse();
  }

  @Test
  void trialThatDoesNotHold_showsNoCourse() {
    Document document = InventedCourses.document(InventedCourses.lined());
    Plan plan = document.plans().get(0);
    TrialResult failed = Bending.failed(plan, new Outcome(false, false, 0, "at l1"));
    Scene scene =
        Scene.of(
            document,
            Optional.of(plan),
            Optional.of(failed),
            Optional.of(InventedCourses.staged(document, 0, 14)));
    assertThat(scene.stages()).isEmpty();
    assertThat(scene.trouble()).isPresent();
  }

  @Test
  void courseOfLooksAlone_isTheTrial() {
    Document document = InventedCourses.document(InventedCourses.lined());
    Course whole = InventedCourses.staged(document, 0);
    Course looks =
        new Course(
            whole.steps().stream().filter(s -> s.act() == Course.Act.LOOK).toList(),
            whole.samples(),
            Course.Span.NEVER,
            Course.Span.NEVER,
            0.85,
            1,
            List.of());
    Scene scene = scene(document, looks, 1);
    assertThat(scene.stages()).isEmpty();
    assertThat(scene.scale()).isPresent();
  }
}
