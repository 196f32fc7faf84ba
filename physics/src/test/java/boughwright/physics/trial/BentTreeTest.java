// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.TreeDraft;
import boughwright.modeller.tree.Wound;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class BentTreeTest {
  /** Rounding of a cut segment told by what is left of it [m]. */
  private static final double ROUNDING = 1e-12;

  private static Document document;

  @BeforeAll
  static void read() throws InputException {
    document = TreeFiles.read(Path.of("../examples/hedge-hornbeam.tree.json")).document();
  }

  private static Plan plan() {
    return document.plan("a").orElseThrow();
  }

  private static Tree bent(Tree tree, Plan plan) {
    return BentTree.of(tree, plan, tried(tree, plan)).tree();
  }

  private static TrialResult tried(Tree tree, Plan plan) {
    return Trial.run(TrialRequest.of(tree, plan, TrialSpecies.of(tree)));
  }

  @Test
  void withoutAnyLoad_itIsTheTreeAsCut() {
    Plan plan = plan().withProposals(List.of());
    Tree same = bent(document.tree(), plan);
    Skeleton before = new Skeleton(document.tree());
    Skeleton after = new Skeleton(same);
    Cutting cutting = new Cutting(after, plan.cuts());
    for (int i = 0; i < before.size(); i++) {
      assertThat(after.end(i).distance(before.end(i))).isLessThan(ROUNDING);
      assertThat(cutting.left(i)).isEqualTo(new Cutting(before, plan.cuts()).left(i));
      assertThat(after.segment(i).caliperEnd()).isEqualTo(before.segment(i).caliperEnd());
      assertThat(after.joint(i)).isEqualTo(before.joint(i));
    }
    for (int n = 0; n < same.wounds().size(); n++) {
      assertThat(same.wounds().get(n).round())
          .isCloseTo(document.tree().wounds().get(n).round(), within(1e-9));
    }
  }

  @Test
  void bent_itsEndsAreThoseOfTheTrial() {
    Skeleton after = new Skeleton(bent(document.tree(), plan()));
    TrialResult trial = tried(document.tree(), plan());
    Cutting cutting = new Cutting(after, plan().cuts());
    int moved = 0;
    for (SegmentTrial piece : trial.segments()) {
      int i = after.indexOf(piece.segment());
      Point3 left = after.point(i, cutting.left(i));
      assertThat(left.distance(piece.end())).as(piece.segment()).isLessThan(ROUNDING);
      Skeleton before = new Skeleton(document.tree());
      moved += before.point(i, cutting.left(i)).distance(left) > 1e-3 ? 1 : 0;
    }
    assertThat(moved).isPositive();
  }

  /** How far the bent axis bows out between the ends of a segment, which is left out. */
  @Test
  void segmentBetweenItsBentEnds_bowsOutLessThanAMillimetre() {
    double most = 0;
    for (SegmentTrial piece : tried(document.tree(), plan()).segments()) {
      Vector3 chord = piece.end().minus(piece.start());
      for (PathSample sample : piece.samples()) {
        Vector3 off = sample.point().minus(piece.start());
        most = Math.max(most, off.cross(chord).norm() / chord.norm());
      }
    }
    assertThat(most).isBetween(1e-5, 1e-3);
  }

  /** What the cuts take is carried along stiffly: its own length and direction stay. */
  @Test
  void whatIsCutAway_keepsItsShape() {
    Skeleton before = new Skeleton(document.tree());
    Skeleton after = new Skeleton(bent(document.tree(), plan()));
    int gone = before.indexOf("t9");
    Vector3 was = before.end(gone).minus(before.start(gone));
    Vector3 is = after.end(gone).minus(after.start(gone));
    assertThat(is.minus(was).norm()).isLessThan(ROUNDING);
  }

  /** A wound on the inside of the leaning leader stays square to its wood, on its side. */
  @Test
  void wound_turnsWithItsSegment() {
    List<Wound> wounds = new ArrayList<>(document.tree().wounds());
    wounds.add(new Wound("w9", "a5", 0.5, 1.2, 0.004, 0.005, Optional.empty(), Map.of()));
    Tree tree = document.tree();
    Tree hurt = new TreeDraft(tree).wounds(wounds).build();
    Skeleton before = new Skeleton(hurt);
    Skeleton after = new Skeleton(bent(hurt, plan()));
    int i = before.indexOf("a5");
    double round = after.tree().wounds().get(wounds.size() - 1).round();
    Vector3 was = before.roundDirection(i, 1.2).vector();
    Vector3 is = after.roundDirection(i, round).vector();
    double tilt = before.direction(i).angleTo(after.direction(i));
    assertThat(tilt).isGreaterThan(0.01);
    assertThat(is.dot(after.direction(i).vector())).isCloseTo(0, within(1e-9));
    assertThat(Math.acos(Math.min(1, was.dot(is)))).isLessThanOrEqualTo(tilt + 1e-9);
  }

  @Test
  void poseThatDoesNotHold_isRefused() {
    TrialResult trial = tried(document.tree(), plan());
    TrialResult fallen =
        new TrialResult(
            trial.plan(),
            trial.proposals(),
            new Outcome(false, false, 0, "it fell"),
            List.of(),
            List.of(),
            Optional.empty(),
            trial.held(),
            trial.error(),
            Optional.empty(),
            Optional.empty(),
            List.of(),
            List.of());
    assertThatThrownBy(() -> BentTree.of(document.tree(), plan(), fallen))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("holds no pose");
  }
}
