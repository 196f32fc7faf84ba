// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import javax.imageio.ImageIO;

/** Photos made byte by byte, as cameras and other programs write them. */
public final class MadePhotos {
  static final int WIDTH = 120;
  static final int HEIGHT = 60;

  private MadePhotos() {}

  static int grey(BufferedImage image, int x, int y) {
    Color colour = new Color(image.getRGB(x, y));
    return (colour.getRed() + colour.getGreen() + colour.getBlue()) / 3;
  }

  /** Four different corners and a bright square. */
  static BufferedImage scene() {
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

  /** An image as JPEG. */
  public static byte[] jpeg(BufferedImage image) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(image, "jpeg", out);
    return out.toByteArray();
  }

  /** An Exif block that holds nothing but an orientation. */
  public static byte[] exif(int orientation) throws IOException {
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

  /** A JPEG with an Exif block right after its start. */
  public static byte[] withExif(byte[] jpeg, byte[] exif) throws IOException {
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
  static BufferedImage stored(BufferedImage upright, String firstRow, String firstColumn) {
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

  static byte[] pngHeader(int width, int height, int depth, int colour) {
    return ByteBuffer.allocate(13)
        .putInt(width)
        .putInt(height)
        .put((byte) depth)
        .put((byte) colour)
        .array();
  }

  static byte[] deflated(byte[] bytes) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (DeflaterOutputStream deflater = new DeflaterOutputStream(out)) {
      deflater.write(bytes);
    }
    return out.toByteArray();
  }

  static byte[] png(byte[] header, byte[] pixels, String... extra) throws IOException {
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
}
