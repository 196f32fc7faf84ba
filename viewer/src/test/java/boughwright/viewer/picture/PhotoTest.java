// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boughwright.modeller.problem.InputException;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
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
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Only that nothing hangs is asked of the time: the limit is far above what any file needs. */
@Timeout(120)
class PhotoTest {
  private static final int WIDTH = 120;
  private static final int HEIGHT = 60;

  @TempDir Path folder;

  private static Path folderOfFiles() {
    try {
      return Path.of(PhotoTest.class.getResource("photos/INDEX.csv").toURI()).getParent();
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

  private static String refusal(byte[] bytes) {
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
      assertThat(List.of(photo.width(), photo.height())).isEqualTo(List.of(WIDTH, HEIGHT));
      assertThat(photo.image().getWidth()).isEqualTo(WIDTH);
      assertThat(grey(photo.image(), 8, 8)).as("white square at the upper left").isGreaterThan(230);
      assertThat(grey(photo.image(), WIDTH - 8, HEIGHT - 8)).isLessThan(200);
    }
  }

  private static int grey(BufferedImage image, int x, int y) {
    Color colour = new Color(image.getRGB(x, y));
    return (colour.getRed() + colour.getGreen() + colour.getBlue()) / 3;
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
    assertThat(Photo.read(odd).width()).isEqualTo(WIDTH);
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
    byte[] whole = jpeg(scene());
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
      byte[] header = pngHeader(40, 30, 8, 2);
      header[random.nextInt(header.length)] = (byte) random.nextInt(12);
      byte[] pixels = deflated(new byte[30 * 121]);
      pixels[random.nextInt(pixels.length)] = (byte) random.nextInt(256);
      readOrRefused(png(header, pixels));
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

  /** Four different corners and a bright square. */
  private static BufferedImage scene() {
    BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    Color[] corners = {Color.WHITE, Color.RED, Color.GREEN, Color.BLUE};
    for (int k = 0; k < 4; k++) {
      pen.setColor(corners[k]);
      pen.fillRect(k % 2 * WIDTH / 2, k / 2 * HEIGHT / 2, WIDTH / 2, HEIGHT / 2);
    }
    pen.dispose();
    return image;
  }

  private static byte[] jpeg(BufferedImage image) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(image, "jpeg", out);
    return out.toByteArray();
  }

  /** An Exif block that holds nothing but an orientation. */
  private static byte[] exif(int orientation) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    DataOutputStream data = new DataOutputStream(out);
    data.writeBytes("MM");
    data.writeShort(42);
    data.writeInt(8);
    data.writeShort(1);
    data.writeShort(0x0112);
    data.writeShort(3);
    data.writeInt(1);
    data.writeShort(orientation);
    data.writeShort(0);
    data.writeInt(0);
    return out.toByteArray();
  }

  private static byte[] withExif(byte[] jpeg, byte[] exif) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    DataOutputStream data = new DataOutputStream(out);
    data.write(jpeg, 0, 2);
    data.writeShort(0xFFE1);
    data.writeShort(2 + 6 + exif.length);
    data.writeBytes("Exif\0\0");
    data.write(exif);
    data.write(jpeg, 2, jpeg.length - 2);
    return out.toByteArray();
  }

  /**
   * As the standard words it (Exif 2.3, Orientation; from memory): where the first row and the
   * first column of the stored picture are seen.
   */
  private static BufferedImage stored(BufferedImage upright, String firstRow, String firstColumn) {
    boolean sideways = firstRow.equals("left") || firstRow.equals("right");
    int rows = sideways ? WIDTH : HEIGHT;
    int columns = sideways ? HEIGHT : WIDTH;
    BufferedImage stored = new BufferedImage(columns, rows, BufferedImage.TYPE_INT_RGB);
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        int x = seen(firstRow, row, "left", "right", WIDTH);
        x = x < 0 ? seen(firstColumn, column, "left", "right", WIDTH) : x;
        int y = seen(firstRow, row, "top", "bottom", HEIGHT);
        y = y < 0 ? seen(firstColumn, column, "top", "bottom", HEIGHT) : y;
        stored.setRGB(column, row, upright.getRGB(x, y));
      }
    }
    return stored;
  }

  private static int seen(String side, int k, String near, String far, int size) {
    return side.equals(near) ? k : side.equals(far) ? size - 1 - k : -1;
  }

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
    BufferedImage scene = scene();
    Photo photo = Photo.read("t", withExif(jpeg(stored(scene, row, column)), exif(orientation)));
    assertThat(List.of(photo.width(), photo.height())).isEqualTo(List.of(WIDTH, HEIGHT));
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
    Photo photo = Photo.read("t", withExif(jpeg(scene()), exif(orientation)));
    assertThat(photo.width()).isEqualTo(WIDTH);
    assertThat(photo.warnings()).extracting("kind").containsExactly("damaged-notes");
  }

  private static void chunk(DataOutputStream out, String name, byte[] content) throws IOException {
    byte[] named = new byte[4 + content.length];
    System.arraycopy(name.getBytes(StandardCharsets.ISO_8859_1), 0, named, 0, 4);
    System.arraycopy(content, 0, named, 4, content.length);
    CRC32 crc = new CRC32();
    crc.update(named);
    out.writeInt(content.length);
    out.write(named);
    out.writeInt((int) crc.getValue());
  }

  private static byte[] pngHeader(int width, int height, int depth, int colour) {
    return ByteBuffer.allocate(13)
        .putInt(width)
        .putInt(height)
        .put((byte) depth)
        .put((byte) colour)
        .array();
  }

  private static byte[] deflated(byte[] bytes) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (DeflaterOutputStream deflater = new DeflaterOutputStream(out)) {
      deflater.write(bytes);
    }
    return out.toByteArray();
  }

  private static byte[] png(byte[] header, byte[] pixels, String... extra) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    DataOutputStream data = new DataOutputStream(out);
    data.write(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'});
    chunk(data, "IHDR", header);
    for (String name : extra) {
      chunk(data, name, name.equals("eXIf") ? exif(6) : new byte[8]);
    }
    chunk(data, "IDAT", pixels);
    chunk(data, "IEND", new byte[0]);
    return out.toByteArray();
  }

  @Test
  void png_isTurnedUpright_andRefusedWhenItMoves() throws Exception {
    byte[] header = pngHeader(40, 30, 8, 0);
    byte[] pixels = deflated(new byte[30 * 41]);
    assertThat(Photo.read("t", png(header, pixels, "eXIf")).width()).isEqualTo(30);
    assertThat(refusal(png(header, pixels, "acTL"))).contains("animated");
  }

  /** Mid grey stays mid grey: some ways to turn it into red, green and blue make it brighter. */
  @Test
  void grey_keepsItsBrightness() throws Exception {
    byte[] pixels = new byte[40 * 41];
    Arrays.fill(pixels, (byte) 128);
    for (int row = 0; row < 40; row++) {
      pixels[row * 41] = 0;
    }
    Photo photo = Photo.read("t", png(pngHeader(40, 40, 8, 0), deflated(pixels)));
    assertThat(new Color(photo.image().getRGB(20, 20))).isEqualTo(new Color(128, 128, 128));
  }

  @Test
  void bomb_isRefused_fromItsHeaderAlone() throws Exception {
    byte[] few = deflated(new byte[100]);
    assertThat(refusal(png(pngHeader(50_000, 50_000, 8, 2), few))).contains("50,000 x 50,000");
    assertThat(refusal(png(pngHeader(Integer.MAX_VALUE, 1, 8, 6), few))).contains("on a side");
    assertThat(refusal(png(pngHeader(-5, 10, 8, 2), few))).contains("0 pixels");
    assertThat(refusal(png(pngHeader(12_001, 10_000, 8, 2), few))).contains("120 million");
  }

  @Test
  void jpegBomb_isRefused_fromItsHeaderAlone() throws Exception {
    byte[] bytes = jpeg(scene());
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

  @Test
  void largePhoto_isHeldInFewerPixels_andToldInAllOfThem() throws Exception {
    int width = 9_000;
    int height = 6_000;
    byte[] pixels = new byte[height * (width / 8 + 1)];
    for (int row = 0; row < height / 2; row++) {
      int start = row * (width / 8 + 1) + 1;
      Arrays.fill(pixels, start, start + width / 16, (byte) 0xFF);
    }
    Photo photo = Photo.read("t", png(pngHeader(width, height, 1, 0), deflated(pixels)));
    assertThat(List.of(photo.width(), photo.height())).isEqualTo(List.of(width, height));
    long held = (long) photo.image().getWidth() * photo.image().getHeight();
    assertThat(held).isBetween(4_000_000L, 16_000_000L);
    double scale = (double) photo.width() / photo.image().getWidth();
    assertThat(grey(photo.image(), (int) (4_400 / scale), (int) (2_900 / scale))).isEqualTo(255);
    assertThat(grey(photo.image(), (int) (4_600 / scale), (int) (2_900 / scale))).isZero();
    assertThat(grey(photo.image(), (int) (4_400 / scale), (int) (3_100 / scale))).isZero();
  }
}
