// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.sight;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.tree.Pad;
import boughwright.modeller.tree.PadShape;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PadEllipsoidTest {
  /** The far point of each half size, reached once by the pad's own axes, once by the turn. */
  @Test
  void pad_hasItsSizesAlongItsOwnAxes() {
    Random random = new Random(8);
    Pad pad = new Pad("f", "b", 0.5, 0.09, 0.05, 0.02, 0.01, Map.of());
    for (int n = 0; n < 100; n++) {
      Direction3 way = Direction3.ofAzimuth(7 * random.nextDouble(), 3 * random.nextDouble() - 1.5);
      Point3 at = new Point3(random.nextDouble(), random.nextDouble(), random.nextDouble());
      PadShape shape = PadShape.of(pad, at, way);
      Ellipsoid ellipsoid = Ellipsoid.of(shape);
      assertThat(ellipsoid.centre().minus(at).norm() - 0.01).isBetween(-1e-12, 1e-12);
      same(ellipsoid.turn().turn(new Vector3(ellipsoid.halfX(), 0, 0)), way.times(0.045));
      same(
          ellipsoid.turn().turn(new Vector3(0, ellipsoid.halfY(), 0)),
          shape.thickway().times(0.01));
      same(
          ellipsoid.turn().turn(new Vector3(0, 0, ellipsoid.halfZ())),
          shape.widthway().times(0.025));
    }
  }

  private static void same(Vector3 found, Vector3 asked) {
    assertThat(found.minus(asked).norm()).isLessThan(1e-9);
  }
}
