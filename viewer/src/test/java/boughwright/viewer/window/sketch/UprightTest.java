// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Document;
import boughwright.modeller.tree.Backdrop;
import boughwright.viewer.picture.MadePhotos;
import boughwright.viewer.window.OnScreen;
import boughwright.viewer.window.WindowRobot;
import boughwright.viewer.window.work.Notice;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Photos from a camera that was held in any way stand upright behind the tree: a red mark in the
 * upper left corner of what was seen is drawn there.
 */
@OnScreen
class UprightTest {
  private static final int WIDTH = 120;
  private static final int HEIGHT = 200;
  private static final int MARK = 40;

  /** Height of a photo that nobody has scaled yet, as the manual has it [m]. */
  private static final double UNSCALED = 0.5;

  /**
   * Where the first row and the first column of the stored picture are seen, by orientation (Exif
   * 2.3, tag Orientation; from memory).
   */
  private static final List<String> SIDES =
      List.of(
          "top left",
          "top right",
          "bottom right",
          "bottom left",
          "left top",
          "right top",
          "right bottom",
          "left bottom");

  private final WindowRobot robot = new WindowRobot();
  @TempDir private Path home;
  @TempDir private Path folder;
  private SketchFrame frame;

  @BeforeEach
  void open() {
    frame = SketchFrame.open(home, Sketches.fresh());
  }

  @AfterEach
  void close() {
    frame.close();
  }

  /** What the camera writes when the mark is seen in the upper left corner. */
  private static BufferedImage stored(String sides) {
    boolean sideways = sides.startsWith("left") || sides.startsWith("right");
    int width = sideways ? HEIGHT : WIDTH;
    int height = sideways ? WIDTH : HEIGHT;
    // The mark is where the rows and columns are that are seen at the top and at the left.
    String row = sides.split(" ")[0];
    String column = sides.split(" ")[1];
    int x = isFirst(column) ? 0 : width - MARK;
    int y = isFirst(row) ? 0 : height - MARK;
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    pen.setColor(Color.WHITE);
    pen.fillRect(0, 0, width, height);
    pen.setColor(Color.RED);
    pen.fillRect(x, y, MARK, MARK);
    pen.dispose();
    return image;
  }

  private static boolean isFirst(String side) {
    return side.equals("top") || side.equals("left");
  }

  private Path photo(int orientation) throws IOException {
    byte[] plain = MadePhotos.jpeg(stored(SIDES.get(orientation - 1)));
    byte[] held = MadePhotos.withExif(plain, MadePhotos.exif(orientation));
    return Files.write(folder.resolve("held-" + orientation + ".jpg"), held);
  }

  private void add(Path photo) {
    WindowRobot.doOnEvents(() -> frame.panel.addPhoto(photo));
    robot.waitFor("it is added", () -> frame.workspace.document().backdrops().size() == 1);
    frame.stands();
  }

  /** Where a place of the photo is seen, from where its trunk base is and how high it is. */
  private Point seen(double x, double y) {
    Backdrop photo = frame.workspace.document().backdrops().get(0);
    double scale = UNSCALED / HEIGHT;
    return frame.pixel(new Point3((x - photo.baseX()) * scale, 0, (photo.baseY() - y) * scale));
  }

  private BufferedImage painted() {
    Component view = frame.view();
    return WindowRobot.onEvents(
        () -> {
          BufferedImage image =
              new BufferedImage(view.getWidth(), view.getHeight(), BufferedImage.TYPE_INT_RGB);
          view.paint(image.getGraphics());
          return image;
        });
  }

  /** Red shines through the paper where the mark is, and nowhere else. */
  private static boolean isRed(BufferedImage image, Point at) {
    Color there = new Color(image.getRGB(at.x, at.y));
    return there.getRed() - Math.max(there.getGreen(), there.getBlue()) > 80;
  }

  @Test
  void photos_standUprightBehindTheTree_howeverTheCameraWasHeld() throws Exception {
    for (int orientation = 1; orientation <= SIDES.size(); orientation++) {
      add(photo(orientation));
      BufferedImage canvas = painted();
      int middle = MARK / 2;
      assertThat(isRed(canvas, seen(middle, middle)))
          .as("orientation %d, upper left", orientation)
          .isTrue();
      assertThat(
              List.of(
                  isRed(canvas, seen(WIDTH - middle, middle)),
                  isRed(canvas, seen(middle, HEIGHT - middle)),
                  isRed(canvas, seen(WIDTH - middle, HEIGHT - middle))))
          .as("orientation %d, the other corners", orientation)
          .containsExactly(false, false, false);
      WindowRobot.doOnEvents(frame.workspace::undo);
    }
  }

  @Test
  void whatIsNoWholePhoto_isRefusedInOneLine_andNothingChanges() throws Exception {
    byte[] whole = Files.readAllBytes(photo(6));
    List<Path> bad =
        List.of(
            Files.write(folder.resolve("cut-short.jpg"), Arrays.copyOf(whole, whole.length / 2)),
            Files.writeString(folder.resolve("no-photo.jpg"), "no photo at all"),
            Files.write(folder.resolve("bomb.png"), bomb()));
    Document before = frame.workspace.document();
    for (Path photo : bad) {
      WindowRobot.doOnEvents(() -> frame.workspace.say(new Notice(Notice.Kind.DONE, "waits")));
      WindowRobot.doOnEvents(() -> frame.panel.addPhoto(photo));
      String name = photo.getFileName().toString();
      robot.waitFor(name + " is refused", () -> robot.words("status.notice").contains(name));
      assertThat(robot.words("status.notice")).doesNotContain("\n", "Exception", "memory");
      assertThat(WindowRobot.onEvents(frame.workspace::document)).isSameAs(before);
    }
  }

  /** A picture of 30,000 by 30,000 pixels in a few bytes, as far as its head goes. */
  private static byte[] bomb() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    DataOutputStream data = new DataOutputStream(out);
    data.write(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'});
    data.writeInt(13);
    ByteArrayOutputStream head = new ByteArrayOutputStream();
    DataOutputStream fields = new DataOutputStream(head);
    fields.writeBytes("IHDR");
    fields.writeInt(30_000);
    fields.writeInt(30_000);
    fields.write(new byte[] {8, 2, 0, 0, 0});
    java.util.zip.CRC32 crc = new java.util.zip.CRC32();
    crc.update(head.toByteArray());
    data.write(head.toByteArray());
    data.writeInt((int) crc.getValue());
    return out.toByteArray();
  }
}
