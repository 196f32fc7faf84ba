// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Coil;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Hand;
import boughwright.modeller.plan.Material;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;
import boughwright.physics.trial.PathSample;
import boughwright.physics.trial.TrialResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Coils against the geometry of a helix, written out here. */
class CoilCurveTest {
  private static final int STEPS = 40;
  private static final double ROUNDING = 1e-9;

  /** A chord of 1/40 of a turn lies inside its circle by 1 - cos(pi/40) of the radius. */
  private static final double CHORD = 1 - Math.cos(Math.PI / STEPS);

  /** A level rod along x: 200 mm long. */
  private static Tree rod(double startMm, double endMm) {
    return new Shoots()
        .base("t1", new double[] {200, 0, 0}, Shoots.taper(startMm, endMm))
        .tree("rod");
  }

  private static Coil coil(Spot from, Spot to, double angleDeg, int strands, Hand hand) {
    return new Coil(
        from,
        to,
        Material.COPPER_ANNEALED,
        0.003,
        strands,
        Math.toRadians(angleDeg),
        hand,
        Map.of());
  }

  private static Coil whole(double angleDeg, int strands, Hand hand) {
    return coil(new Spot("t1", 0), new Spot("t1", 1), angleDeg, strands, hand);
  }

  private static CoilCurve curve(Tree tree, Optional<TrialResult> trial, Coil coil) {
    Skeleton skeleton = new Skeleton(tree);
    List<Limb> limbs = Limb.of(skeleton);
    Stand stand = Stand.of(Optional.empty(), Point3.ORIGIN);
    Pose pose =
        trial
            .map(t -> Pose.bent(skeleton, limbs, stand, t))
            .orElseGet(() -> Pose.measured(skeleton, limbs, stand));
    BarkPath path = BarkPath.of(skeleton, pose, coil.from(), coil.to()).orElseThrow();
    return new CoilCurve(path, coil, STEPS);
  }

  private static List<Point3> wire(CoilCurve curve, int strand) {
    return curve.strand(strand).stream().map(CoilCurve.Bead::wire).toList();
  }

  /** Angle turned about the x axis, counted on from point to point [rad]. */
  private static double turnedAboutX(List<Point3> wire, double fromX) {
    double sum = 0;
    for (int n = 1; n < wire.size(); n++) {
      if (wire.get(n - 1).x() >= fromX) {
        Point3 a = wire.get(n - 1);
        Point3 b = wire.get(n);
        sum += Math.atan2(a.y() * b.z() - a.z() * b.y(), a.y() * b.y() + a.z() * b.z());
      }
    }
    return sum;
  }

  @ParameterizedTest
  @CsvSource({"45, 1, RIGHT", "60, 2, LEFT", "50, 3, RIGHT"})
  void wire_liesOnTheBark(double angle, int strands, Hand hand) {
    CoilCurve curve = curve(rod(20, 20), Optional.empty(), whole(angle, strands, hand));
    for (int k = 0; k < strands; k++) {
      assertThat(wire(curve, k))
          .hasSizeGreaterThan(100)
          .allSatisfy(
              at -> assertThat(Math.hypot(at.y(), at.z())).isCloseTo(0.0115, within(ROUNDING)));
    }
  }

  /** Length times tan(angle) over pi times the diameter of the wire's middle, 23 mm. */
  @ParameterizedTest
  @CsvSource({"45, RIGHT", "55, LEFT", "60, RIGHT", "20, LEFT"})
  void turns_andHand_areThoseOfAHelix(double angle, Hand hand) {
    CoilCurve curve = curve(rod(20, 20), Optional.empty(), whole(angle, 1, hand));
    double open = 0.2 - curve.anchored();
    double turns = open * Math.tan(Math.toRadians(angle)) / (Math.PI * 0.023);
    double signed = turnedAboutX(wire(curve, 0), curve.anchored() - ROUNDING) / (2 * Math.PI);
    assertThat(signed).isCloseTo(hand == Hand.RIGHT ? turns : -turns, within(1e-6));
  }

  @Test
  void start_isAnchoredByCloseTurns() {
    CoilCurve curve = curve(rod(20, 20), Optional.empty(), whole(45, 1, Hand.RIGHT));
    List<Point3> wire = wire(curve, 0);
    double all = turnedAboutX(wire, -1) / (2 * Math.PI);
    double open = turnedAboutX(wire, curve.anchored() - ROUNDING) / (2 * Math.PI);
    assertThat(all - open).isCloseTo(1.5, within(1e-6));
    assertThat(curve.anchored()).as("close, but not through each other").isBetween(0.0045, 0.006);
    assertThat(curve.turns()).isCloseTo(all, within(1e-6));
  }

  /** Side by side and touching: the middles of two strands are one gauge apart. */
  @Test
  void strands_touchEachOther() {
    CoilCurve curve = curve(rod(20, 20), Optional.empty(), whole(50, 2, Hand.RIGHT));
    List<Point3> first = wire(curve, 0);
    List<Point3> second = wire(curve, 1);
    double curvedSurface = 0.05;
    for (Point3 at : second) {
      if (at.x() > 0.04 && at.x() < 0.16) {
        double nearest = Double.POSITIVE_INFINITY;
        for (int n = 1; n < first.size(); n++) {
          nearest = Math.min(nearest, distance(at, first.get(n - 1), first.get(n)));
        }
        assertThat(nearest).isCloseTo(0.003, within(curvedSurface * 0.003));
      }
    }
  }

  private static double distance(Point3 at, Point3 a, Point3 b) {
    Vector3 along = b.minus(a);
    double part = at.minus(a).dot(along) / along.dot(along);
    return at.distance(a.toward(b, Math.max(0, Math.min(1, part))));
  }

  @ParameterizedTest
  @EnumSource(Hand.class)
  void bentAndTaperingLimb_isFollowed_withoutLeavingIt(Hand hand) {
    Tree tree = rod(24, 12);
    Plan plan = InventedTrees.plan(List.of(), List.of(), Optional.empty(), Optional.empty());
    TrialResult bent = new Bending(tree).bend("t1", new Vector3(0, 6, 0)).result(plan);
    Coil coil = coil(new Spot("t1", 0.1), new Spot("t1", 0.9), 50, 2, hand);
    CoilCurve curve = curve(tree, Optional.of(bent), coil);
    List<PathSample> axis = bent.segments().get(0).samples();
    for (int k = 0; k < 2; k++) {
      for (Point3 at : wire(curve, k)) {
        double nearest = Double.POSITIVE_INFINITY;
        double along = 0;
        for (int n = 1; n < axis.size(); n++) {
          Point3 a = axis.get(n - 1).point();
          Point3 b = axis.get(n).point();
          double far = distance(at, a, b);
          if (far < nearest) {
            nearest = far;
            double part = at.minus(a).dot(b.minus(a)) / b.minus(a).dot(b.minus(a));
            along = (n - 1 + Math.max(0, Math.min(1, part))) / (axis.size() - 1);
          }
        }
        double radius = 0.012 - 0.006 * along;
        double axisInStraightPieces = 4e-4;
        assertThat(nearest).isCloseTo(radius + 0.0015, within(axisInStraightPieces));
        assertThat(along).isBetween(0.1 - 0.01, 0.9 + 0.01);
      }
    }
    double turned = 0;
    List<CoilCurve.Bead> beads = curve.strand(0);
    for (int n = 1; n < beads.size(); n++) {
      Vector3 a = beads.get(n - 1).wire().minus(beads.get(n - 1).bark().point());
      Vector3 b = beads.get(n).wire().minus(beads.get(n).bark().point());
      turned += Math.signum(a.cross(b).dot(beads.get(n).bark().direction().vector()));
    }
    assertThat(turned / (beads.size() - 1)).isEqualTo(hand == Hand.RIGHT ? 1 : -1);
  }

  /** Over three segments with kinks the wire never comes nearer than the bark, nor strays. */
  @Test
  void severalSegments_andKinks_areOneWire() {
    Tree tree = InventedTrees.hedge("hedge");
    Plan plan = InventedTrees.plan(List.of(), List.of(), Optional.empty(), Optional.empty());
    TrialResult bent = Bending.drawnIn(tree, plan);
    Coil coil = coil(new Spot("l1", 0), new Spot("l5", 1), 50, 1, Hand.LEFT);
    List<CoilCurve.Bead> beads = curve(tree, Optional.of(bent), coil).strand(0);
    for (int n = 0; n < beads.size(); n++) {
      Station bark = beads.get(n).bark();
      Point3 at = beads.get(n).wire();
      assertThat(at.distance(bark.point())).isCloseTo(bark.radius() + 0.0015, within(ROUNDING));
      if (n > 0) {
        double widest = 2 * Math.PI * (0.0135 * 1.28 + 0.0015);
        assertThat(at.distance(beads.get(n - 1).wire())).isLessThan(widest / STEPS * 2);
      }
    }
  }

  @Test
  void wire_liesOutside_whereTheBendIsHardest() {
    Tree tree = rod(20, 20);
    Plan plan = InventedTrees.plan(List.of(), List.of(), Optional.empty(), Optional.empty());
    TrialResult bent = new Bending(tree).bend("t1", new Vector3(0, 5, 0)).result(plan);
    CoilCurve curve =
        curve(
            tree,
            Optional.of(bent),
            coil(new Spot("t1", 0.3), new Spot("t1", 1), 45, 1, Hand.RIGHT));
    CoilCurve.Bead hardest =
        curve.strand(0).stream()
            .filter(bead -> bead.turned() >= 2 * Math.PI * 1.5 - 1e-6)
            .max((a, b) -> Double.compare(a.bark().strain(), b.bark().strain()))
            .orElseThrow();
    Direction3 out = hardest.wire().minus(hardest.bark().point()).direction();
    assertThat(out.vector().dot(hardest.bark().tensionSide())).isCloseTo(1, within(1e-3));
  }

  /** Volume of a wire: its cross-section times its length, L / cos(angle) on the open turns. */
  @Test
  void mesh_hasTheVolumeOfTheWire() {
    Tree tree = rod(20, 20);
    Coil coil = whole(45, 1, Hand.RIGHT);
    double polygon = 10 / (2 * Math.PI) * Math.sin(2 * Math.PI / 10);
    double section = Math.PI * 0.003 * 0.003 / 4 * polygon;
    double anchored = curve(tree, Optional.empty(), coil).anchored();
    double length = (0.2 - anchored) * Math.sqrt(2) + 1.5 * Math.PI * 0.023;
    List<Mesh> meshes = fittings(tree, List.of(coil));
    assertThat(meshes).hasSize(1);
    assertThat(Meshes.openEdges(meshes.get(0))).isZero();
    double chordsAndSwitchOfPitch = 0.02;
    assertThat(Meshes.volume(meshes.get(0)))
        .isCloseTo(section * length, within(chordsAndSwitchOfPitch * section * length));
    assertThat(CHORD).isLessThan(chordsAndSwitchOfPitch);
  }

  private static List<Mesh> fittings(Tree tree, List<Coil> coils) {
    Proposal proposal = new Proposal("p1", Optional.empty(), List.of(), List.of(), coils, Map.of());
    Plan plan =
        InventedTrees.plan(List.of(proposal), List.of(), Optional.empty(), Optional.empty());
    return Scene.of(
            new Document(tree, List.of(plan), Map.of()), Optional.of(plan), Optional.empty())
        .bodies()
        .stream()
        .filter(body -> body.role() == Body.Role.FITTING)
        .flatMap(body -> body.meshes().stream())
        .toList();
  }

  @Test
  void fiftyCoils_andVerySteepOnes_stayCheapAndFinite() {
    List<Coil> coils = new ArrayList<>();
    for (int n = 0; n < 50; n++) {
      double angle = n % 5 == 0 ? 89.9 : 55;
      coils.add(coil(new Spot("t1", 0), new Spot("t6", 1), angle, 1 + n % 3, Hand.RIGHT));
    }
    List<Mesh> meshes = fittings(InventedTrees.hedge("hedge"), coils);
    int triangles = meshes.stream().mapToInt(Mesh::triangleCount).sum();
    assertThat(triangles).isBetween(50_000, 1_500_000);
    for (Mesh mesh : meshes) {
      for (int v = 0; v < mesh.vertexCount(); v += 17) {
        for (int part = 0; part < Mesh.STRIDE; part++) {
          assertThat(Float.isFinite(mesh.part(v, part))).isTrue();
        }
      }
    }
  }

  @Test
  void coilOnWhatIsCutAway_isNotDrawn() {
    Tree tree = InventedTrees.hedge("hedge");
    Coil coil = coil(new Spot("t5", 0.1), new Spot("t6", 0.5), 50, 1, Hand.RIGHT);
    Proposal proposal =
        new Proposal("p1", Optional.empty(), List.of(), List.of(), List.of(coil), Map.of());
    Plan plan =
        InventedTrees.plan(
            List.of(proposal), List.of(new Spot("t4", 0.35)), Optional.empty(), Optional.empty());
    Scene scene =
        Scene.of(new Document(tree, List.of(plan), Map.of()), Optional.of(plan), Optional.empty());
    assertThat(scene.has(Body.Role.FITTING)).isFalse();
    assertThat(scene.marks()).noneMatch(Mark.Wire.class::isInstance);
  }
}
