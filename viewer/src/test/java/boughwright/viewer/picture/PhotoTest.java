// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is seen of a photo: upright, in its own brightness, in no more pixels than are needed. */
class PhotoTest {
  @ParameterizedTest
  @CsvSource({
    "1, top, left",
    "2, top, right",
    "3, bottom, right",
    "4, bottom, left",
    "5, left, top",
    "6, right, top",
    "7, right, bottom",
    "8, left, bottom"
  })
  void photo_standsUpright_howeverTheCameraWasHeld(int orientation, String row, String column)
      throws Exception {
    BufferedImage scene = MadePhotos.scene();
    Photo photo =
        Photo.read(
            "t",
            MadePhotos.withExif(
                MadePhotos.jpeg(MadePhotos.stored(scene, row, column)),
                MadePhotos.exif(orientation)));
    assertThat(List.of(photo.width(), photo.height()))
        .isEqualTo(List.of(MadePhotos.WIDTH, MadePhotos.HEIGHT));
    for (int[] at : new int[][] {{20, 10}, {100, 10}, {20, 50}, {100, 50}}) {
      Color found = new Color(photo.image().getRGB(at[0], at[1]));
      Color expected = new Color(scene.getRGB(at[0], at[1]));
      assertThat(Math.abs(found.getRed() - expected.getRed())).isLessThan(20);
      assertThat(Math.abs(found.getGreen() - expected.getGreen())).isLessThan(20);
      assertThat(Math.abs(found.getBlue() - expected.getBlue())).isLessThan(20);
    }
    assertThat(photo.warnings()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 9, 65535})
  void photo_isShownAsStored_whenItsOrientationIsNone(int orientation) throws Exception {
    Photo photo =
        Photo.read(
            "t",
            MadePhotos.withExif(MadePhotos.jpeg(MadePhotos.scene()), MadePhotos.exif(orientation)));
    assertThat(photo.width()).isEqualTo(MadePhotos.WIDTH);
    assertThat(photo.warnings()).extracting("kind").containsExactly("damaged-notes");
  }

  @Test
  void png_isTurnedUpright_andRefusedWhenItMoves() throws Exception {
    byte[] header = MadePhotos.pngHeader(40, 30, 8, 0);
    byte[] pixels = MadePhotos.deflated(new byte[30 * 41]);
    assertThat(Photo.read("t", MadePhotos.png(header, pixels, "eXIf")).width()).isEqualTo(30);
    assertThat(PhotoFilesTest.refusal(MadePhotos.png(header, pixels, "acTL"))).contains("animated");
  }

  /** Mid grey stays mid grey: some ways to turn it into red, green and blue make it brighter. */
  @Test
  void grey_keepsItsBrightness() throws Exception {
    byte[] pixels = new byte[40 * 41];
    Arrays.fill(pixels, (byte) 128);
    for (int row = 0; row < 40; row++) {
      pixels[row * 41] = 0;
    }
    Photo photo =
        Photo.read(
            "t", MadePhotos.png(MadePhotos.pngHeader(40, 40, 8, 0), MadePhotos.deflated(pixels)));
    assertThat(new Color(photo.image().getRGB(20, 20))).isEqualTo(new Color(128, 128, 128));
  }

  @Test
  void largePhoto_isHeldInFewerPixels_andToldInAllOfThem() throws Exception {
    int width = 9_000;
    int height = 6_000;
    byte[] pixels = new byte[height * (width / 8 + 1)];
    for (int row = 0; row < height / 2; row++) {
      int start = row * (width / 8 + 1) + 1;
      Arrays.fill(pixels, start, start + width / 16, (byte) 0xFF);
    }
    Photo photo =
        Photo.read(
            "t",
            MadePhotos.png(MadePhotos.pngHeader(width, height, 1, 0), MadePhotos.deflated(pixels)));
    assertThat(List.of(photo.width(), photo.height())).isEqualTo(List.of(width, height));
    long held = (long) photo.image().getWidth() * photo.image().getHeight();
    assertThat(held).isBetween(4_000_000L, 16_000_000L);
    double scale = (double) photo.width() / photo.image().getWidth();
    assertThat(MadePhotos.grey(photo.image(), (int) (4_400 / scale), (int) (2_900 / scale)))
        .isEqualTo(255);
    assertThat(MadePhotos.grey(photo.image(), (int) (4_600 / scale), (int) (2_900 / scale)))
        .isZero();
    assertThat(MadePhotos.grey(photo.image(), (int) (4_400 / scale), (int) (3_100 / scale)))
        .isZero();
  }
}
