// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.tree.Foliage;
import boughwright.modeller.tree.Leaves;
import boughwright.modeller.tree.Pad;
import boughwright.physics.trial.TrialResult;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class LeafageTest {
  private static final Document HEDGE = InventedTrees.hedgeDocument();
  private static final Plan PLAN = HEDGE.plans().get(0);

  private static final Pad PAD = new Pad("f1", "b1", 1, 0.08, 0.06, 0.02, 0.005, Map.of());

  private static Document clothed(Optional<Leaves> leaves) {
    Foliage foliage = new Foliage(leaves, List.of(PAD), Map.of());
    return HEDGE.withTree(HEDGE.tree().withFoliage(foliage));
  }

  private static List<Mesh> meshes(Scene scene, Body.Role role) {
    return scene.bodies().stream()
        .filter(body -> body.role() == role)
        .flatMap(body -> body.meshes().stream())
        .toList();
  }

  private static Scene live(Document document, Visibility visibility, boolean inLeaf) {
    LiveTree tree = new LiveTree(document.tree(), Optional.empty());
    return new LiveScene()
        .make(
            new Shown(
                tree,
                Optional.empty(),
                Optional.empty(),
                tree.measured(),
                List.of(),
                visibility,
                new Shown.Options(
                    Optional.empty(),
                    false,
                    List.of(),
                    inLeaf ? Set.of(Shown.Way.IN_LEAF) : Set.of())));
  }

  private static Scene inLeaf(Document document) {
    return Scene.inLeaf(document, Optional.empty(), Optional.empty(), Optional.empty());
  }

  @Test
  void tree_isBareUntilItIsAskedForInLeaf() {
    Document document = clothed(Optional.empty());
    Scene bare = Scene.of(document, Optional.empty(), Optional.empty());
    assertThat(bare.has(Body.Role.FOLIAGE)).isFalse();
    assertThat(live(document, Visibility.ALL, false).has(Body.Role.FOLIAGE)).isFalse();
    assertThat(meshes(inLeaf(document), Body.Role.FOLIAGE)).hasSize(1);
    assertThat(meshes(live(document, Visibility.ALL, true), Body.Role.FOLIAGE)).hasSize(1);
  }

  @Test
  void treeWithoutPads_wearsAGuess_andItIsCalledSo() {
    Scene scene = inLeaf(HEDGE);
    assertThat(scene.has(Body.Role.FOLIAGE)).isFalse();
    assertThat(meshes(scene, Body.Role.GUESSED_FOLIAGE)).hasSizeGreaterThan(3);
  }

  @Test
  void hiddenBranch_hidesItsPad() {
    Visibility hidden = new Visibility(Set.of("b1"), Set.of());
    assertThat(meshes(live(clothed(Optional.empty()), hidden, true), Body.Role.FOLIAGE)).isEmpty();
  }

  /** The volume inside a closed mesh, by the divergence theorem. */
  private static double volume(Mesh mesh) {
    double sum = 0;
    for (int t = 0; t < mesh.triangleCount(); t++) {
      Vector3 a = corner(mesh, t, 0);
      Vector3 b = corner(mesh, t, 1);
      Vector3 c = corner(mesh, t, 2);
      sum += a.dot(b.cross(c)) / 6;
    }
    return sum;
  }

  private static Vector3 corner(Mesh mesh, int triangle, int which) {
    int v = mesh.corner(triangle, which);
    return new Vector3(mesh.part(v, 0), mesh.part(v, 1), mesh.part(v, 2));
  }

  /** An ellipsoid holds pi/6 of the box round it; leaves make the pad uneven, never larger. */
  @Test
  void pad_isClosed_facesOutward_andHasItsSize() {
    Mesh mesh = meshes(inLeaf(clothed(Optional.empty())), Body.Role.FOLIAGE).get(0);
    double whole = Math.PI / 6 * 0.08 * 0.06 * 0.02;
    assertThat(volume(mesh)).isBetween(0.8 * whole, whole);
  }

  @Test
  void pad_goesWithItsBranch_whenThatIsBent() {
    Document document = clothed(Optional.empty());
    TrialResult bent = new Bending(document.tree()).bend("b1", new Vector3(0, -10, 0)).result(PLAN);
    Scene before = Scene.inLeaf(document, Optional.of(PLAN), Optional.empty(), Optional.empty());
    Scene after = Scene.inLeaf(document, Optional.of(PLAN), Optional.of(bent), Optional.empty());
    LiveTree tree = new LiveTree(document.tree(), Optional.of(PLAN));
    int branch = tree.skeleton.indexOf("b1");
    Vector3 moved =
        tree.bent(bent).at(branch, 1).point().minus(tree.measured().at(branch, 1).point());
    assertThat(moved.norm()).isGreaterThan(0.003);
    Vector3 pad = middle(after).minus(middle(before));
    assertThat(pad.minus(moved).norm()).isCloseTo(0, within(0.003));
  }

  private static Vector3 middle(Scene scene) {
    Mesh mesh = meshes(scene, Body.Role.FOLIAGE).get(0);
    Vector3 sum = Vector3.ZERO;
    for (int v = 0; v < mesh.vertexCount(); v++) {
      sum = sum.plus(new Vector3(mesh.part(v, 0), mesh.part(v, 1), mesh.part(v, 2)));
    }
    return sum.times(1.0 / mesh.vertexCount());
  }

  /** No colour of strain is green: in them green is never the largest part. */
  @Test
  void leaves_areGreen_asNoStrainIs_andAnEvergreenIsDarker() {
    Mesh summer = meshes(inLeaf(clothed(Optional.empty())), Body.Role.FOLIAGE).get(0);
    Mesh pine = meshes(inLeaf(clothed(Optional.of(Leaves.EVERGREEN))), Body.Role.FOLIAGE).get(0);
    for (Mesh mesh : List.of(summer, pine)) {
      assertThat(mesh.part(0, 7)).isGreaterThan(Math.max(mesh.part(0, 6), mesh.part(0, 8)) + 0.05f);
    }
    assertThat(pine.part(0, 7)).isLessThan(summer.part(0, 7) - 0.1f);
    StrainScale scale = new StrainScale(0.01);
    for (double strain = -0.01; strain <= 0.01; strain += 0.0005) {
      Colour colour = scale.colour(strain);
      assertThat(colour.green()).isLessThan(Math.max(colour.red(), colour.blue()) + 0.02);
    }
  }
}
