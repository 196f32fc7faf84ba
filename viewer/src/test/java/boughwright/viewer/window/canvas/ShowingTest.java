// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.history.History;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.PlanDraft;
import boughwright.modeller.plan.Planting;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.units.DisplayUnits;
import boughwright.viewer.scene.InventedCourses;
import boughwright.viewer.scene.LiveScene;
import boughwright.viewer.scene.Mark;
import boughwright.viewer.scene.PoseStops;
import boughwright.viewer.scene.Visibility;
import boughwright.viewer.window.work.Answer;
import boughwright.viewer.window.work.Workspace;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What is shown of a plan that cuts, plants at a slant and bends. */
class ShowingTest {
  private static final Plan PLAN =
      new PlanDraft("a")
          .planting(Optional.of(new Planting(Math.toRadians(20), 0)))
          .cuts(
              Stream.concat(InventedCourses.lined().cuts().stream(), Stream.of(new Spot("b1", 0.5)))
                  .toList())
          .proposals(InventedCourses.lined().proposals())
          .build();
  private static final Document DOCUMENT = InventedCourses.document(PLAN);
  private static final Document LINED = InventedCourses.document(InventedCourses.lined());

  private Workspace work;
  private Showing showing;

  @BeforeEach
  void open() {
    work = new Workspace(History.opened(DOCUMENT), Optional.empty(), DisplayUnits.USUAL);
    showing = new Showing(work);
    work.take(
        new Answer(
            DOCUMENT.tree(),
            PLAN,
            InventedCourses.bent(DOCUMENT.tree(), InventedCourses.lined(), 1),
            Optional.of(InventedCourses.staged(LINED, 0, 14, 28))));
  }

  @Test
  void measured_isUpright_uncut_unbent_andBareOfThePlan() {
    showing.setMeasured(true);
    int branch = showing.tree().skeleton().indexOf("b1");
    int leader = showing.tree().skeleton().indexOf("l3");
    assertThat(showing.tree().kept().left(branch)).isEqualTo(1);
    assertThat(showing.capsules().axis(leader, 1).distance(showing.tree().skeleton().end(leader)))
        .as("the end of the leader is where it was measured [m]")
        .isLessThan(1e-9);
    assertThat(showing.shown(true).plan()).isEmpty();
    assertThat(showing.shown(true).ghosts()).isEmpty();
    assertThat(showing.stops()).isEqualTo(PoseStops.MEASURED);
  }

  @Test
  void measured_thenNot_goesBackToThePoseItWasLeftIn() {
    showing.setAt(2);
    String left = showing.stop().name();
    showing.setMeasured(true);
    showing.setMeasured(false);
    assertThat(showing.stop().name()).isEqualTo(left).isEqualTo("day 14");
    int branch = showing.tree().skeleton().indexOf("b1");
    assertThat(showing.tree().kept().left(branch)).isEqualTo(0.5);
  }

  @Test
  void hiddenBranch_takesItsLinesAndWeakPlacesWithIt() {
    LiveScene scenes = new LiveScene();
    assertThat(scenes.make(showing.shown(true)).marks())
        .hasAtLeastOneElementOfType(Mark.Guy.class)
        .hasAtLeastOneElementOfType(Mark.Hardest.class);
    Set<String> all =
        DOCUMENT.tree().segments().stream()
            .map(Segment::id)
            .filter(id -> !id.startsWith("t"))
            .collect(Collectors.toSet());
    showing.setLooks(showing.looks().with(new Visibility(all, Set.of())));
    assertThat(scenes.make(showing.shown(true)).marks())
        .as("only what is said of the trunk")
        .hasOnlyElementsOfType(Mark.CutPlace.class);
  }

  @Test
  void released_isOutlinedBesideOtherPoses_notOnItself() {
    int last = showing.stops().stops().size() - 1;
    assertThat(showing.stops().stops().get(last).kind()).isEqualTo(PoseStops.Kind.RELEASED);
    showing.setAt(last - 1);
    assertThat(showing.stays()).isNotEmpty();
    showing.setAt(last);
    assertThat(showing.stays()).isEmpty();
  }

  @Test
  void measured_staysSo_whenAnAnswerArrives() {
    showing.setMeasured(true);
    work.take(work.answer().orElseThrow());
    assertThat(showing.stops()).isEqualTo(PoseStops.MEASURED);
    showing.setMeasured(false);
    assertThat(showing.stop().kind()).isEqualTo(PoseStops.Kind.BENT);
  }
}
