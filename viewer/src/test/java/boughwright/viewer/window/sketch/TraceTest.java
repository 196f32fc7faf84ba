// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.tree.Backdrop;
import boughwright.viewer.window.OnScreen;
import boughwright.viewer.window.WindowRobot;
import boughwright.viewer.window.look.TextSize;
import boughwright.viewer.window.look.Theme;
import boughwright.viewer.window.look.Tone;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.IntPredicate;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Traces a made-up photo of known geometry. What is clicked on is found by its colour on the
 * screen, as an eye finds it, so the placing of the photo is checked by nothing of its own.
 */
@OnScreen
class TraceTest {
  /** Geometry of the photo: a ruler of 200 mm from (80, 950) to (580, 950), so 0.4 mm a pixel. */
  private static final double MM_PER_PIXEL = 0.4;

  private static final Point RULER_LEFT = new Point(80, 950);
  private static final Point RULER_RIGHT = new Point(580, 950);
  private static final Point BASE = new Point(250, 800);
  private static final Point TIP = new Point(550, 450);

  private final WindowRobot robot = new WindowRobot();
  @TempDir private Path folder;
  @TempDir private Path home;
  private SketchFrame frame;

  @BeforeAll
  static void theme() {
    WindowRobot.requireDisplay();
    WindowRobot.doOnEvents(() -> Theme.apply(Tone.LIGHT, TextSize.USUAL));
  }

  @BeforeEach
  void open() {
    frame = SketchFrame.open(home, Sketches.fresh());
  }

  @AfterEach
  void close() {
    frame.close();
  }

  private Path photo() throws IOException {
    BufferedImage image = new BufferedImage(800, 1000, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    pen.setColor(Color.WHITE);
    pen.fillRect(0, 0, 800, 1000);
    disc(pen, RULER_LEFT, Color.RED);
    disc(pen, RULER_RIGHT, Color.RED);
    disc(pen, BASE, Color.GREEN);
    disc(pen, TIP, Color.MAGENTA);
    pen.dispose();
    Path file = folder.resolve("front.png");
    ImageIO.write(image, "png", file.toFile());
    return file;
  }

  private static void disc(Graphics2D pen, Point at, Color colour) {
    pen.setColor(colour);
    pen.fillOval(at.x - 8, at.y - 8, 16, 16);
  }

  private Backdrop backdrop() {
    return WindowRobot.onEvents(() -> frame.workspace.document().backdrops().get(0));
  }

  private void add(Path file) {
    WindowRobot.doOnEvents(() -> frame.panel.addPhoto(file));
  }

  /** The middle of what has a hue on the screen, in user pixels of the canvas. */
  private Point seen(Color colour, IntPredicate columns) {
    Component view = frame.view();
    float hue = Color.RGBtoHSB(colour.getRed(), colour.getGreen(), colour.getBlue(), null)[0];
    double[] sums = new double[3];
    robot.waitFor(
        "a disc of " + colour + " is seen",
        () -> {
          BufferedImage screen = WindowRobot.picture(view);
          sums[0] = 0;
          sums[1] = 0;
          sums[2] = 0;
          for (int y = 0; y < screen.getHeight(); y++) {
            for (int x = 0; x < screen.getWidth(); x++) {
              Color here = new Color(screen.getRGB(x, y));
              float[] hsb = Color.RGBtoHSB(here.getRed(), here.getGreen(), here.getBlue(), null);
              if (columns.test(x)
                  && hsb[1] > 0.45
                  && Math.abs(Math.IEEEremainder(hsb[0] - hue, 1)) < 0.03) {
                sums[0] += x + 0.5;
                sums[1] += y + 0.5;
                sums[2]++;
              }
            }
          }
          return sums[2] > 20;
        });
    return new Point((int) Math.round(sums[0] / sums[2]), (int) Math.round(sums[1] / sums[2]));
  }

  private double millimetresPerCanvasPixel() {
    return WindowRobot.onEvents(
        () ->
            100
                / frame
                    .canvas
                    .project(Point3.ORIGIN)
                    .distance(frame.canvas.project(new Point3(0, 0, 0.1))));
  }

  private void scaleAndPlace() {
    robot.click("photo.mark");
    frame.stands();
    Point any = seen(Color.RED, x -> true);
    robot.click(frame.view(), seen(Color.RED, x -> x < any.x).x, seen(Color.RED, x -> x < any.x).y);
    Point right = seen(Color.RED, x -> x > any.x);
    robot.click(frame.view(), right.x, right.y);
    robot.waitFor(
        "the length can be typed",
        () -> WindowRobot.focused().map("photo.known"::equals).orElse(false));
    robot.type("20 cm");
    robot.keys(KeyEvent.VK_ENTER);
    robot.click("photo.place");
    frame.stands();
    Point base = seen(Color.GREEN, x -> true);
    robot.click(frame.view(), base.x, base.y);
  }

  @Test
  void aSegmentDrawnOverAphoto_hasTheCoordinatesOfThePhoto() throws IOException {
    add(photo());
    robot.waitFor("the photo is there", () -> frame.workspace.document().backdrops().size() == 1);
    scaleAndPlace();
    Backdrop placed = backdrop();
    assertThat(1000 * placed.metresPerPixel().orElseThrow())
        .isCloseTo(MM_PER_PIXEL, within(0.01 * MM_PER_PIXEL));
    assertThat(placed.baseX()).isCloseTo(BASE.x, within(3.0));
    assertThat(placed.baseY()).isCloseTo(BASE.y, within(3.0));

    robot.keys(KeyEvent.VK_F7);
    frame.stands();
    Point tip = seen(Color.MAGENTA, x -> true);
    Point from = frame.pixel(new Point3(0, 0, 0.1));
    robot.drag(frame.view(), from, tip);

    Point3 end = WindowRobot.onEvents(() -> Sketches.segment(frame.workspace, "t2").end());
    double pixel = millimetresPerCanvasPixel();
    // Three clicks to the nearest pixel, and one part in a hundred of scale over 184 mm.
    double error = 2 * pixel + 1.9;
    assertThat(1000 * end.x()).isCloseTo((TIP.x - BASE.x) * MM_PER_PIXEL, within(error));
    assertThat(1000 * end.z()).isCloseTo((BASE.y - TIP.y) * MM_PER_PIXEL, within(error));
  }

  @Test
  void aPhoto_isHiddenWithAreason_untilOneLooksFromWhereItWasTaken() throws IOException {
    add(photo());
    robot.waitFor("the photo is there", () -> frame.workspace.document().backdrops().size() == 1);

    WindowRobot.doOnEvents(() -> frame.canvas.lookFlatFrom(Math.toRadians(40), List.of()));
    robot.waitFor(
        "it is told", () -> robot.words("photo.state").startsWith("Hidden: it was taken from 0"));
    robot.click("photo.go");

    robot.waitFor("one looks from the front", () -> Math.abs(frame.canvas.azimuth()) < 0.01);
    robot.waitFor(
        "it is shown", () -> robot.words("photo.state").startsWith("Shown behind this view"));
  }

  @Test
  void whatIsNoPhoto_changesNothing_andIsToldInOneLine() throws IOException {
    Path file = folder.resolve("notes.jpg");
    Files.write(file, "these are only words".getBytes(StandardCharsets.UTF_8));

    add(file);
    robot.waitFor("it is told", () -> robot.words("status.notice").contains("notes.jpg"));

    assertThat(WindowRobot.onEvents(frame.workspace::document)).isEqualTo(Sketches.fresh());
    assertThat(robot.words("status.notice")).doesNotContain("\n");
  }

  @Test
  void aMissingPhoto_isTold_andTheRestWorks() throws IOException {
    WindowRobot.doOnEvents(
        () ->
            frame.workspace.edit(
                boughwright.modeller.edit.BackdropEdits.add(
                    new Backdrop(
                        "gone.jpg",
                        0,
                        java.util.OptionalDouble.of(1e-3),
                        1,
                        1,
                        1,
                        java.util.Map.of()))));

    robot.waitFor("it is told", () -> robot.words("status.notice").contains("gone.jpg is missing"));
    robot.click("measure.page.photos");
    assertThat(robot.words("photo.state")).contains("is missing");
    robot.click("photo.remove");
    assertThat(WindowRobot.onEvents(() -> frame.workspace.document().backdrops()))
        .isEqualTo(List.of());
  }
}
