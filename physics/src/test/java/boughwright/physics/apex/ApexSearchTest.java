// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.apex;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.design.shape.CutFace;
import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.PlanDraft;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.species.Species;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;
import boughwright.physics.reach.AnchorSort;
import boughwright.physics.reach.Choice;
import boughwright.physics.reach.Reach;
import boughwright.physics.reach.ReachRequest;
import boughwright.physics.reach.Targets;
import boughwright.physics.stage.Trying;
import boughwright.physics.trial.Said;
import boughwright.physics.trial.TrialSpecies;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The invented hornbeam of the examples, whose second leader can become the top. */
class ApexSearchTest {
  private static final Trying.Watch NOBODY =
      new Trying.Watch() {
        @Override
        public void now(String what) {}

        @Override
        public void part(double done) {}
      };

  private static Document document;
  private static Species hornbeam;
  private static Apexes found;

  @BeforeAll
  static void search() throws InputException {
    document = TreeFiles.read(Path.of("../examples/hedge-hornbeam.tree.json")).document();
    hornbeam = TrialSpecies.of(document.tree());
    found = ApexSearch.of(request(document.tree(), bare()), NOBODY, () -> false);
  }

  private static Plan bare() {
    return new PlanDraft("x").build();
  }

  private static ApexRequest request(Tree tree, Plan plan) {
    Trying guess =
        new Trying(Optional.empty(), Said.only(LocalDate.of(2026, 3, 5)), Optional.empty());
    return new ApexRequest(
        tree,
        plan,
        TrialSpecies.of(tree),
        new ReachRequest.Wishes(Set.of(AnchorSort.RIM), 0.05, 1),
        guess,
        2);
  }

  private static ApexOption of(String tip) {
    return found.options().stream()
        .filter(one -> one.leader().tip().segment().equals(tip))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void secondLeader_isRankedBeforeTheTrunkThatNoBendHelps() {
    assertThat(found.options()).hasSize(2);
    assertThat(found.options().get(0)).isSameAs(of("a7"));
    assertThat(of("t9").state()).isEqualTo(ApexOption.State.CANNOT);
    assertThat(of("t9").noBend()).isPresent();
    assertThat(of("t9").best()).isFalse();
    assertThat(found.leftOut()).isPositive();
  }

  /**
   * What the verb reach gives for the same tip and the same cuts: of its choices that stand over
   * the base the one that pulls least, else the nearest.
   */
  @Test
  void pulls_areThoseOfReach() {
    ApexOption option = of("a7");
    Plan cut = option.plan().withProposals(List.of());
    ReachRequest wanted =
        new ReachRequest(
            document.tree(),
            cut,
            List.of(),
            hornbeam,
            new Targets(document.tree(), cut, hornbeam).upright(new Spot("a7", 1)),
            new ReachRequest.Wishes(Set.of(AnchorSort.RIM), 0.05, 1));
    List<Choice> choices = Reach.of(wanted).choices();
    Choice first = choices.get(0);
    double least = Double.POSITIVE_INFINITY;
    for (Choice one : choices) {
      double pull = one.trial().lines().get(0).tension();
      double lean = Math.acos(one.heads().z());
      boolean over = Math.hypot(one.comesTo().x(), one.comesTo().y()) <= 0.031;
      if (over && lean <= Math.toRadians(15) && pull < least) {
        least = pull;
        first = one;
      }
    }
    ApexOption.Bent bent = option.bent().orElseThrow();
    assertThat(bent.pull()).isEqualTo(first.trial().lines().get(0).tension());
    assertThat(bent.breaking()).isEqualTo(first.risk().breaking());
    assertThat(bent.then().beside())
        .isCloseTo(Math.hypot(first.comesTo().x(), first.comesTo().y()), within(1e-12));
    assertThat(bent.then().height()).isCloseTo(first.comesTo().z(), within(1e-12));
  }

  @Test
  void bend_bringsTheTipNearerWithinTheRisk() {
    ApexOption option = of("a7");
    assertThat(option.then().beside()).isLessThan(option.now().beside());
    assertThat(option.bent().orElseThrow().breaking()).isLessThanOrEqualTo(0.05 * 1.02);
    Point3 tip = document.tree().segments().get(new Skeleton(document.tree()).indexOf("a7")).end();
    assertThat(option.now().beside()).isCloseTo(Math.hypot(tip.x(), tip.y()), within(1e-12));
  }

  @Test
  void plan_cutsTheTrunkAboveAndNamesTheApex() {
    ApexOption option = of("a7");
    assertThat(option.plan().apex()).contains("a7");
    assertThat(option.plan().cuts())
        .containsAll(option.leader().cuts().stream().map(CutFace::cut).toList());
    assertThat(option.plan().proposals()).hasSize(1);
    assertThat(option.wounds()).hasSameSizeAs(option.leader().cuts());
    assertThat(option.wounds().get(0).width()).isCloseTo(0.033, within(1e-9));
  }

  /** By hand: the trunk is 124 mm high, a third of six base calipers of 62 mm, within t4. */
  @Test
  void chop_isAThirdOfSixCalipersHigh() {
    Chop chop = found.chop().orElseThrow();
    assertThat(chop.height()).isCloseTo(6 * 0.062, within(1e-9));
    Skeleton skeleton = new Skeleton(document.tree());
    Point3 at = skeleton.point(skeleton.indexOf(chop.at().segment()), chop.at().along());
    assertThat(at.z()).isCloseTo(0.124, within(1e-6));
    assertThat(chop.wound().width()).isEqualTo(chop.caliper());
    assertThat(chop.years().likely())
        .isGreaterThanOrEqualTo(chop.thickening().likely())
        .isGreaterThanOrEqualTo(chop.growing().likely());
  }

  @Test
  void searchThatIsStopped_givesNothing() {
    assertThatThrownBy(() -> ApexSearch.of(request(document.tree(), bare()), NOBODY, () -> true))
        .isInstanceOf(CancellationException.class);
  }

  @Test
  void treeWithoutAnyLeader_hasNoOption() {
    Plan stump = new PlanDraft("s").cuts(List.of(new Spot("t1", 0.5))).build();
    Apexes none = ApexSearch.of(request(document.tree(), stump), NOBODY, () -> false);
    assertThat(none.options()).isEmpty();
    assertThat(none.chop()).isEmpty();
  }
}
