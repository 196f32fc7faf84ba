// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Problem;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.WoodOverride;
import boughwright.modeller.tree.Wound;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Edits of segments and branches, each on a tree small enough to be worked by hand. */
class SegmentEditsTest {
  private static Document hornbeam() throws InputException {
    return TreeFiles.read(Path.of("..", "examples", "hedge-hornbeam.tree.json")).document();
  }

  /** An upright trunk of 100 mm and a level branch of 100 mm to the right from its middle. */
  private static Document tree() throws InputException {
    Document trunk = NewTree.document("Invented", "carpinus-betulus");
    return SegmentEdits.add(
            new NewSegment(
                "b1",
                new NewSegment.Place("t1", 0.5, Joint.UNION),
                Kind.BRANCH,
                new Run.Heading(Math.toRadians(270), 0, 0.1),
                0.01,
                0.008))
        .of(trunk);
  }

  /** And a shoot of 50 mm straight up from half of the branch. */
  private static Document treeWithShoot() throws InputException {
    return SegmentEdits.add(
            new NewSegment(
                "b1s1",
                new NewSegment.Place("b1", 0.5, Joint.UNION),
                Kind.BRANCH,
                new Run.To(new Point3(0.05, 0, 0.1)),
                0.005,
                0.004))
        .of(tree());
  }

  private static Segment segment(Document document, String id) {
    return document.tree().segments().stream()
        .filter(one -> one.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static void assertAt(Point3 found, double x, double y, double z) {
    assertThat(found.distance(new Point3(x, y, z))).isLessThan(1e-12);
  }

  private static Problem refusal(Edit edit, Document document) {
    try {
      edit.of(document);
      throw new AssertionError(edit.name() + " was made");
    } catch (InputException e) {
      return e.problems().get(0);
    }
  }

  @Test
  void newTree_isOneUprightTrunk() throws Exception {
    Document document = NewTree.document("Invented", "carpinus-betulus");
    assertThat(document.tree().segments()).hasSize(1);
    assertThat(new Skeleton(document.tree()).direction(0).z()).isEqualTo(1);
    assertThatThrownBy(() -> NewTree.document(" ", "larch")).isInstanceOf(InputException.class);
  }

  /** A long history must not hold every segment over and over. */
  @Test
  void segmentsThatDoNotChange_areShared() throws Exception {
    Document before = hornbeam();
    Document after = SegmentEdits.setCalipers("b4", 0.012, 0.01).of(before);
    for (int i = 0; i < before.tree().segments().size(); i++) {
      Segment old = before.tree().segments().get(i);
      if (!old.id().equals("b4")) {
        assertThat(after.tree().segments().get(i)).isSameAs(old);
      }
    }
    assertThat(after.plans()).isSameAs(before.plans());
  }

  @Test
  void segment_runsWhereItsHeadingLeads() throws Exception {
    assertAt(segment(tree(), "b1").end(), 0.1, 0, 0.05);
    Skeleton skeleton = new Skeleton(tree().tree());
    Run.Heading heading = Run.Heading.of(skeleton, skeleton.indexOf("b1"));
    assertThat(heading.azimuth()).isCloseTo(Math.toRadians(270), within(1e-12));
    assertThat(heading.elevation()).isCloseTo(0, within(1e-12));
    assertThat(heading.length()).isCloseTo(0.1, within(1e-15));
  }

  @ParameterizedTest
  @CsvSource({
    "t9, TRUNK, CONTINUES, t10",
    "b1e, BRANCH, CONTINUES, b1f",
    "b2s1, BRANCH, CONTINUES, b2s1b",
    "a7, TRUNK, CONTINUES, a8",
    "b1, BRANCH, UNION, b1s4",
    "b1c, BRANCH, UNION, b1s4",
    "r8, ROOT, CONTINUES, r8b",
    "t1, ROOT, UNION, r9"
  })
  void newName_goesOnWithThePatternOfTheFile(String parent, Kind kind, Joint joint, String id)
      throws Exception {
    assertThat(NextId.segment(hornbeam(), parent, kind, joint)).isEqualTo(id);
  }

  @Test
  void newName_isFree_whateverTheCaseOfTheOthers() {
    assertThat(NextId.numbered("b", List.of("B7", "b2", "x"))).isEqualTo("b3");
    assertThat(NextId.free("b3", List.of("B3", "b4"))).isEqualTo("b5");
  }

  @Test
  void whatGrowsOnASegment_ridesAlong_whenItsEndMoves() throws Exception {
    Document after =
        SegmentEdits.moveEnd("b1", new Run.To(new Point3(0.1, 0.02, 0.07)), SegmentEdits.Carry.WITH)
            .of(treeWithShoot());
    assertAt(segment(after, "b1s1").end(), 0.05, 0.01, 0.11);
  }

  @Test
  void whatGrowsOnASegment_staysWhereItEnds_whenItIsAsked() throws Exception {
    Document after =
        SegmentEdits.moveEnd(
                "b1", new Run.To(new Point3(0.1, 0.02, 0.07)), SegmentEdits.Carry.STAYS)
            .of(treeWithShoot());
    assertAt(segment(after, "b1s1").end(), 0.05, 0, 0.1);
    Skeleton skeleton = new Skeleton(after.tree());
    assertAt(skeleton.start(skeleton.indexOf("b1s1")), 0.05, 0.01, 0.06);
  }

  @Test
  void branch_keepsItsShape_whenItMovesUpTheTrunk() throws Exception {
    Document after = BranchEdits.move("b1", "t1", 0.9).of(treeWithShoot());
    assertAt(segment(after, "b1").end(), 0.1, 0, 0.09);
    assertAt(segment(after, "b1s1").end(), 0.05, 0, 0.14);
  }

  @Test
  void mirrorImage_standsOnTheOtherSideOfThePlane() throws Exception {
    Document after = BranchEdits.mirror("b1", 0).of(treeWithShoot());
    assertAt(segment(after, "b2").end(), -0.1, 0, 0.05);
    assertAt(segment(after, "b2s1").end(), -0.05, 0, 0.1);
    assertThat(segment(after, "b2s1").parent()).contains("b2");
  }

  @Test
  void copy_isTurnedClockwiseSeenFromAbove() throws Exception {
    var place = new BranchEdits.BranchPlace("t1", 1);
    Document after = BranchEdits.duplicate("b1", place, Math.toRadians(90)).of(tree());
    assertAt(segment(after, "b2").end(), 0, -0.1, 0.1);
  }

  @Test
  void nameOfADeletion_saysHowMuchGoes() throws Exception {
    Edit edit = BranchEdits.delete(hornbeam(), "b2");
    assertThat(edit.name()).startsWith("Delete b2 and what hangs on it: 6 segments");
    assertThat(BranchEdits.delete(hornbeam(), List.of("b2", "b2b", "b3s1")).name())
        .startsWith("Delete b2, b2b, b3s1 and what hangs on them: 7 segments");
  }

  @Test
  void segmentIsNotSplit_insideTheWoodItGrowsFrom() throws Exception {
    Problem problem = refusal(SegmentEdits.split("b1", 0.1, "b1b"), tree());
    assertThat(problem.kind()).isEqualTo("split-in-union");
    assertThat(problem.remedy()).contains("13.75 mm");
    Document after = SegmentEdits.split("b1", 0.5, "b1b").of(tree());
    assertAt(segment(after, "b1").end(), 0.05, 0, 0.05);
    assertThat(segment(after, "b1b").caliperEnd()).isEqualTo(0.008);
  }

  @Test
  void edits_areRefused_withWhatToDoInstead() throws Exception {
    Document tree = treeWithShoot();
    Map<Edit, String> kinds =
        Map.ofEntries(
            Map.entry(SegmentEdits.split("b1", 0, "x"), "out-of-range"),
            Map.entry(SegmentEdits.split("b1", Double.NaN, "x"), "out-of-range"),
            Map.entry(SegmentEdits.split("b1", 0.5, "t1"), "duplicate-id"),
            Map.entry(SegmentEdits.rename("b1", "t1"), "duplicate-id"),
            Map.entry(SegmentEdits.rename("b1", "b*"), "bad-id"),
            Map.entry(SegmentEdits.rename("b1", " "), "bad-id"),
            Map.entry(SegmentEdits.rename("b9", "x"), "unknown-segment"),
            Map.entry(SegmentEdits.setCalipers("b1", 0, 0.01), "out-of-range"),
            Map.entry(SegmentEdits.setCalipers("b1", Double.NaN, 0.01), "out-of-range"),
            Map.entry(SegmentEdits.setBark("b1", OptionalDouble.of(0.005)), "no-wood"),
            Map.entry(SegmentEdits.setBark("b1", OptionalDouble.of(-1)), "out-of-range"),
            Map.entry(SegmentEdits.setJoint("t1", Joint.UNION), "base-joins-nothing"),
            Map.entry(SegmentEdits.setJoint("b1", Joint.CONTINUES), "continues-midway"),
            Map.entry(BranchEdits.move("b1", "b1s1", 1), "ring"),
            Map.entry(BranchEdits.move("t1", "b1", 1), "base-moves"),
            Map.entry(BranchEdits.move("b1", "t1", 1.5), "out-of-range"),
            Map.entry(BranchEdits.mirror("t1", 0), "base-copied"),
            Map.entry(moved("b1", new Point3(0, 0, 0.05)), "no-length"),
            Map.entry(moved("b1", new Point3(4000, 0, 0)), "out-of-range"));
    kinds.forEach(
        (edit, kind) -> {
          Problem problem = refusal(edit, tree);
          assertThat(problem.kind()).as(edit.name()).isEqualTo(kind);
          assertThat(problem.line()).isNotBlank().doesNotContain("_mm", "segments[");
        });
    assertThatThrownBy(() -> BranchEdits.delete(tree, "t1")).hasMessageContaining("trunk base");
    assertThatThrownBy(() -> BranchEdits.delete(tree, "b2")).hasMessageContaining("b1");
  }

  private static Edit moved(String id, Point3 end) {
    return SegmentEdits.moveEnd(id, new Run.To(end), SegmentEdits.Carry.WITH);
  }

  @Test
  void table_isPastedInOneStep_andNamesMayChangePlaces() throws Exception {
    Edit edit =
        TableEdits.setCells(
            List.of(
                new Cell.Row(
                    "b1",
                    List.of(
                        new Cell.Id("b1s1"),
                        new Cell.Elevation(Math.PI / 2),
                        new Cell.Azimuth(0),
                        new Cell.Length(0.2))),
                new Cell.Row("b1s1", List.of(new Cell.Id("b1"), new Cell.CaliperEnd(0.003)))));
    assertThat(edit.name()).isEqualTo("Change 6 cells of 2 segments");
    Document after = edit.of(treeWithShoot());
    assertAt(segment(after, "b1s1").end(), 0, 0, 0.25);
    assertThat(segment(after, "b1").parent()).contains("b1s1");
    assertThat(segment(after, "b1").caliperEnd()).isEqualTo(0.003);
    assertAt(segment(after, "b1").end(), 0, 0, 0.2);
  }

  @Test
  void cells_mayDependOnEachOther() throws Exception {
    Document barked = SegmentEdits.setBark("b1", OptionalDouble.of(0.003)).of(tree());
    List<Cell> both = List.of(new Cell.CaliperEnd(0.005), new Cell.Bark(OptionalDouble.of(0.001)));
    Document after = TableEdits.setCells(List.of(new Cell.Row("b1", both))).of(barked);
    assertThat(segment(after, "b1").caliperEnd()).isEqualTo(0.005);
    Edit one = TableEdits.setCells(List.of(new Cell.Row("b1", both.subList(0, 1))));
    assertThat(refusal(one, barked).kind()).isEqualTo("no-wood");
  }

  @Test
  void table_movesABranchToAnotherParent() throws Exception {
    Edit edit =
        TableEdits.setCells(
            List.of(new Cell.Row("b1s1", List.of(new Cell.Parent("t1"), new Cell.Along(1)))));
    Document after = edit.of(treeWithShoot());
    assertThat(segment(after, "b1s1").parent()).contains("t1");
    assertAt(segment(after, "b1s1").end(), 0, 0, 0.15);
    Edit base = TableEdits.setCells(List.of(new Cell.Row("t1", List.of(new Cell.Along(0.5)))));
    assertThat(refusal(base, after).kind()).isEqualTo("base-moves");
  }

  /** What is known by the beginning of a name stays with the wood when the name changes. */
  @Test
  void wood_isThatOfTheSegment_whateverItIsCalled() throws Exception {
    WoodOverride stiff =
        new WoodOverride(
            "b*",
            OptionalDouble.of(6e9),
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.empty(),
            Map.of());
    Document before = TreeEdits.overrides(List.of(stiff)).of(tree());
    Document renamed = SegmentEdits.rename("b1", "x1").of(before);
    assertThat(renamed.tree().overrideFor("x1").orElseThrow().moe()).hasValue(6e9);
    Document back = SegmentEdits.rename("t1", "b9").of(before);
    assertThat(back.tree().overrideFor("b9").flatMap(one -> one.source())).isEmpty();
    assertThat(back.tree().overrideFor("b9").orElseThrow().moe()).isEmpty();
  }

  /** A level branch has its wound on top; raised upright it must not jump to the front. */
  @Test
  void wound_turnsWithTheWood_whenASegmentIsRaisedUpright() throws Exception {
    Wound wound = new Wound("w1", "b1", 0.8, 0, 0.004, 0.01, Optional.empty(), Map.of());
    Document before = WoundEdits.add(wound).of(tree());
    Run upright = new Run.Heading(Math.toRadians(270), Math.toRadians(88), 0.1);
    Document after = SegmentEdits.moveEnd("b1", upright, SegmentEdits.Carry.WITH).of(before);
    Skeleton skeleton = new Skeleton(after.tree());
    double round = after.tree().wounds().get(0).round();
    var side = skeleton.roundDirection(skeleton.indexOf("b1"), round);
    assertThat(side.x()).as("what was on top faces the trunk").isLessThan(-0.99);
    Run slanted = new Run.Heading(Math.toRadians(270), Math.toRadians(40), 0.1);
    Document slant = SegmentEdits.moveEnd("b1", slanted, SegmentEdits.Carry.WITH).of(before);
    assertThat(slant.tree().wounds().get(0).round()).isZero();
  }
}
