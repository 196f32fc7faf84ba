// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.physics.trial.TrialResult;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class LiveSceneTest {
  private static final Document HEDGE = InventedTrees.hedgeDocument();
  private static final Plan PLAN = HEDGE.plans().get(0);
  private static final LiveTree TREE = new LiveTree(HEDGE.tree(), Optional.of(PLAN));

  private final LiveScene scenes = new LiveScene();

  private static Shown shown(Pose pose, Visibility visibility) {
    return new Shown(
        TREE,
        Optional.empty(),
        Optional.empty(),
        pose,
        List.of(new Shown.Ghost(TREE.measured(), Optional.empty())),
        visibility,
        new Shown.Options(Optional.of(new StrainScale(0.01)), false, List.of()));
  }

  private static TrialResult bent(double curvature) {
    return new Bending(HEDGE.tree()).bend("b1", new Vector3(0, -curvature, 0)).result(PLAN);
  }

  private static List<Mesh> meshes(Scene scene, Body.Role role) {
    return scene.bodies().stream()
        .filter(body -> body.role() == role)
        .flatMap(body -> body.meshes().stream())
        .toList();
  }

  @Test
  void nextPose_reusesTheSkinsOfLimbsThatDidNotMove() {
    Scene one = scenes.make(shown(TREE.bent(bent(1)), Visibility.ALL));
    Scene other = scenes.make(shown(TREE.bent(bent(2)), Visibility.ALL));
    Set<Mesh> before = new HashSet<>(meshes(one, Body.Role.SOLID));
    List<Mesh> after = meshes(other, Body.Role.SOLID);
    long made = after.stream().filter(mesh -> !before.contains(mesh)).count();
    assertThat(after).hasSameSizeAs(meshes(one, Body.Role.SOLID));
    long wounds = HEDGE.tree().wounds().size();
    assertThat(made).isBetween(1L, 8L + wounds).isLessThan(after.size() / 2);
  }

  @Test
  void samePose_isTheSameSceneAgain() {
    Shown shown = shown(TREE.bent(bent(1)), Visibility.ALL);
    assertThat(scenes.make(shown)).isSameAs(scenes.make(shown));
  }

  @Test
  void ghost_isThereOnlyWhereALimbMoved() {
    Scene still = scenes.make(shown(TREE.measured(), Visibility.ALL));
    Scene moved = scenes.make(shown(TREE.bent(bent(2)), Visibility.ALL));
    assertThat(meshes(still, Body.Role.GHOST)).isEmpty();
    assertThat(meshes(moved, Body.Role.GHOST)).isNotEmpty();
  }

  private static Set<String> branch() {
    return HEDGE.tree().segments().stream()
        .map(segment -> segment.id())
        .filter(id -> id.startsWith("b1"))
        .collect(Collectors.toSet());
  }

  @Test
  void hiddenSegments_areNotDrawn_dimmedOnesFaintly() {
    int all = meshes(scenes.make(shown(TREE.measured(), Visibility.ALL)), Body.Role.SOLID).size();
    Scene hidden = scenes.make(shown(TREE.measured(), new Visibility(branch(), Set.of())));
    Scene dimmed = scenes.make(shown(TREE.measured(), new Visibility(Set.of(), branch())));
    assertThat(meshes(hidden, Body.Role.SOLID)).hasSizeLessThan(all);
    assertThat(meshes(hidden, Body.Role.DIMMED)).isEmpty();
    assertThat(meshes(dimmed, Body.Role.DIMMED))
        .isNotEmpty()
        .allSatisfy(mesh -> assertThat(Meshes.openEdges(mesh)).isZero());
    assertThat(meshes(hidden, Body.Role.SOLID))
        .allSatisfy(mesh -> assertThat(Meshes.openEdges(mesh)).isZero());
  }

  /** A pose half-way has the end of a straight way half-way. */
  @Test
  void betweenPoses_endsLieHalfWay() {
    Pose bent = TREE.bent(bent(2));
    Pose middle = LiveTree.between(TREE.measured(), bent, 0.5);
    int tip = TREE.skeleton().indexOf("b1b");
    double whole = TREE.measured().at(tip, 1).point().distance(bent.at(tip, 1).point());
    double half = TREE.measured().at(tip, 1).point().distance(middle.at(tip, 1).point());
    assertThat(whole).isGreaterThan(0.003);
    assertThat(half / whole).isBetween(0.499, 0.501);
  }

  @Test
  void stops_leadFromMeasuredByWayOfStagesToWhatStays() {
    Plan plan = InventedCourses.lined();
    Document document = InventedCourses.document(plan);
    PoseStops stops =
        PoseStops.of(
            InventedCourses.bent(document.tree(), plan, 1),
            Optional.of(InventedCourses.staged(document, 0, 14, 28)));
    assertThat(stops.stops())
        .extracting(PoseStops.Stop::name)
        .containsExactly(
            "as measured", "day 0", "day 14", "bent, day 28", "released after 12 months");
    assertThat(stops.trouble()).isEmpty();
  }
}
