// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.design.review.Trees.At;
import boughwright.modeller.plan.TreeStyle;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What cuts leave, worked out by hand. */
class AftermathTest {
  private static final double EXACT = 1e-9;

  /** A straight trunk, 30 mm at its base and 10 at its tip, and a level branch that forks. */
  private static Structure forked() {
    return Trees.trunk(new At(0, 0, 0, 30), new At(0, 0, 100, 20), new At(0, 0, 200, 10))
        .branch("b", "t1@0.5", 8, new At(100, 0, 50, 4))
        .branch("s", "b@0.5", 3, new At(50, 40, 50, 2))
        .structure();
  }

  private static Shoot shoot(Structure structure, String id) {
    return structure.shoots().stream().filter(s -> s.id().equals(id)).findFirst().orElseThrow();
  }

  /**
   * Ends by cross-section: the trunk just beyond b, the branch just beyond s, and s itself;
   * calipers read off the cones.
   */
  @Test
  void foliage_isSharedByTheLiveEnds() {
    Structure structure = forked();
    double trunk = square(30 - 10 * (50 + 4) / 100.0);
    double collar = 12.5;
    double branch = square(8 - 4 * (50 + 1.5 - collar) / (100 - collar));
    double side = square(3);
    Foliage foliage = new Foliage(structure);
    double sum = trunk + branch + side;
    assertThat(foliage.beyond(shoot(structure, "s"), 0)).isCloseTo(side / sum, within(1e-6));
    assertThat(foliage.beyond(shoot(structure, "b"), 0))
        .isCloseTo((branch + side) / sum, within(1e-6));
    assertThat(foliage.beyond(structure.main(), 0)).isCloseTo(1, within(EXACT));
    double beyondHalf = foliage.beyond(shoot(structure, "b"), 0.0757500);
    assertThat(beyondHalf).isCloseTo(branch / sum / 2, within(1e-4));
  }

  private static double square(double caliper) {
    return caliper * caliper;
  }

  @Test
  void levelBranchOffAnUprightTrunk_leavesARoundWoundOfItsCaliper_onItsOwnSide() {
    Structure structure = forked();
    Aftermath off = new Cuts(structure).removing(List.of(shoot(structure, "b")));
    AdvisedCut wound = off.cuts().get(0);
    assertThat(wound.width()).isCloseTo(0.008, within(EXACT));
    assertThat(wound.height()).isCloseTo(0.008, within(EXACT));
    assertThat(wound.share()).isCloseTo(8.0 / 25, within(EXACT));
    assertThat(wound.face().on().segment()).isEqualTo("t1");
    assertThat(wound.face().normal().x()).isCloseTo(1, within(EXACT));
    assertThat(wound.face().cut().segment()).isEqualTo("b");
    assertThat(wound.face().cut().along()).isZero();
    assertThat(off.leftOnBranch()).isEmpty();
  }

  /** A branch at 30 degrees to its parent is cut along the parent: twice as long as wide. */
  @Test
  void slantingBranch_leavesALongerWound() {
    Structure structure =
        Trees.trunk(new At(0, 0, 0, 30), new At(0, 0, 200, 10))
            .branch("b", "t1@0.25", 8, new At(50, 0, 50 + 50 * Math.sqrt(3), 4))
            .structure();
    AdvisedCut wound = new Cuts(structure).removing(List.of(shoot(structure, "b"))).cuts().get(0);
    assertThat(wound.height()).isCloseTo(0.016, within(1e-6));
    assertThat(wound.width()).isCloseTo(0.008, within(EXACT));
  }

  @Test
  void withoutItsOnlyBranch_theWoodStandsOverTheBase() {
    Structure structure = forked();
    Aftermath off = new Cuts(structure).removing(List.of(shoot(structure, "b")));
    assertThat(off.balance().before().right()).isPositive();
    assertThat(off.balance().after().right()).isCloseTo(0, within(EXACT));
    assertThat(off.balance().after().behind()).isCloseTo(0, within(EXACT));
    assertThat(off.taper().after()).isEqualTo(off.taper().before());
  }

  @Test
  void sessions_areAsManyAsTheLimitOfTheKindOfWoodAsksFor() {
    Structure broad = forked();
    Aftermath off = new Cuts(broad).shortening(broad.main(), 0.02);
    assertThat(off.lost()).isCloseTo(1, within(EXACT));
    assertThat(off.sessions()).isEqualTo(2);
    assertThat(ReviewRules.of(TreeStyle.UPRIGHT, WoodKind.CONIFER).mostLost())
        .isCloseTo(1.0 / 3, within(EXACT));
    assertThat(ReviewRules.of(TreeStyle.UPRIGHT, WoodKind.UNKNOWN).mostLost())
        .isCloseTo(1.0 / 3, within(EXACT));
    assertThat(broad.rules().mostLost()).isEqualTo(0.5);
  }

  @Test
  void conifer_isNotShortenedIntoBareWood() {
    Trees trees = Trees.moving().branch("b", "t4@0.05", 22, new At(120, 0, 240, 4));
    for (WoodKind wood : WoodKind.values()) {
      Review review = trees.review(Optional.empty(), ReviewRules.of(TreeStyle.UPRIGHT, wood));
      List<Remedy.Action> actions =
          review.faults().get(0).options().stream().map(Remedy::action).toList();
      assertThat(actions.contains(Remedy.Action.SHORTEN))
          .as("%s", wood)
          .isEqualTo(wood == WoodKind.BROADLEAF);
      assertThat(actions).contains(Remedy.Action.KEEP, Remedy.Action.REMOVE);
    }
  }

  @Test
  void sacrifice_isForATrunkThatCanBecomeSoThick() {
    Trees trees = Trees.moving().branch("b", "t4@0.05", 18, new At(120, 0, 240, 4));
    Remedy sacrifice =
        trees.review().faults().get(0).options().stream()
            .filter(o -> o.action() == Remedy.Action.SACRIFICE)
            .findFirst()
            .orElseThrow();
    assertThat(sacrifice.until().orElseThrow()).isCloseTo(0.036, within(EXACT));
    Trees thicker = Trees.moving().branch("b", "t4@0.05", 27, new At(120, 0, 240, 4));
    assertThat(thicker.review().faults().get(0).options())
        .extracting(Remedy::action)
        .doesNotContain(Remedy.Action.SACRIFICE);
  }
}
