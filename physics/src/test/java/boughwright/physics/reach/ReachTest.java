// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Anchor;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.species.Species;
import boughwright.modeller.species.SpeciesTable;
import boughwright.modeller.tree.Setting;
import boughwright.modeller.tree.Tree;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The invented hornbeam of the examples, asked for one place after another. */
class ReachTest {
  private static final Species HORNBEAM = SpeciesTable.bundled().find("Carpinus betulus").get(0);

  /** The guess may be over by what rounding and loose solving hide. */
  private static final double GUESSED = 1.02;

  private static final Set<AnchorSort> ALL = Set.of(AnchorSort.values());

  private static Document document;

  @BeforeAll
  static void read() throws InputException {
    Document read = TreeFiles.read(Path.of("../examples/hedge-hornbeam.tree.json")).document();
    // without its container, so that only the tree can be tied to
    Tree alone = read.tree().withSetting(Setting.UNSAID);
    document = new Document(alone, read.plans(), read.extras());
  }

  private static Plan plan() {
    return document.plan("a").orElseThrow();
  }

  private static Reached reach(Target target, ReachRequest.Wishes wishes) {
    return Reach.of(new ReachRequest(document.tree(), plan(), List.of(), HORNBEAM, target, wishes));
  }

  private static Reached to(String segment, double x, double y, double z) {
    return reach(point(segment, x, y, z), new ReachRequest.Wishes(ALL, 0.05, 1));
  }

  private static Target point(String segment, double x, double y, double z) {
    return new Target.Point(new Spot(segment, 1), new Point3(x / 1000, y / 1000, z / 1000));
  }

  private static String kind(Reached reached) {
    return reached.unreachable().orElseThrow().kind();
  }

  @Test
  void branchALittleDown_isReachedWithinTheRisk() {
    Reached reached = to("b1c", 156, -6, 145);
    assertThat(reached.choices()).hasSizeBetween(1, 5);
    for (Choice choice : reached.choices()) {
      assertThat(choice.risk().breaking()).isLessThanOrEqualTo(GUESSED * 0.05);
      assertThat(choice.trial().outcome().holds()).isTrue();
      assertThat(choice.miss()).isLessThan(reached.startMiss());
    }
    assertThat(reached.choices().get(0).why()).isEqualTo(Choice.Why.NEAREST);
  }

  @Test
  void lessRisk_comesLessNear() {
    Target far = point("b1c", 155, -6, 130);
    Choice bold = reach(far, new ReachRequest.Wishes(ALL, 0.2, 1)).choices().get(0);
    Choice shy = reach(far, new ReachRequest.Wishes(ALL, 0.01, 1)).choices().get(0);
    assertThat(shy.miss()).isGreaterThan(bold.miss());
    assertThat(shy.risk().breaking()).isLessThanOrEqualTo(GUESSED * 0.01);
    assertThat(shy.isEased()).isTrue();
  }

  @Test
  void easedChoice_risksWhatIsAllowedAndNotMuchLess() {
    Target far = point("b1c", 155, -6, 130);
    ReachRequest request =
        new ReachRequest(
            document.tree(),
            plan(),
            List.of(),
            HORNBEAM,
            far,
            new ReachRequest.Wishes(ALL, 0.1, 1));
    Choice choice = Reach.of(request).choices().get(0);
    Choice eased = Reach.eased(request, choice, 0.03).orElseThrow();
    assertThat(eased.risk().breaking()).isBetween(0.02, GUESSED * 0.03);
    assertThat(eased.lines().get(0).tie().shortening())
        .isLessThan(choice.lines().get(0).tie().shortening());
    assertThat(Reach.eased(request, choice, 0.5)).contains(choice);
  }

  @Test
  void secondLine_comesNearerOrIsLeftOut() {
    Target aside = point("b1c", 150, -25, 150);
    double one = reach(aside, new ReachRequest.Wishes(ALL, 0.2, 1)).choices().get(0).miss();
    Reached both = reach(aside, new ReachRequest.Wishes(ALL, 0.2, 2));
    Choice first = both.choices().get(0);
    assertThat(first.miss()).isLessThanOrEqualTo(one + 1e-3);
    assertThat(both.choices().stream().filter(choice -> choice.lines().size() == 2))
        .allSatisfy(choice -> assertThat(choice.miss()).isLessThan(one));
  }

  @Test
  void onlyAllowedAnchors_areUsed() {
    Reached reached =
        reach(
            point("b1c", 156, -6, 145), new ReachRequest.Wishes(Set.of(AnchorSort.ROOT), 0.05, 2));
    assertThat(reached.choices())
        .allSatisfy(
            choice ->
                assertThat(choice.lines())
                    .allMatch(line -> line.tie().anchor().sort() == AnchorSort.ROOT));
  }

  @Test
  void anchors_areThingsThatAreThere() {
    Reached reached = to("b1c", 156, -6, 145);
    for (Choice choice : reached.choices()) {
      for (Choice.Line line : choice.lines()) {
        Anchor anchor = line.tie().anchor().anchor();
        assertThat(anchor).isInstanceOf(Anchor.OnTree.class);
        assertThat(((Anchor.OnTree) anchor).spot().segment()).doesNotStartWith("b1");
      }
    }
  }

  @Test
  void direction_isTurnedToward() {
    Targets targets = new Targets(document.tree(), plan(), HORNBEAM);
    Target level = targets.heading(new Spot("b1c", 1), Direction3.of(1, 0, 0.25));
    Reached reached = reach(level, new ReachRequest.Wishes(ALL, 0.05, 1));
    Choice first = reached.choices().get(0);
    Target.Heading heading = (Target.Heading) level;
    assertThat(first.heads().angleTo(heading.direction()) * heading.arm())
        .isCloseTo(first.miss(), within(1e-9));
    assertThat(first.miss()).isLessThan(0.5 * reached.startMiss());
  }

  @Test
  void leader_comesUprightOverTheRootBase() {
    Targets targets = new Targets(document.tree(), plan(), HORNBEAM);
    Target target = targets.upright(new Spot("a6", 1));
    Reached reached = reach(target, new ReachRequest.Wishes(ALL, 0.05, 1));
    Choice first = reached.choices().get(0);
    Target.Upright upright = (Target.Upright) target;
    assertThat(upright.up().angleTo(Direction3.UP)).isCloseTo(Math.toRadians(3), within(1e-9));
    assertThat(first.miss()).isLessThan(0.5 * reached.startMiss());
    assertThat(upright.beside(first.comesTo()).norm()).isLessThanOrEqualTo(first.miss());
  }

  @Test
  void keptProposals_actAndTheirNamesAreLeftAlone() {
    Proposal kept = plan().proposals().get(0);
    Reached reached =
        Reach.of(
            new ReachRequest(
                document.tree(),
                plan(),
                List.of(kept),
                HORNBEAM,
                point("b2b", -113, 9, 140),
                new ReachRequest.Wishes(ALL, 0.2, 1)));
    Choice first = reached.choices().get(0);
    assertThat(first.plan().proposals()).containsExactly(kept, first.proposal());
    assertThat(first.trial().lines()).hasSize(3);
  }

  @Test
  void farPoint_isTooFar() {
    assertThat(kind(to("b1c", 400, 0, 160))).isEqualTo("too-far");
  }

  @Test
  void suggestedNearerPoint_isNotTooFar() {
    String remedy = to("b1c", 400, 0, 160).unreachable().orElseThrow().remedy();
    String[] xyz = remedy.substring(remedy.lastIndexOf(' ') + 1).split(",");
    Reached again =
        to(
            "b1c",
            Double.parseDouble(xyz[0]),
            Double.parseDouble(xyz[1]),
            Double.parseDouble(xyz[2]));
    assertThat(again.choices()).isNotEmpty();
  }

  @Test
  void farSideOfTheTrunk_isThroughIt() {
    assertThat(kind(to("b1c", -60, 0, 90))).isEqualTo("through-wood");
  }

  @Test
  void pointInTheTrunk_isInWood() {
    assertThat(kind(to("b1c", -5, 4, 60))).isEqualTo("in-wood");
  }

  @Test
  void root_isHeldFast() {
    assertThat(kind(to("r1", 0, 0, 0))).isEqualTo("held-fast");
  }

  @Test
  void trunkBase_isHeldFast() {
    Target base = new Target.Point(new Spot("t1", 0), new Point3(0.01, 0, 0));
    assertThat(kind(reach(base, ReachRequest.Wishes.USUAL))).isEqualTo("held-fast");
  }

  @Test
  void placeThatIsThere_needsNothing() {
    assertThat(kind(to("b1c", 153.4, -5.9, 159.8))).isEqualTo("there-already");
  }

  @Test
  void noAnchorOfThatSort_isSaid() {
    Reached reached =
        reach(point("b1c", 156, -6, 145), new ReachRequest.Wishes(Set.of(AnchorSort.RIM), 0.05, 1));
    assertThat(kind(reached)).isEqualTo("no-line");
    assertThat(reached.unreachable().orElseThrow().found()).contains("nothing to tie a line to");
    assertThat(reached.missingAnchor()).isPresent();
  }

  @Test
  void suggestedAnchor_wouldDo() {
    Reached without =
        reach(point("b1c", 156, -6, 145), new ReachRequest.Wishes(Set.of(AnchorSort.RIM), 0.05, 1));
    Point3 at = without.missingAnchor().orElseThrow().at();
    assertThat(at.z()).isLessThan(0.1);
  }
}
