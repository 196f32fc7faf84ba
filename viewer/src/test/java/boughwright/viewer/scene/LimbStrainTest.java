// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.trial.FailureMode;
import boughwright.physics.trial.FailurePlace;
import boughwright.physics.trial.FailureRisk;
import boughwright.physics.trial.PathSample;
import boughwright.physics.trial.Risk;
import boughwright.physics.trial.TrialResult;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Strains and limits along a limb, and the marks on its bark. */
class LimbStrainTest {
  private static final double EXACT = 1e-12;

  private static final Document HEDGE = InventedTrees.hedgeDocument();
  private static final Plan PLAN = HEDGE.plans().get(0);
  private static final TrialResult RISKY = InventedRisks.with(Bending.drawnIn(HEDGE.tree(), PLAN));

  private static Scene scene(TrialResult trial) {
    return Scene.of(HEDGE, Optional.of(PLAN), Optional.of(trial));
  }

  private static LimbStrain limb(TrialResult trial) {
    return scene(trial).risk().orElseThrow().limb().orElseThrow();
  }

  @Test
  void places_countFromTheBarkOfTheParent_alongTheWholeLimb() {
    Skeleton skeleton = new Skeleton(HEDGE.tree());
    int first = skeleton.indexOf("l1");
    PathSample sample = RISKY.segment("l3").orElseThrow().samples().get(8);
    double expected =
        skeleton.length(first)
            - skeleton.collar(first)
            + skeleton.length(skeleton.indexOf("l2"))
            + sample.along() * skeleton.length(skeleton.indexOf("l3"));
    LimbStrain limb = limb(RISKY);
    assertThat(limb.limb()).isEqualTo("l1 to l5");
    assertThat(limb.fromUnion()).isTrue();
    assertThat(limb.strains())
        .anySatisfy(
            fibres -> {
              assertThat(fibres.at()).isCloseTo(expected, within(EXACT));
              assertThat(fibres.tension()).isEqualTo(sample.tensionStrain());
            });
    assertThat(limb.strains().get(0).at()).isBetween(0.0, 0.01);
    assertThat(limb.limits()).isSortedAccordingTo((a, b) -> Double.compare(a.at(), b.at()));
  }

  @Test
  void hardestPlace_isOnTheCurve_forCrackAndKink() {
    LimbStrain limb = limb(RISKY);
    double most =
        limb.strains().stream().mapToDouble(LimbStrain.Fibres::tension).max().orElseThrow();
    Set<FailureMode> modes =
        limb.places().stream().map(LimbStrain.Place::mode).collect(Collectors.toSet());
    assertThat(modes).containsExactlyInAnyOrder(FailureMode.CRACK, FailureMode.KINK);
    assertThat(limb.places())
        .allSatisfy(place -> assertThat(place.strain()).isCloseTo(most, within(EXACT)));
  }

  @Test
  void crackLiesOnTheStretchedBark_kinkOppositeToIt() {
    List<Mark.Failure> marks = failures(RISKY);
    Mark.Failure crack = marks.stream().filter(m -> m.mode() == FailureMode.CRACK).findAny().get();
    Mark.Failure kink = marks.stream().filter(m -> m.mode() == FailureMode.KINK).findAny().get();
    assertThat(marks).hasSize(2);
    assertThat(crack.outward().dot(kink.outward())).isCloseTo(-1, within(1e-9));
    double caliper = crack.at().distance(kink.at());
    assertThat(caliper).isCloseTo(0.0245, within(0.001));
    assertThat(crack.words())
        .containsExactly("crack: about 1 in 30", "l2: top", "14 mm from the union");
    assertThat(scene(RISKY).marks()).noneMatch(Mark.Hardest.class::isInstance);
  }

  @Test
  void otherWaysToFail_areMarkedFromTheRoundAngle_turnedWithTheWood() {
    FailureRisk split =
        new FailureRisk(
            FailureMode.SPLIT,
            InventedRisks.ONE_IN_EIGHT,
            Optional.of(new FailurePlace("b1", 0.5, OptionalDouble.of(0.02), 0, "top")),
            0.5,
            InventedRisks.CRACK);
    Risk risk = new Risk(List.of(split), Map.of(), 0, List.of(), List.of(), 100, 1);
    Mark.Failure mark =
        failures(InventedRisks.with(RISKY, Optional.of(risk), Optional.empty())).get(0);
    Vector3 up = new Vector3(0, 0, 1);
    assertThat(mark.outward().norm()).isCloseTo(1, within(1e-9));
    assertThat(mark.outward().dot(up)).as("the top turned by a bend").isGreaterThan(0.7);
  }

  @Test
  void withoutRisk_theHardestPlaceIsMarked_andNothingIsPlotted() {
    TrialResult plain = Bending.drawnIn(HEDGE.tree(), PLAN);
    assertThat(scene(plain).risk()).isEmpty();
    assertThat(scene(plain).marks()).anyMatch(Mark.Hardest.class::isInstance);
  }

  private static List<Mark.Failure> failures(TrialResult trial) {
    return scene(trial).marks().stream()
        .filter(Mark.Failure.class::isInstance)
        .map(Mark.Failure.class::cast)
        .toList();
  }
}
