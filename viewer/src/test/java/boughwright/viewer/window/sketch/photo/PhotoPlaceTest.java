// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.tree.Backdrop;
import boughwright.viewer.scene.Camera.Pixel;
import boughwright.viewer.window.sketch.FlatCanvas;
import java.awt.geom.Point2D;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** 2 canvas pixels to a millimetre, the trunk base at (400, 500). */
class PhotoPlaceTest {
  private static Backdrop photo(double seenFrom) {
    return new Backdrop("front.png", seenFrom, OptionalDouble.of(0.25e-3), 600, 900, 1, Map.of());
  }

  private static void assertAt(Pixel pixel, double x, double y) {
    assertThat(pixel.x()).isCloseTo(x, within(1e-6));
    assertThat(pixel.y()).isCloseTo(y, within(1e-6));
  }

  @Test
  void base_standsOnTheTrunkBase() {
    PhotoPlace place = PhotoPlace.of(new FlatCanvas(0), photo(0), Point3.ORIGIN, 1000);

    assertAt(place.canvasPixel(new Point2D.Double(600, 900)), 400, 500);
  }

  /** 400 photo pixels of 0.25 mm are 100 mm, so 200 canvas pixels. */
  @Test
  void photo_isTrueToScale() {
    PhotoPlace place = PhotoPlace.of(new FlatCanvas(0), photo(0), Point3.ORIGIN, 1000);

    assertAt(place.canvasPixel(new Point2D.Double(1000, 500)), 600, 300);
  }

  @Test
  void photoPixel_isTheWayBack_fromAnySide() {
    for (double azimuth : new double[] {0, Math.PI / 2, Math.PI, 4.4}) {
      PhotoPlace place =
          PhotoPlace.of(new FlatCanvas(azimuth), photo(azimuth), Point3.ORIGIN, 1000);

      Point2D back = place.photoPixel(600, 300);

      assertThat(back.getX()).isCloseTo(1000, within(1e-6));
      assertThat(back.getY()).isCloseTo(500, within(1e-6));
    }
  }

  @Test
  void photo_isHiddenWithItsReason_fromElsewhere() {
    FlatCanvas canvas = new FlatCanvas(Math.toRadians(34));

    assertThat(Stance.of(canvas).reasonAgainst(photo(0)))
        .hasValue("Hidden: it was taken from 0\u00B0, you look from 34\u00B0.");
    assertThat(Stance.of(canvas).reasonAgainst(photo(Math.toRadians(36)))).isEmpty();
  }

  @Test
  void photo_isHiddenWithItsReason_inPerspective() {
    FlatCanvas canvas = new FlatCanvas(0);
    canvas.spread();

    assertThat(Stance.of(canvas).reasonAgainst(photo(0)).orElseThrow()).contains("perspective");
  }
}
