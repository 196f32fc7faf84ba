// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.design.review.Trees.At;
import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.plan.TreeStyle;
import boughwright.modeller.tree.Kind;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What is a fault and what just is none, on trees small enough to see. */
class FaultsTest {
  private static List<FaultKind> kinds(Review review) {
    return review.faults().stream().map(Fault::kind).toList();
  }

  private static Fault fault(Review review, FaultKind kind) {
    return review.faults().stream().filter(f -> f.kind() == kind).findFirst().orElseThrow();
  }

  /** A branch to the left and one to the right, the second so far above the first [mm]. */
  private static Review pair(double above, double caliper) {
    double part = 0.4 + above / Math.sqrt(24 * 24 + 65 * 65 + 100);
    return Trees.moving()
        .branch("l", "t3@0.4", 10, new At(-120, 0, 190, 4))
        .branch("r", "t3@" + part, caliper, new At(130, 10, 195, 2.5))
        .review();
  }

  @Test
  void branchesOfOneHeight_areABar_unlessOneIsATwigOrTheyAreApart() {
    Fault bar = fault(pair(1, 9), FaultKind.BAR_BRANCHES);
    assertThat(bar.segments()).containsExactly("r", "l");
    assertThat(bar.measure().limit()).isEqualTo(Limit.BAR_SPACING);
    assertThat(kinds(pair(1, 2.9))).doesNotContain(FaultKind.BAR_BRANCHES);
    assertThat(kinds(pair(25, 9))).doesNotContain(FaultKind.BAR_BRANCHES);
  }

  @Test
  void threeOfOneHeight_areAWhorl_andNoBar() {
    Trees trees =
        Trees.moving()
            .branch("l", "t3@0.4", 10, new At(-120, 0, 190, 4))
            .branch("r", "t3@0.42", 9, new At(130, 10, 195, 4))
            .branch("k", "t3@0.45", 8, new At(0, 120, 190, 4));
    assertThat(kinds(trees.review()))
        .contains(FaultKind.WHORL)
        .doesNotContain(FaultKind.BAR_BRANCHES);
    Fault whorl = fault(trees.review(), FaultKind.WHORL);
    assertThat(whorl.measure().value()).isEqualTo(3);
    Remedy remove =
        whorl.options().stream()
            .filter(o -> o.action() == Remedy.Action.REMOVE)
            .findFirst()
            .orElseThrow();
    assertThat(remove.cuts()).extracting("segment").containsExactly("k", "r");
    assertThat(kinds(trees.review(Optional.empty(), style(TreeStyle.BROOM))))
        .doesNotContain(FaultKind.WHORL);
  }

  private static ReviewRules style(TreeStyle style) {
    return ReviewRules.of(style, WoodKind.BROADLEAF);
  }

  @ParameterizedTest
  @EnumSource(TreeStyle.class)
  void lowBranch_isAFaultOnlyWhereOneTrunkStandsUp(TreeStyle style) {
    Trees trees = Trees.moving().branch("b", "t1@0.8", 10, new At(120, 0, 80, 4));
    boolean judged = style == TreeStyle.UPRIGHT || style == TreeStyle.SLANTING;
    Review review = trees.review(Optional.empty(), style(style));
    assertThat(kinds(review).contains(FaultKind.TOO_LOW)).isEqualTo(judged);
    assertThat(review.notJudged().stream().anyMatch(n -> n.kind() == FaultKind.TOO_LOW))
        .isEqualTo(!judged);
  }

  @Test
  void aspectAboveAHalf_isTooThick_andAboveSeventyPercentTheMeasureSaysCodominant() {
    Trees half = Trees.moving().branch("b", "t4@0.5", 14, new At(120, 0, 240, 4));
    assertThat(kinds(half.review())).doesNotContain(FaultKind.TOO_THICK);
    Trees thick = Trees.moving().branch("b", "t4@0.5", 22, new At(120, 0, 240, 4));
    Fault fault = fault(thick.review(), FaultKind.TOO_THICK);
    assertThat(fault.measure().value()).isCloseTo(22 / 29.5, within(1e-9));
    assertThat(fault.measures()).extracting(Measured::limit).contains(Limit.CODOMINANT);
    assertThat(Limit.CODOMINANT.origin()).isEqualTo(Limit.Origin.PUBLISHED);
  }

  @Test
  void sacrificeAndDeadwood_areNotJudged() {
    for (Kind kind : List.of(Kind.SACRIFICE, Kind.DEADWOOD)) {
      Trees trees = Trees.moving().branch("b", "t4@0.05", 22, new At(120, 0, 240, 4), kind);
      assertThat(trees.review().faults()).as("%s", kind).isEmpty();
      assertThat(trees.review().lookedAt().others()).isEqualTo(1);
    }
  }

  @Test
  void secondLeader_competesIfItReachesTheTop_andIsBentOrRemoved() {
    Trees trees = Trees.moving().branch("l", "t3@0.5", 20, new At(60, 0, 390, 6), Kind.TRUNK);
    Fault fault = fault(trees.review(), FaultKind.COMPETING_LEADER);
    assertThat(fault.options())
        .extracting(Remedy::action)
        .contains(Remedy.Action.KEEP, Remedy.Action.REMOVE, Remedy.Action.BEND);
    assertThat(kinds(trees.review())).doesNotContain(FaultKind.TOO_THICK);
    assertThat(kinds(trees.review(Optional.empty(), style(TreeStyle.TWIN_TRUNK))))
        .doesNotContain(FaultKind.COMPETING_LEADER);
  }

  @Test
  void branchesThatPassClose_cross_andThoseFromOneForkDoNot() {
    Trees crossing =
        Trees.moving()
            .branch("a", "t3@0.2", 9, new At(120, 0, 230, 5))
            .branch("b", "t4@0.2", 8, new At(125, 2, 150, 5));
    Fault fault = fault(crossing.review(), FaultKind.CROSSING);
    assertThat(fault.segments()).containsExactlyInAnyOrder("a", "b");
    assertThat(fault.where().at().x()).isBetween(0.03, 0.12);
    Trees fork =
        Trees.moving()
            .branch("a", "t3@0.2", 9, new At(120, 0, 230, 5))
            .branch("s", "a@0.1", 6, new At(110, 30, 170, 3));
    assertThat(kinds(fork.review())).doesNotContain(FaultKind.CROSSING);
  }

  @Test
  void branchAtTheViewer_isJudgedOnlyWithAFront() {
    Trees trees = Trees.moving().branch("b", "t3@0.5", 9, new At(4, -130, 180, 4));
    assertThat(kinds(trees.review())).doesNotContain(FaultKind.BRANCH_AT_VIEWER);
    assertThat(trees.review().notJudged())
        .contains(new NotJudged(FaultKind.BRANCH_AT_VIEWER, NotJudged.Reason.NO_FRONT));
    Review seen = trees.review(Optional.of(FrontPose.upright(0)), Trees.rules());
    assertThat(kinds(seen)).contains(FaultKind.BRANCH_AT_VIEWER);
    Review aside = trees.review(Optional.of(FrontPose.upright(Math.PI / 2)), Trees.rules());
    assertThat(kinds(aside)).doesNotContain(FaultKind.BRANCH_AT_VIEWER);
  }

  @Test
  void apexThatIsTiltedBack_leansAway() {
    Trees trees = Trees.moving();
    Review back =
        trees.review(Optional.of(new FrontPose(0, 0, -Math.toRadians(15))), Trees.rules());
    assertThat(kinds(back)).contains(FaultKind.APEX_AWAY);
    Review toward =
        trees.review(Optional.of(new FrontPose(0, 0, Math.toRadians(15))), Trees.rules());
    assertThat(kinds(toward)).doesNotContain(FaultKind.APEX_AWAY);
  }

  @Test
  void branchInsideACurve_isAFault_andOutsideIsNone() {
    Trees in = Trees.moving().branch("b", "t2@1", 9, new At(110, 0, 140, 4));
    assertThat(kinds(in.review())).contains(FaultKind.INSIDE_CURVE);
    Trees out = Trees.moving().branch("b", "t2@1", 9, new At(-110, 0, 140, 4));
    assertThat(kinds(out.review())).doesNotContain(FaultKind.INSIDE_CURVE);
  }

  @Test
  void treeOfOneSegment_saysWhatCannotBeJudged() {
    Review review = Trees.trunk(new At(0, 0, 0, 30), new At(0, 0, 200, 20)).review();
    assertThat(review.faults()).isEmpty();
    assertThat(review.notJudged())
        .contains(
            new NotJudged(FaultKind.STRAIGHT, NotJudged.Reason.ONE_SEGMENT),
            new NotJudged(FaultKind.BAR_BRANCHES, NotJudged.Reason.NO_BRANCH));
  }

  @Test
  void limits_canBeMoved() {
    Trees trees = Trees.moving().branch("b", "t4@0.5", 16, new At(120, 0, 240, 4));
    assertThat(kinds(trees.review())).contains(FaultKind.TOO_THICK);
    ReviewRules easier = Trees.rules().with(Limit.BRANCH_CALIPER, 0.6);
    assertThat(kinds(trees.review(Optional.empty(), easier))).doesNotContain(FaultKind.TOO_THICK);
  }
}
