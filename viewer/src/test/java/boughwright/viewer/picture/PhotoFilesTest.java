// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boughwright.modeller.problem.InputException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Only that nothing hangs is asked of the time: the limit is far above what any file needs. */
@Timeout(120)
class PhotoFilesTest {
  @TempDir Path folder;

  private static Path folderOfFiles() {
    try {
      return Path.of(PhotoFilesTest.class.getResource("photos/INDEX.csv").toURI()).getParent();
    } catch (java.net.URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  static Stream<String> index() throws IOException {
    return Files.readAllLines(folderOfFiles().resolve("INDEX.csv")).stream().skip(1);
  }

  private static byte[] file(String name) throws IOException {
    return Files.readAllBytes(folderOfFiles().resolve(name));
  }

  static String refusal(byte[] bytes) {
    try {
      Photo photo = Photo.read("test.jpg", bytes);
      throw new AssertionError("read with " + photo.warnings());
    } catch (InputException e) {
      assertThat(e.problems()).hasSize(1);
      assertThat(e.getMessage()).startsWith("test.jpg: ").doesNotContain("\n", "Exception");
      assertThat(e.problems().get(0).remedy()).isNotBlank();
      return e.getMessage();
    }
  }

  @ParameterizedTest
  @MethodSource("index")
  void photo_isReadOrRefused_asExpected(String row) throws Exception {
    String[] cells = row.split(",", 4);
    Path path = folderOfFiles().resolve(cells[0]);
    if (cells[2].equals("reject")) {
      assertThatThrownBy(() -> Photo.read(path))
          .isInstanceOf(InputException.class)
          .satisfies(e -> assertThat(e.getMessage()).contains(cells[0]).doesNotContain("\n"));
      return;
    }
    Photo photo = Photo.read(path);
    assertThat(photo.warnings()).hasSize(cells[2].equals("accept") ? 0 : 1);
    if (!cells[0].startsWith("png_")) {
      assertThat(List.of(photo.width(), photo.height()))
          .isEqualTo(List.of(MadePhotos.WIDTH, MadePhotos.HEIGHT));
      assertThat(photo.image().getWidth()).isEqualTo(MadePhotos.WIDTH);
      assertThat(MadePhotos.grey(photo.image(), 8, 8))
          .as("white square at the upper left")
          .isGreaterThan(230);
      assertThat(MadePhotos.grey(photo.image(), MadePhotos.WIDTH - 8, MadePhotos.HEIGHT - 8))
          .isLessThan(200);
    }
  }

  @Test
  void photo_isRead_whateverItsFileIsCalled() throws Exception {
    Path odd;
    try {
      odd = folder.resolve("photo name \u00FC 030\u00B0 <b>&'.jpg");
      Files.write(odd, file("jpg_good.jpg"));
    } catch (InvalidPathException | IOException e) {
      odd = Files.write(folder.resolve("photo name 030.jpg"), file("jpg_good.jpg"));
    }
    assertThat(Photo.read(odd).width()).isEqualTo(MadePhotos.WIDTH);
  }

  @ParameterizedTest
  @CsvSource({
    "gif_as_jpg.jpg, GIF",
    "bmp_as_png.png, BMP",
    "image_empty.jpg, empty",
    "image_text.jpg, text",
    "svg_xxe_as_photo.png, text",
    "png_truncated.png, breaks off",
    "png_bad_crc.png, checksum",
    "jpg_dims_zero.jpg, 0 pixels"
  })
  void fault_saysWhatIsWrong(String name, String words) throws Exception {
    assertThat(refusal(file(name))).contains(words);
  }

  @ParameterizedTest
  @CsvSource({
    "RIFF....WEBPVP8 , WebP",
    "....ftypheic...., HEIC",
    "....ftypavif...., AVIF",
    "....ftypisom...., film",
    "\u00DE\u00AD\u00BE\u00EF, no photo"
  })
  void fault_namesWhatCamerasAlsoWrite(String start, String words) {
    byte[] bytes = (start + "\0\0\0").getBytes(StandardCharsets.ISO_8859_1);
    assertThat(refusal(bytes)).contains(words).contains("JPEG");
  }

  @Test
  void jpeg_isRefused_whenItBreaksOff() throws Exception {
    byte[] whole = MadePhotos.jpeg(MadePhotos.scene());
    for (double part : new double[] {0.05, 0.3, 0.6, 0.9}) {
      assertThat(refusal(Arrays.copyOf(whole, (int) (part * whole.length))))
          .containsAnyOf("breaks off", "damaged");
    }
  }

  /** Random damage is refused in one line or read; nothing else happens. */
  @ParameterizedTest
  @ValueSource(strings = {"jpg_good.jpg", "jpg_progressive.jpg", "jpg_exif_orientation_6.jpg"})
  void damagedPhoto_isReadOrRefused(String name) throws Exception {
    Random random = new Random(7);
    for (int k = 0; k < 300; k++) {
      byte[] bytes = file(name);
      for (int flips = 1 + random.nextInt(6); flips > 0; flips--) {
        bytes[3 + random.nextInt(bytes.length - 3)] = (byte) random.nextInt(256);
      }
      readOrRefused(bytes);
    }
  }

  @Test
  void damagedPng_isReadOrRefused_evenWithRightChecksums() throws Exception {
    Random random = new Random(8);
    for (int k = 0; k < 300; k++) {
      byte[] header = MadePhotos.pngHeader(40, 30, 8, 2);
      header[random.nextInt(header.length)] = (byte) random.nextInt(12);
      byte[] pixels = MadePhotos.deflated(new byte[30 * 121]);
      pixels[random.nextInt(pixels.length)] = (byte) random.nextInt(256);
      readOrRefused(MadePhotos.png(header, pixels));
    }
  }

  private static void readOrRefused(byte[] bytes) {
    try {
      Photo photo = Photo.read("damaged", bytes);
      assertThat(photo.image().getWidth()).isPositive();
    } catch (InputException e) {
      assertThat(e.getMessage()).startsWith("damaged: ").doesNotContain("\n");
    }
  }

  @Test
  void bomb_isRefused_fromItsHeaderAlone() throws Exception {
    byte[] few = MadePhotos.deflated(new byte[100]);
    assertThat(refusal(MadePhotos.png(MadePhotos.pngHeader(50_000, 50_000, 8, 2), few)))
        .contains("50,000 x 50,000");
    assertThat(refusal(MadePhotos.png(MadePhotos.pngHeader(Integer.MAX_VALUE, 1, 8, 6), few)))
        .contains("on a side");
    assertThat(refusal(MadePhotos.png(MadePhotos.pngHeader(-5, 10, 8, 2), few)))
        .contains("0 pixels");
    assertThat(refusal(MadePhotos.png(MadePhotos.pngHeader(12_001, 10_000, 8, 2), few)))
        .contains("120 million");
  }

  @Test
  void jpegBomb_isRefused_fromItsHeaderAlone() throws Exception {
    byte[] bytes = MadePhotos.jpeg(MadePhotos.scene());
    size(bytes, 65_535, 65_535);
    assertThat(refusal(bytes)).contains("65,535");
    size(bytes, 12_000, 9_000);
    byte[] layers = Arrays.copyOf(bytes, bytes.length + 100);
    for (int k = bytes.length; k < layers.length; k += 2) {
      layers[k] = (byte) 0xFF;
      layers[k + 1] = (byte) 0xDA;
    }
    assertThat(refusal(layers)).contains("layers");
  }

  /** Writes another size into the first frame header. */
  private static void size(byte[] jpeg, int width, int height) {
    for (int i = 2; i < jpeg.length - 9; i++) {
      if ((jpeg[i] & 0xFF) == 0xFF && (jpeg[i + 1] & 0xFF) == 0xC0) {
        ByteBuffer.wrap(jpeg).putShort(i + 5, (short) height).putShort(i + 7, (short) width);
        return;
      }
    }
    throw new IllegalStateException("no frame");
  }

  @Test
  void file_isRefused_whenItHasTooManyBytes() throws Exception {
    Path large = folder.resolve("large.jpg");
    try (var out =
        Files.newByteChannel(
            large,
            java.nio.file.StandardOpenOption.CREATE_NEW,
            java.nio.file.StandardOpenOption.WRITE,
            java.nio.file.StandardOpenOption.SPARSE)) {
      out.position(Photo.MOST_BYTES).write(ByteBuffer.wrap(new byte[1]));
    }
    assertThatThrownBy(() -> Photo.read(large)).hasMessageContaining("51 MB");
  }

  @Test
  void file_isRefused_whenItIsNone() {
    assertThatThrownBy(() -> Photo.read(folder)).hasMessageContaining("no file");
    assertThatThrownBy(() -> Photo.read(folder.resolve("nowhere.jpg")))
        .hasMessageContaining("no such file");
  }
}
