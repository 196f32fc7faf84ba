// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.design.review.Trees.At;
import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.plan.TreeStyle;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Swellings and leaning apexes, which the planted trees do not have, worked out by hand. */
class SwellingAndLeanTest {
  /** Caliper at the whorl, 100 mm up [mm]. */
  private static final double BULGE = 36;

  private static List<Fault> of(FaultKind kind, Review review) {
    return review.faults().stream().filter(fault -> fault.kind() == kind).toList();
  }

  /** A trunk as thick as told 100 mm up and above, 30 mm thick at 70 mm; branches at 100 mm. */
  private static Trees bulging(double caliper, double above, int branches) {
    Trees trees =
        Trees.trunk(
            new At(0, 0, 0, 40),
            new At(0, 0, 70, 30),
            new At(0, 0, 100, caliper),
            new At(0, 0, 125, above),
            new At(0, 0, 300, 10));
    double[][] ways = {{1, 0}, {-0.5, 0.87}, {-0.5, -0.87}};
    for (int n = 0; n < branches; n++) {
      At tip = new At(150 * ways[n][0], 150 * ways[n][1], 130, 4);
      trees.branch("b" + n, "t2@1", 9 + n, tip);
    }
    return trees;
  }

  /** Caliper of a cone between two readings [mm]. */
  private static double between(double low, double high, double part) {
    return low + part * (high - low);
  }

  /** The plain trunk 1.2 calipers below and above, and its mean, for the whorl is half way. */
  private static double ratio(double caliper, double above) {
    double below = between(40, 30, (100 - 1.2 * caliper) / 70);
    double over = between(above, 10, (1.2 * caliper - 25) / 175);
    return caliper / ((below + over) / 2);
  }

  @Test
  void whorlBringsASwelling_asThickAsTheConesSay() {
    Review review = bulging(BULGE, 28, 3).review();
    Fault fault = of(FaultKind.SWELLING, review).get(0);
    assertThat(fault.measure().value()).isCloseTo(ratio(BULGE, 28), within(1e-9));
    assertThat(ratio(BULGE, 28)).isBetween(1.23, 1.25);
    assertThat(fault.where().at().z()).isCloseTo(0.1, within(1e-9));
    assertThat(fault.where().caliper()).isCloseTo(0.036, within(1e-9));
    assertThat(fault.segments()).contains("b0", "b1", "b2");
    assertThat(of(FaultKind.WHORL, review)).hasSize(1);
    assertThat(of(FaultKind.REVERSE_TAPER, review)).as("told once").isEmpty();
  }

  @Test
  void swelling_endsAtItsLimit() {
    double ratio = ratio(BULGE, 28);
    for (double off : new double[] {-1e-3, 1e-3}) {
      ReviewRules rules = Trees.rules().with(Limit.SWELLING, ratio + off);
      Review review = bulging(BULGE, 28, 2).review(Optional.empty(), rules);
      assertThat(of(FaultKind.SWELLING, review)).hasSize(off < 0 ? 1 : 0);
    }
    assertThat(ratio(31, 28)).isLessThan(1.08);
    assertThat(of(FaultKind.SWELLING, bulging(31, 28, 3).review())).isEmpty();
  }

  @Test
  void bulgeOfOneBranch_orWoodThatStaysThickAbove_isReverseTaper() {
    Review one = bulging(BULGE, 28, 1).review();
    assertThat(of(FaultKind.SWELLING, one)).isEmpty();
    assertThat(of(FaultKind.REVERSE_TAPER, one)).hasSize(1);
    Review stays = bulging(BULGE, 36, 3).review();
    assertThat(of(FaultKind.SWELLING, stays)).isEmpty();
    assertThat(of(FaultKind.REVERSE_TAPER, stays)).hasSize(1);
  }

  @Test
  void broom_hasItsBranchesFromOnePlace() {
    ReviewRules broom = ReviewRules.of(TreeStyle.BROOM, WoodKind.BROADLEAF);
    assertThat(of(FaultKind.SWELLING, bulging(BULGE, 28, 3).review(Optional.empty(), broom)))
        .isEmpty();
  }

  /** A trunk whose tip stands so far behind its base, seen from azimuth 0 [mm]. */
  private static Review leaning(double behind, FrontPose front) {
    return Trees.trunk(
            new At(0, 0, 0, 40), new At(20, behind / 2, 150, 25), new At(0, behind, 300, 10))
        .review(Optional.of(front), Trees.rules());
  }

  @Test
  void apexLeansAway_byTheAngleOfItsTip() {
    FrontPose front = FrontPose.upright(0);
    Fault away = of(FaultKind.APEX_AWAY, leaning(80, front)).get(0);
    assertThat(away.measure().value()).isCloseTo(Math.atan2(80, 300), within(1e-9));
    assertThat(of(FaultKind.APEX_AWAY, leaning(54, front))).as("10.2 degrees").hasSize(1);
    assertThat(of(FaultKind.APEX_AWAY, leaning(52, front))).as("9.8 degrees").isEmpty();
    assertThat(of(FaultKind.APEX_AWAY, leaning(-80, front))).as("toward the viewer").isEmpty();
    assertThat(of(FaultKind.APEX_AWAY, leaning(-80, FrontPose.upright(Math.PI)))).hasSize(1);
    assertThat(of(FaultKind.APEX_AWAY, leaning(80, FrontPose.upright(Math.PI / 2))))
        .as("to the side")
        .isEmpty();
  }
}
