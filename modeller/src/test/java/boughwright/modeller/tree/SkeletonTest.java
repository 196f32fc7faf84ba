// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import static boughwright.modeller.tree.Sticks.on;
import static boughwright.modeller.tree.Sticks.tree;
import static boughwright.modeller.tree.Sticks.trunk;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SkeletonTest {
  private static final double ROUNDING = 1e-12;

  private static Skeleton leaning(Point3 end) {
    return new Skeleton(tree(trunk("t"), on("t", 0.5, "b", Kind.BRANCH, end)));
  }

  @Test
  void segment_startsOnItsParentsAxis() {
    Skeleton skeleton = leaning(new Point3(0.1, 0, 0.05));
    assertThat(skeleton.start(1)).isEqualTo(new Point3(0, 0, 0.05));
    assertThat(skeleton.length(1)).isCloseTo(0.1, within(ROUNDING));
    assertThat(skeleton.caliper(0, 0.5)).isCloseTo(0.035, within(ROUNDING));
  }

  /** design page: the first child in file order of its parent's kind that starts at its end. */
  @Test
  void firstLikeChildAtTheEnd_continues_allOthersJoinByAUnion() {
    Skeleton skeleton =
        new Skeleton(
            tree(
                trunk("t"),
                on("t", 1, "b", Kind.BRANCH, new Point3(0.1, 0, 0.1)),
                on("t", 0.9, "low", Kind.TRUNK, new Point3(0, 0.1, 0.1)),
                on("t", 1, "t2", Kind.TRUNK, new Point3(0, 0, 0.2)),
                on("t", 1, "t3", Kind.TRUNK, new Point3(0.05, 0, 0.2))));
    assertThat(skeleton.joint(0)).isEqualTo(Joint.CONTINUES);
    assertThat(skeleton.joint(1)).isEqualTo(Joint.UNION);
    assertThat(skeleton.joint(2)).isEqualTo(Joint.UNION);
    assertThat(skeleton.joint(3)).isEqualTo(Joint.CONTINUES);
    assertThat(skeleton.joint(4)).isEqualTo(Joint.UNION);
  }

  @Test
  void outwardOrder_putsParentsFirst_whateverTheFileOrder() {
    Skeleton skeleton =
        new Skeleton(
            tree(
                on("b", 1, "c", Kind.BRANCH, new Point3(0.2, 0, 0.1)),
                on("t", 1, "b", Kind.BRANCH, new Point3(0.1, 0, 0.1)),
                trunk("t")));
    assertThat(new int[] {skeleton.outward(0), skeleton.outward(1), skeleton.outward(2)})
        .containsExactly(2, 1, 0);
    assertThat(skeleton.start(0)).isEqualTo(new Point3(0.1, 0, 0.1));
  }

  /** A branch to the right seen from the viewer: looking along it, up is up, right is toward us. */
  @ParameterizedTest
  @CsvSource({"0, 0, 0, 1", "90, 0, -1, 0", "180, 0, 0, -1", "270, 0, 1, 0"})
  void round_countsClockwiseFromTheUpperSide(double deg, double x, double y, double z) {
    Skeleton skeleton = leaning(new Point3(0.1, 0, 0.05));
    Direction3 side = skeleton.roundDirection(1, Math.toRadians(deg));
    assertThat(side.x()).isCloseTo(x, within(ROUNDING));
    assertThat(side.y()).isCloseTo(y, within(ROUNDING));
    assertThat(side.z()).isCloseTo(z, within(ROUNDING));
  }

  /**
   * An upright trunk: 0 is the side toward the viewer. Clockwise for one who looks up along it
   * (from start to end) is counter-clockwise seen from above, so a quarter goes to the viewer's
   * right.
   */
  @ParameterizedTest
  @CsvSource({"0, 0, -1", "90, 1, 0", "180, 0, 1", "270, -1, 0"})
  void round_countsFromTheViewersSide_whenUpright(double deg, double x, double y) {
    Skeleton skeleton = leaning(new Point3(0.1, 0, 0.05));
    Direction3 side = skeleton.roundDirection(0, Math.toRadians(deg));
    assertThat(side.x()).isCloseTo(x, within(ROUNDING));
    assertThat(side.y()).isCloseTo(y, within(ROUNDING));
    Point3 bark = skeleton.barkPoint(0, 0.5, Math.toRadians(deg));
    assertThat(bark.distance(new Point3(0, 0, 0.05))).isCloseTo(0.0175, within(ROUNDING));
  }

  /** At 9 degrees from vertical the viewer's side counts, at 11 degrees the upper side. */
  @ParameterizedTest
  @CsvSource({"9, true", "11, false", "171, true", "169, false"})
  void round_changesItsZero_10DegreesFromVertical(double deg, boolean viewersSide) {
    double lean = Math.toRadians(deg);
    Skeleton skeleton = leaning(new Point3(0.1 * Math.sin(lean), 0, 0.05 + 0.1 * Math.cos(lean)));
    assertThat(skeleton.roundDirection(1, 0).y() < -0.9).isEqualTo(viewersSide);
  }

  @ParameterizedTest
  @CsvSource({
    "0.05, 0, 0.05, true",
    "0.05, 0, 0.0549, true",
    "0.05, 0, 0.0551, false",
    "0.11, 0, 0.05, false",
    "0.08, 0, 0.05, false"
  })
  void encloses_saysWhetherAPointIsInTheWoodThatIsLeft(
      double x, double y, double z, boolean inside) {
    Skeleton skeleton = leaning(new Point3(0.1, 0, 0.05));
    assertThat(skeleton.encloses(1, new Point3(x, y, z), 0.7)).isEqualTo(inside);
  }
}
