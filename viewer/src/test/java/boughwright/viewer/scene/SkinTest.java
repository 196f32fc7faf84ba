// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.TreeDraft;
import boughwright.physics.trial.PathSample;
import boughwright.physics.trial.TrialResult;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SkinTest {
  /** Single precision of a place within a metre [m]. */
  private static final double FLOAT_ROUNDING = 2e-7;

  private static final Document HEDGE = InventedTrees.hedgeDocument();
  private static final Plan PLAN = HEDGE.plans().get(0);

  private static Scene bent() {
    return Scene.of(HEDGE, Optional.of(PLAN), Optional.of(Bending.drawnIn(HEDGE.tree(), PLAN)));
  }

  private static Scene measured(Tree tree) {
    return Scene.of(new Document(tree, List.of(), Map.of()), Optional.empty(), Optional.empty());
  }

  private static List<Mesh> meshes(Scene scene, Body.Role role) {
    return scene.bodies().stream()
        .filter(body -> body.role() == role)
        .flatMap(body -> body.meshes().stream())
        .toList();
  }

  /** One trunk and nothing else: leaning, tapered from 60 to 40 mm over 200 mm. */
  private static Tree pole() {
    return new Shoots()
        .base("t1", new double[] {60, 0, 190.788}, Shoots.taper(60, 40))
        .tree("pole");
  }

  @Test
  void everyMesh_isClosedAndFacesOutward() {
    Document document = InventedCourses.document(InventedCourses.crowded());
    Plan plan = document.plans().get(0);
    Scene scene =
        Scene.inLeaf(
            document,
            Optional.of(plan),
            Optional.of(InventedCourses.bent(document.tree(), plan, 1.15)),
            Optional.of(InventedCourses.byHand(document)));
    // nothing is dimmed here, and the leaves are a guess: the same meshes as given ones
    for (Body.Role role : EnumSet.complementOf(EnumSet.of(Body.Role.DIMMED, Body.Role.FOLIAGE))) {
      assertThat(meshes(scene, role))
          .as("%s", role)
          .isNotEmpty()
          .allSatisfy(
              mesh -> {
                assertThat(Meshes.openEdges(mesh)).isZero();
                assertThat(Meshes.volume(mesh)).isPositive();
              });
    }
  }

  @Test
  void normals_haveLengthOneAndFaceOutOfTheSkin() {
    for (Mesh mesh : meshes(bent(), Body.Role.SOLID)) {
      for (int t = 0; t < mesh.triangleCount(); t++) {
        Point3 a = Meshes.position(mesh, mesh.corner(t, 0));
        Vector3 face =
            Meshes.position(mesh, mesh.corner(t, 1))
                .minus(a)
                .cross(Meshes.position(mesh, mesh.corner(t, 2)).minus(a));
        int v = mesh.corner(t, 0);
        Vector3 normal = new Vector3(mesh.part(v, 3), mesh.part(v, 4), mesh.part(v, 5));
        assertThat(normal.norm()).isCloseTo(1, within(1e-5));
        assertThat(normal.dot(face)).isGreaterThan(-1e-9);
      }
    }
  }

  @Test
  void rings_haveTheRadiusOfTheCaliper() {
    Mesh mesh = meshes(measured(pole()), Body.Role.SOLID).get(0);
    Direction3 way = Direction3.of(60, 0, 190.788);
    double length = Math.hypot(0.06, 0.190788);
    int seen = 0;
    for (int v = 0; v < mesh.vertexCount(); v++) {
      Vector3 from = Meshes.position(mesh, v).minus(Point3.ORIGIN);
      double along = from.dot(way.vector());
      double radius = from.minus(way.times(along)).norm();
      if (along > 1e-6 && along < length - 1e-6) {
        assertThat(radius).isCloseTo(0.030 - 0.010 * along / length, within(FLOAT_ROUNDING));
        seen++;
      }
    }
    assertThat(seen).isGreaterThan(100);
  }

  /** Volume of a truncated cone, pi L (R² + R r + r²) / 3, less what a ring of 32 corners lacks. */
  @Test
  void volume_isThatOfATruncatedConeWithItsEnds() {
    double length = Math.hypot(0.06, 0.190788);
    double cone = Math.PI * length * (9e-4 + 6e-4 + 4e-4) / 3;
    double polygon = 32 / (2 * Math.PI) * Math.sin(2 * Math.PI / 32);
    double cap = 2.0 / 3 * Math.PI * 0.8 * Math.pow(0.020, 3);
    double foot = Math.PI * 0.22 * 0.030 * (9e-4 + 8.1e-4 + 7.29e-4) / 3;
    double facetsOfTheCap = 0.01;
    assertThat(Meshes.volume(meshes(measured(pole()), Body.Role.SOLID).get(0)))
        .isCloseTo((cone + cap + foot) * polygon, within(facetsOfTheCap * cap * 4));
  }

  @Test
  void mirroredTree_stillFacesOutward_withTheSameVolume() {
    List<Segment> mirrored = new ArrayList<>();
    for (Segment s : HEDGE.tree().segments()) {
      Point3 end = new Point3(-s.end().x(), s.end().y(), s.end().z());
      mirrored.add(
          new Segment(
              s.id(),
              s.parent(),
              s.along(),
              s.joins(),
              s.kind(),
              s.start(),
              end,
              s.caliperStart(),
              s.caliperEnd(),
              s.bark(),
              s.live(),
              s.extras()));
    }
    Tree t = HEDGE.tree();
    Tree other = new TreeDraft(t).segments(mirrored).overrides(List.of()).wounds(List.of()).build();
    List<Mesh> left = meshes(measured(t), Body.Role.SOLID);
    List<Mesh> right = meshes(measured(other), Body.Role.SOLID);
    double cornersFallElsewhere = 5e-3;
    for (int n = 0; n < right.size(); n++) {
      double volume = Meshes.volume(left.get(n));
      assertThat(Meshes.volume(right.get(n)))
          .isCloseTo(volume, within(cornersFallElsewhere * volume));
    }
  }

  @Test
  void trialThatBendsNothing_drawsTheTreeWhereItWas() {
    TrialResult still = new Bending(HEDGE.tree()).result(PLAN);
    Scene moved = Scene.of(HEDGE, Optional.of(PLAN), Optional.of(still));
    Scene rest = Scene.of(HEDGE, Optional.of(PLAN), Optional.empty());
    List<Mesh> a = meshes(moved, Body.Role.SOLID);
    List<Mesh> b = meshes(rest, Body.Role.SOLID);
    assertThat(a).hasSameSizeAs(b);
    for (int n = 0; n < a.size(); n++) {
      for (int v = 0; v < a.get(n).vertexCount(); v++) {
        assertThat(Meshes.position(a.get(n), v).distance(Meshes.position(b.get(n), v)))
            .isLessThan(2 * FLOAT_ROUNDING);
      }
    }
    assertThat(meshes(moved, Body.Role.GHOST)).isEmpty();
  }

  @Test
  void bentLimb_runsThroughThePlacesOfTheTrial() {
    Tree tree =
        new Shoots().base("t1", new double[] {0, 0, 200}, Shoots.taper(20, 20)).tree("pole");
    Plan plan = InventedTrees.plan(List.of(), List.of(), Optional.empty(), Optional.empty());
    TrialResult trial = new Bending(tree).bend("t1", new Vector3(0, 4, 0)).result(plan);
    Scene scene =
        Scene.of(
            new Document(tree, List.of(plan), Map.of()), Optional.of(plan), Optional.of(trial));
    Mesh mesh = meshes(scene, Body.Role.SOLID).get(0);
    double nearest = 0.010;
    for (PathSample sample : trial.segments().get(0).samples()) {
      double least = Double.POSITIVE_INFINITY;
      double most = 0;
      for (int v = 0; v < mesh.vertexCount(); v++) {
        Vector3 away = Meshes.position(mesh, v).minus(sample.point());
        if (Math.abs(away.dot(sample.direction().vector())) < 1e-3) {
          least = Math.min(least, away.norm());
          most = Math.max(most, away.norm());
        }
      }
      double withinAMillimetreAlong = 1e-4;
      if (sample.along() > 0 && sample.along() < 1 && most > 0) {
        assertThat(least).isCloseTo(nearest, within(withinAMillimetreAlong));
        assertThat(most).isCloseTo(nearest, within(withinAMillimetreAlong));
      }
    }
  }

  @Test
  void strainColours_areSignedRoundTheLimb() {
    Tree tree =
        new Shoots().base("t1", new double[] {0, 0, 200}, Shoots.taper(20, 20)).tree("pole");
    Plan plan = InventedTrees.plan(List.of(), List.of(), Optional.empty(), Optional.empty());
    TrialResult trial = new Bending(tree).bend("t1", new Vector3(0, 2, 0)).result(plan);
    Scene scene =
        Scene.of(
            new Document(tree, List.of(plan), Map.of()), Optional.of(plan), Optional.of(trial));
    StrainScale scale = scene.scale().orElseThrow();
    double peak = trial.peak().orElseThrow().bendingStrain();
    Mesh mesh = meshes(scene, Body.Role.SOLID).get(0);
    boolean stretched = false;
    boolean squeezed = false;
    for (int v = 0; v < mesh.vertexCount(); v++) {
      stretched |= hasColour(mesh, v, scale.colour(peak));
      squeezed |= hasColour(mesh, v, scale.colour(-peak));
      if (hasColour(mesh, v, scale.colour(peak))) {
        assertThat(mesh.part(v, 0)).as("bent toward +x, stretched on the other side").isNegative();
      }
    }
    assertThat(stretched).isTrue();
    assertThat(squeezed).isTrue();
  }

  private static boolean hasColour(Mesh mesh, int v, Colour colour) {
    double rounding = 1e-3;
    return Math.abs(mesh.part(v, 6) - colour.red()) < rounding
        && Math.abs(mesh.part(v, 7) - colour.green()) < rounding
        && Math.abs(mesh.part(v, 8) - colour.blue()) < rounding;
  }
}
