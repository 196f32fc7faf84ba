// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.PlanDraft;
import boughwright.modeller.plan.Planting;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;
import boughwright.physics.trial.Outcome;
import boughwright.physics.trial.TrialResult;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SceneTest {
  private static final double ROUNDING = 1e-9;
  private static final Document HEDGE = InventedTrees.hedgeDocument();
  private static final Plan PLAN = HEDGE.plans().get(0);

  private static Tree pole() {
    return new Shoots().base("t1", new double[] {0, 0, 200}, Shoots.taper(20, 16)).tree("pole");
  }

  private static Scene scene(Tree tree, Plan plan) {
    return Scene.of(
        new Document(tree, List.of(plan), Map.of()), Optional.of(plan), Optional.empty());
  }

  private static Plan apexPlan(Optional<Planting> planting, double frontDeg) {
    Plan plan = InventedTrees.plan(List.of(), List.of(), Optional.of("t1"), planting);
    return new PlanDraft(plan).frontAzimuth(OptionalDouble.of(Math.toRadians(frontDeg))).build();
  }

  @Test
  void planting_movesTheTopTowardItsAzimuth() {
    Planting toViewersLeft = new Planting(Math.toRadians(10), Math.toRadians(90));
    Mark.Apex apex =
        Mark.apex(scene(pole(), apexPlan(Optional.of(toViewersLeft), 0)).marks()).orElseThrow();
    assertThat(apex.at().x()).isCloseTo(-0.2 * Math.sin(Math.toRadians(10)), within(ROUNDING));
    assertThat(apex.at().z()).isCloseTo(0.2 * Math.cos(Math.toRadians(10)), within(ROUNDING));
    assertThat(apex.right()).isCloseTo(apex.at().x(), within(ROUNDING));
  }

  /** Leaning 100 mm to the right and 40 mm away from azimuth 0. */
  @ParameterizedTest
  @CsvSource({
    "0, '100 mm right, 40 mm behind the root base'",
    "180, '100 mm left, 40 mm in front of the root base'",
    "90, '40 mm left, 100 mm behind the root base'",
    "270, '40 mm right, 100 mm in front of the root base'"
  })
  void apex_isToldFromTheFront(double frontDeg, String words) {
    Tree tree =
        new Shoots().base("t1", new double[] {100, 40, 200}, Shoots.taper(20, 16)).tree("leaning");
    Mark.Apex apex =
        Mark.apex(scene(tree, apexPlan(Optional.empty(), frontDeg)).marks()).orElseThrow();
    assertThat(apex.words()).containsExactly("apex t1", words);
    assertThat(apex.foot().z()).isZero();
  }

  @Test
  void apex_overTheRootBase_saysSo() {
    Mark.Apex apex = Mark.apex(scene(pole(), apexPlan(Optional.empty(), 33)).marks()).orElseThrow();
    assertThat(apex.words()).contains("straight over the root base");
  }

  @Test
  void trial_givesGhostSolidAndWhatIsCutAway() {
    Scene scene =
        Scene.of(HEDGE, Optional.of(PLAN), Optional.of(Bending.drawnIn(HEDGE.tree(), PLAN)));
    for (Body.Role role :
        List.of(Body.Role.SOLID, Body.Role.GHOST, Body.Role.REMOVED, Body.Role.FITTING)) {
      assertThat(scene.has(role)).as("%s", role).isTrue();
    }
    assertThat(scene.scale()).isPresent();
    assertThat(scene.trouble()).isEmpty();
  }

  @Test
  void marks_tellTensionStrainAndWeight() {
    TrialResult trial = Bending.drawnIn(HEDGE.tree(), PLAN);
    Scene scene = Scene.of(HEDGE, Optional.of(PLAN), Optional.of(trial));
    List<String> words = scene.marks().stream().flatMap(mark -> mark.words().stream()).toList();
    assertThat(words).contains("g1  62 N", "g2  18 N", "150 g", "cut", "apex l1");
    assertThat(words)
        .anyMatch(
            line ->
                line.startsWith(
                    Wording.percent(trial.peak().orElseThrow().bendingStrain()) + "  "));
  }

  @Test
  void outcomeThatDoesNotHold_isShownAsMeasured_withTheReason() {
    Outcome outcome = new Outcome(true, false, 1, "at b1");
    Scene scene = Scene.of(HEDGE, Optional.of(PLAN), Optional.of(Bending.failed(PLAN, outcome)));
    assertThat(scene.trouble().orElseThrow()).contains("snaps through").contains("at b1");
    assertThat(scene.has(Body.Role.GHOST)).isFalse();
    assertThat(scene.scale()).isEmpty();
    assertThat(scene.marks()).noneMatch(Mark.Hardest.class::isInstance);
  }

  @Test
  void noPlan_showsTheTreeAlone() {
    Scene scene = Scene.of(HEDGE, Optional.empty(), Optional.empty());
    assertThat(scene.marks()).isEmpty();
    assertThat(scene.has(Body.Role.SOLID)).isTrue();
    assertThat(scene.has(Body.Role.REMOVED)).isFalse();
    assertThat(scene.front()).isZero();
  }

  @Test
  void cut_takesWhatIsBeyondIt() {
    Skeleton skeleton = new Skeleton(HEDGE.tree());
    Cutting kept = new Cutting(skeleton, List.of(new Spot("t4", 0.35)));
    assertThat(kept.left(skeleton.indexOf("t4"))).isEqualTo(0.35);
    assertThat(kept.isGone(skeleton.indexOf("t5"))).isTrue();
    assertThat(kept.isGone(skeleton.indexOf("c1"))).as("branch beyond the cut").isTrue();
    assertThat(kept.isGone(skeleton.indexOf("c3"))).as("branch on what is gone").isTrue();
    assertThat(kept.left(skeleton.indexOf("l1"))).as("branch before the cut").isEqualTo(1);
  }

  /** Clockwise when looking from start to end: from above toward the right hand. */
  @Test
  void round_countsClockwiseFromTheUpperSide() {
    Vector3 level = WoundPatch.radial(Direction3.of(1, 0, 0), Math.PI / 2);
    assertThat(level.minus(new Vector3(0, -1, 0)).norm()).isLessThan(ROUNDING);
    Vector3 upright = WoundPatch.radial(Direction3.UP, 0);
    assertThat(upright.minus(new Vector3(0, -1, 0)).norm()).isLessThan(ROUNDING);
  }

  @Test
  void stretchesOfALimb_areDrawnInOneSkin() {
    Skeleton skeleton = new Skeleton(HEDGE.tree());
    List<Limb> limbs = Limb.of(skeleton);
    assertThat(limbs.get(0).segments())
        .extracting(i -> skeleton.segment(i).id())
        .containsExactly("t1", "t2", "t3", "t4", "t5", "t6");
    assertThat(limbs.stream().mapToInt(limb -> limb.segments().size()).sum())
        .isEqualTo(skeleton.size());
  }

  @Test
  void thousandsOfSegments_areDrawnCoarserInBoundedMeshes() {
    Shoots shoots = new Shoots().base("s0", new double[] {0, 0, 2}, Shoots.taper(60, 59));
    for (int n = 1; n < 2500; n++) {
      double azimuth = 137.5 * n % 360;
      shoots.grownOn("s" + n, "s" + (n - 1) / 2, Shoots.way(azimuth, 30, 12));
    }
    Scene scene =
        Scene.of(
            new Document(shoots.tree("thicket"), List.of(), Map.of()),
            Optional.empty(),
            Optional.empty());
    int triangles = scene.bodies().get(0).meshes().stream().mapToInt(Mesh::triangleCount).sum();
    assertThat(triangles).isBetween(100_000, 2_000_000);
  }
}
