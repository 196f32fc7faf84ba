// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Aid;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What is done to a level rod along x, 300 mm long, 20 mm thick. */
class AidsTest {
  /** Grooves are strips over the bark, less than this high [m]. */
  private static final double STRIP = 0.0005;

  private static final double FLOAT_ROUNDING = 1e-6;

  private static Aids drawn(Aid aid, List<Spot> cuts) {
    Tree tree = new Shoots().base("t1", new double[] {300, 0, 0}, Shoots.taper(20, 20)).tree("rod");
    Skeleton skeleton = new Skeleton(tree);
    Stand stand = Stand.of(Optional.empty(), Point3.ORIGIN);
    Pose pose = Pose.measured(skeleton, Limb.of(skeleton), stand);
    Aids aids = new Aids(skeleton, stand, pose, 0.3);
    aids.add(aid, new Cutting(skeleton, cuts));
    return aids;
  }

  private static Aid cut(Aid.Kind kind, double roundDeg, double[] mm, int count) {
    return new Aid(
        kind,
        "t1",
        0.2,
        0.8,
        OptionalDouble.of(Math.toRadians(roundDeg)),
        OptionalDouble.of(mm[0] / 1000),
        OptionalDouble.of(mm[1] / 1000),
        count,
        Map.of());
  }

  private static Aid plain(Aid.Kind kind, OptionalDouble depth) {
    OptionalDouble none = OptionalDouble.empty();
    return new Aid(kind, "t1", 0.2, 0.8, none, none, depth, 1, Map.of());
  }

  private static double[] ends(Mesh mesh, int axis) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int v = 0; v < mesh.vertexCount(); v++) {
      low = Math.min(low, mesh.part(v, axis));
      high = Math.max(high, mesh.part(v, axis));
    }
    return new double[] {low, high};
  }

  @Test
  void slot_isAStripAlongItsSide_asWideAsItIs() {
    Aids aids = drawn(cut(Aid.Kind.SLOT, 0, new double[] {3, 5}, 1), List.of());
    Mesh strip = aids.meshes().get(0);
    assertThat(ends(strip, 0)).containsExactly(new double[] {0.06, 0.24}, within(FLOAT_ROUNDING));
    assertThat(ends(strip, 1)).containsExactly(new double[] {-0.0015, 0.0015}, within(STRIP / 10));
    assertThat(ends(strip, 2)[0]).isGreaterThan(0.0095);
    assertThat(ends(strip, 2)[1]).isBetween(0.01, 0.01 + STRIP);
    assertThat(aids.marks().get(0).words()).containsExactly("slot 3 × 5 mm");
    assertThat(aids.marks().get(0).at().z()).isCloseTo(0.01, within(FLOAT_ROUNDING));
  }

  /** A chord 4 mm deep in a round 10 mm in radius is 16 mm wide: 10, 6 and 8 are a triangle. */
  @Test
  void reliefCuts_goAcross_evenlySpread_asWideAsTheyAreDeep() {
    Aids aids = drawn(cut(Aid.Kind.RELIEF_CUT, 180, new double[] {2, 4}, 3), List.of());
    assertThat(aids.meshes()).hasSize(3);
    double[] middles = {0.09, 0.15, 0.21};
    for (int n = 0; n < middles.length; n++) {
      double[] along = ends(aids.meshes().get(n), 0);
      assertThat((along[0] + along[1]) / 2).isCloseTo(middles[n], within(FLOAT_ROUNDING));
      assertThat(along[1] - along[0]).isCloseTo(0.002, within(FLOAT_ROUNDING));
      assertThat(ends(aids.meshes().get(n), 1))
          .containsExactly(new double[] {-0.008, 0.008}, within(STRIP));
      assertThat(ends(aids.meshes().get(n), 2)[1]).isLessThan(-0.005);
    }
    assertThat(aids.marks().get(0).words()).containsExactly("3 relief cuts");
  }

  @Test
  void raffia_goesRoundTheWholeStretch_andStaysLow() {
    Aids aids = drawn(plain(Aid.Kind.WRAP, OptionalDouble.empty()), List.of());
    Mesh raffia = aids.meshes().get(0);
    double[] along = ends(raffia, 0);
    assertThat(along[0]).isBetween(0.055, 0.0601);
    assertThat(along[1]).isBetween(0.2399, 0.245);
    for (int axis = 1; axis <= 2; axis++) {
      assertThat(ends(raffia, axis)[0]).isBetween(-0.012, -0.01);
      assertThat(ends(raffia, axis)[1]).isBetween(0.01, 0.012);
    }
  }

  @Test
  void hollow_isNotSeen_butNamed() {
    Aids aids = drawn(plain(Aid.Kind.HOLLOW, OptionalDouble.of(0.006)), List.of());
    assertThat(aids.meshes()).isEmpty();
    assertThat(aids.marks())
        .extracting(Mark::words)
        .containsExactly(List.of("hollow 6 mm, inside"));
  }

  @Test
  void whatIsCutAway_hasNoAids() {
    Aids aids = drawn(plain(Aid.Kind.WRAP, OptionalDouble.empty()), List.of(new Spot("t1", 0.5)));
    assertThat(aids.meshes()).isEmpty();
    assertThat(aids.marks()).isEmpty();
  }
}
