// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.Material;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.plan.Strand;
import boughwright.modeller.plan.Tackle;
import boughwright.modeller.plan.Tightener;
import boughwright.modeller.tree.AnchorKind;
import boughwright.modeller.tree.Container;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;
import boughwright.physics.trial.LineTrial;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GuysTest {
  private static final double FLOAT_ROUNDING = 1e-6;

  /** Radius that lines are drawn with [m]. */
  private static final double LINE = 0.0005;

  /** A level rod along x, 300 mm long, 20 mm thick; a line at its middle to a point below. */
  private static Tree rod() {
    return new Shoots().base("t1", new double[] {300, 0, 0}, Shoots.taper(20, 20)).tree("rod");
  }

  private static GuyLine line(OptionalDouble round, Tackle tackle) {
    GuyLine plain = InventedTrees.guy("g1", new Spot("t1", 0.5), new double[] {150, 0, -200}, 10);
    return new GuyLine("g1", plain.at(), round, plain.anchor(), plain.hold(), tackle, Map.of());
  }

  private static Tackle padded(double lengthMm) {
    return new Tackle(
        Optional.empty(),
        Optional.empty(),
        OptionalDouble.of(lengthMm / 1000),
        0,
        Optional.empty());
  }

  private static List<Mesh> meshes(GuyLine line) {
    Skeleton skeleton = new Skeleton(rod());
    Stand stand = Stand.of(Optional.empty(), Point3.ORIGIN);
    Guys guys = new Guys(skeleton, stand, Pose.measured(skeleton, Limb.of(skeleton), stand), LINE);
    guys.add(line, Optional.empty());
    return guys.meshes();
  }

  private static List<Point3> pad(GuyLine line) {
    Mesh pad = meshes(line).get(1);
    List<Point3> points = new ArrayList<>();
    for (int v = 0; v < pad.vertexCount(); v++) {
      points.add(Meshes.position(pad, v));
    }
    return points;
  }

  @ParameterizedTest
  @CsvSource({"40", "12", "90"})
  void pad_isAsLongAsItIs_onTheBark(double lengthMm) {
    List<Point3> points = pad(line(OptionalDouble.empty(), padded(lengthMm)));
    double low = points.stream().mapToDouble(Point3::x).min().orElseThrow();
    double high = points.stream().mapToDouble(Point3::x).max().orElseThrow();
    assertThat(high - low).isCloseTo(lengthMm / 1000, within(FLOAT_ROUNDING));
    assertThat((high + low) / 2).isCloseTo(0.15, within(FLOAT_ROUNDING));
    assertThat(points)
        .allSatisfy(
            at -> assertThat(Math.hypot(at.y(), at.z())).isBetween(0.0098, 0.010 + 2 * LINE));
  }

  /** Round 90 degrees of a level segment along x is to its right, toward -y (tree file). */
  @Test
  void padWithAPlace_isWrappedRoundThatSideOnly() {
    List<Point3> points = pad(line(OptionalDouble.of(Math.PI / 2), padded(40)));
    double meanY = points.stream().mapToDouble(Point3::y).average().orElseThrow();
    double meanZ = points.stream().mapToDouble(Point3::z).average().orElseThrow();
    assertThat(meanY).isLessThan(-0.003);
    assertThat(meanZ).isCloseTo(0, within(FLOAT_ROUNDING));
    double widest =
        points.stream().mapToDouble(at -> Math.atan2(at.z(), -at.y())).max().orElseThrow();
    assertThat(Math.toDegrees(widest)).isBetween(90.0, 120.0);
  }

  private static double turns(List<Point3> strand, double fromZ, double toZ) {
    double sum = 0;
    for (int n = 1; n < strand.size(); n++) {
      Point3 a = strand.get(n - 1);
      Point3 b = strand.get(n);
      if (Math.max(a.z(), b.z()) <= fromZ + 1e-9 && Math.min(a.z(), b.z()) >= toZ - 1e-9) {
        sum += Math.atan2(a.x() * b.y() - a.y() * b.x(), a.x() * b.x() + a.y() * b.y());
      }
    }
    return sum / (2 * Math.PI);
  }

  /** Turned at its end all one way; by a stick in the middle back again in the second half. */
  @ParameterizedTest
  @CsvSource({"7, false", "2.5, false", "6, true"})
  void twistedStrands_haveTheirTurns(double turns, boolean inMiddle) {
    Strands strands = new Strands(2, 0.001, turns, inMiddle, false);
    Point3 from = new Point3(0, 0, 0);
    Point3 to = new Point3(0, 0, -0.2);
    List<Point3> one = strands.strand(0, from, to);
    List<Point3> other = strands.strand(1, from, to);
    double whole = Math.abs(turns(one, 0, -0.2));
    double half = Math.abs(turns(one, 0, -0.1));
    double stepAcrossTheMiddle = 0.1;
    assertThat(whole).isCloseTo(inMiddle ? 0 : turns, within(1e-9));
    assertThat(half).isCloseTo(inMiddle ? turns : turns / 2, within(stepAcrossTheMiddle));
    for (int n = 0; n < one.size(); n++) {
      assertThat(one.get(n).distance(other.get(n))).isCloseTo(0.002, within(1e-12));
    }
  }

  /** n turns shorten a span L to sqrt(L² - (pi d n)²); a stick in the middle counts twice. */
  @ParameterizedTest
  @CsvSource({"0, 5, false", "3, 6, false", "2, 4, true"})
  void turnsDrawn_areThoseThatShortenTheLine(double before, double after, boolean inMiddle) {
    double gauge = 0.001;
    double round = (inMiddle ? 2 : 1) * Math.PI * gauge;
    double strand = 0.2;
    double spanBefore = Math.sqrt(strand * strand - Math.pow(round * before, 2));
    double spanNow = Math.sqrt(strand * strand - Math.pow(round * after, 2));
    Tightener.Twist twist = new Tightener.Twist(inMiddle, before, Map.of());
    Tackle tackle =
        new Tackle(
            Optional.of(new Strand(Material.STAINLESS, gauge, 2, Map.of())),
            Optional.of(twist),
            OptionalDouble.empty(),
            0,
            Optional.empty());
    assertThat(Guys.turns(tackle, twist, spanBefore, spanNow)).isCloseTo(after, within(1e-9));
    assertThat(Guys.turns(tackle, twist, spanNow, spanNow)).isEqualTo(before);
  }

  @Test
  void everyKindOfAnchor_hasAShapeOfItsOwn() {
    Set<Integer> shapes = new HashSet<>();
    List<Optional<AnchorKind>> kinds = new ArrayList<>();
    kinds.add(Optional.empty());
    for (AnchorKind kind : AnchorKind.values()) {
      kinds.add(Optional.of(kind));
    }
    for (Optional<AnchorKind> kind : kinds) {
      Tackle tackle =
          new Tackle(Optional.empty(), Optional.empty(), OptionalDouble.empty(), 0, kind);
      List<Mesh> meshes = meshes(line(OptionalDouble.empty(), tackle));
      assertThat(meshes.subList(2, meshes.size())).isNotEmpty();
      shapes.add(meshes.subList(2, meshes.size()).stream().mapToInt(Mesh::triangleCount).sum());
    }
    assertThat(shapes).hasSize(kinds.size());
  }

  @Test
  void lever_reachesAsFarBeyondItsPlaceAsItIs() {
    Tackle tackle =
        new Tackle(
            Optional.empty(), Optional.empty(), OptionalDouble.empty(), 0.08, Optional.empty());
    Mesh rod = meshes(line(OptionalDouble.empty(), tackle)).get(1);
    double far = 0;
    for (int v = 0; v < rod.vertexCount(); v++) {
      far = Math.max(far, rod.part(v, 0));
    }
    double slant = 0.002;
    assertThat(far).isCloseTo(0.15 + 0.08, within(slant));
  }

  @Test
  void looseLine_hangsDown_andSaysSo() {
    Strands slack = new Strands(1, LINE, 0, false, true);
    List<Point3> points = slack.strand(0, Point3.ORIGIN, new Point3(0.2, 0, 0));
    assertThat(points.stream().mapToDouble(Point3::z).min().orElseThrow()).isLessThan(-0.01);
    LineTrial trial = new LineTrial("g1", 0, 0.2, 0, true, Point3.ORIGIN, new Point3(0.2, 0, 0));
    assertThat(Wording.guy(trial, Optional.of(AnchorKind.PEG)))
        .containsExactly("g1  slack", "to a peg");
  }

  @Test
  void sticksAndTurnbuckles_areDrawn_withAnyNumberOfTurns() {
    for (Tightener tightener :
        List.of(
            new Tightener.Twist(true, 0, Map.of()),
            new Tightener.Twist(false, 900, Map.of()),
            new Tightener.Turnbuckle(0.002, 3, Map.of()))) {
      Tackle tackle =
          new Tackle(
              Optional.of(new Strand(Material.STAINLESS, 0.001, 2, Map.of())),
              Optional.of(tightener),
              OptionalDouble.empty(),
              0,
              Optional.empty());
      List<Mesh> meshes = meshes(line(OptionalDouble.empty(), tackle));
      assertThat(meshes).hasSize(5).allSatisfy(m -> assertThat(Meshes.openEdges(m)).isZero());
      assertThat(meshes.stream().mapToInt(Mesh::vertexCount).sum()).isLessThan(30_000);
    }
  }

  /** Clockwise seen from above by 90 degrees: its length runs along y. */
  @Test
  void container_standsWhereItsMeasuresSay() {
    Container container =
        new Container(
            new Container.Size(0.4, 0.2, 0.1),
            0.03,
            0.01,
            Math.PI / 2,
            0.02,
            OptionalDouble.empty(),
            false,
            Map.of());
    Pot pot = new Pot(container, Point3.ORIGIN, Stand.of(Optional.empty(), Point3.ORIGIN));
    Mesh walls = pot.walls();
    double[] low = {1, 1, 1};
    double[] high = {-1, -1, -1};
    for (int v = 0; v < walls.vertexCount(); v++) {
      for (int k = 0; k < 3; k++) {
        low[k] = Math.min(low[k], walls.part(v, k));
        high[k] = Math.max(high[k], walls.part(v, k));
      }
    }
    assertThat(low).containsExactly(new double[] {-0.07, -0.19, -0.08}, within(1e-6));
    assertThat(high).containsExactly(new double[] {0.13, 0.21, 0.02}, within(1e-6));
    assertThat(Meshes.volume(walls)).isCloseTo(0.4 * 0.2 * 0.1, within(1e-7));
  }

  @Test
  void treeWithoutContainer_hasNone() {
    Plan plan =
        InventedTrees.plan(
            List.of(
                new Proposal("p1", Optional.empty(), List.of(), List.of(), List.of(), Map.of())),
            List.of(),
            Optional.empty(),
            Optional.empty());
    Document document = new Document(rod(), List.of(plan), Map.of());
    assertThat(Scene.of(document, Optional.of(plan), Optional.empty()).has(Body.Role.CONTAINER))
        .isFalse();
  }
}
