// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.LineOfSight.Block;
import boughwright.modeller.plan.LineOfSight.Limb;
import boughwright.modeller.plan.LineOfSight.Sight;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

class LineOfSightTest {
  /** Forty golden steps leave a part 4e-9 of a line of some decimetres [m]. */
  private static final double SEARCH = 1e-8;

  private static final int LINES = 500;
  private static final int STATIONS = 4000;

  /** Two stations of the scan are at most this far apart [m]. */
  private static final double SCAN = 0.5 / STATIONS;

  private static Sight sight(Point3 from, Point3 to) {
    return new Sight(from, to, Set.of(), 0, 0);
  }

  /** A post 20 mm thick: the depth of a line past it is its radius less the distance of axes. */
  @Test
  void depth_isRadiusLessDistance_asTwoSkewLinesHave() {
    Limb post = new Limb("t", new Point3(0, 0, 0), new Point3(0, 0, 0.3), 0.02, 0.02);
    Point3 from = new Point3(-0.2, 0.012, 0.05);
    Point3 to = new Point3(0.2, -0.004, 0.21);
    // the post runs along z, so the distance of the two axes is that of the plan view of the line
    // from the origin: |x1 y2 - x2 y1| over its length
    double apart = Math.abs(-0.2 * -0.004 - 0.2 * 0.012) / Math.hypot(0.4, -0.016);
    Block block = LineOfSight.deepest(List.of(post), sight(from, to)).orElseThrow();
    assertThat(block.depth()).isCloseTo(0.02 - apart, within(SEARCH));
    assertThat(block.segment()).isEqualTo("t");
  }

  /**
   * Against a scan along each line, point by point, with the distance from the sides of a triangle.
   */
  @Test
  void everyLine_isBlocked_whereAPointOfItIsInsideTheCone() {
    Random random = new Random(7);
    Point3 a = new Point3(0.01, 0, 0);
    Point3 b = new Point3(0.05, 0.02, 0.2);
    Limb limb = new Limb("b", a, b, 0.03, 0.012);
    int blocked = 0;
    for (int n = 0; n < LINES; n++) {
      Point3 from = point(random);
      Point3 to = point(random);
      double deepest = scan(from, to);
      List<Block> blocks = LineOfSight.blocks(List.of(limb), sight(from, to));
      if (Math.abs(deepest) > SCAN) {
        assertThat(blocks.isEmpty()).as("line %d", n).isEqualTo(deepest < 0);
      }
      if (!blocks.isEmpty()) {
        blocked++;
        assertThat(blocks.get(0).depth()).isCloseTo(deepest, within(SCAN));
      }
    }
    assertThat(blocked).isBetween(LINES / 20, LINES - LINES / 20);
  }

  private static Point3 point(Random random) {
    return new Point3(
        random.nextDouble() * 0.3 - 0.15,
        random.nextDouble() * 0.3 - 0.15,
        random.nextDouble() * 0.3 - 0.05);
  }

  private static double scan(Point3 from, Point3 to) {
    double deepest = Double.NEGATIVE_INFINITY;
    double length = Math.sqrt(0.04 * 0.04 + 0.02 * 0.02 + 0.2 * 0.2);
    for (int k = 0; k <= STATIONS; k++) {
      double x = from.x() + (to.x() - from.x()) * k / STATIONS;
      double y = from.y() + (to.y() - from.y()) * k / STATIONS;
      double z = from.z() + (to.z() - from.z()) * k / STATIONS;
      double toA = (x - 0.01) * (x - 0.01) + y * y + z * z;
      double toB = (x - 0.05) * (x - 0.05) + (y - 0.02) * (y - 0.02) + (z - 0.2) * (z - 0.2);
      double foot = (toA - toB + length * length) / (2 * length);
      double height = Math.sqrt(Math.max(0, toA - foot * foot));
      double distance = foot < 0 ? Math.sqrt(toA) : foot > length ? Math.sqrt(toB) : height;
      double along = Math.max(0, Math.min(1, foot / length));
      deepest = Math.max(deepest, 0.03 * (1 - along) + 0.012 * along - distance);
    }
    return deepest;
  }

  @Test
  void ownWood_andThePadsNeighbourhood_areLeftOut() {
    Limb post = new Limb("t", new Point3(0, 0, 0), new Point3(0, 0, 0.3), 0.02, 0.02);
    Point3 from = new Point3(0, 0, 0.1);
    Point3 to = new Point3(0.2, 0, 0.1);
    assertThat(LineOfSight.blocks(List.of(post), sight(from, to))).hasSize(1);
    assertThat(LineOfSight.blocks(List.of(post), new Sight(from, to, Set.of("t"), 0, 0))).isEmpty();
    assertThat(LineOfSight.blocks(List.of(post), new Sight(from, to, Set.of(), 0.021, 0)))
        .isEmpty();
    assertThat(LineOfSight.blocks(List.of(post), new Sight(to, from, Set.of(), 0, 0.021)))
        .isEmpty();
  }
}
