// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.viewer.gl.Graphics;
import boughwright.viewer.window.OnScreen;
import boughwright.viewer.window.WindowRobot;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pictures of what is seen, by the menu: copied, saved, beside each other, from all round. */
@OnScreen
class PicturesTest {
  @TempDir Path folder;

  private OwnDesk desk;
  private WindowRobot robot;

  @BeforeEach
  void open() {
    Graphics.require();
    desk = new OwnDesk(folder.resolve("home"));
    robot = desk.robot();
    desk.resize(1100, 700);
  }

  @AfterEach
  void close() {
    desk.close();
  }

  private void size(String width, String height) {
    robot.write("picture.width", width);
    robot.write("picture.height", height);
    robot.keys(KeyEvent.VK_ENTER);
  }

  private void told(String words) {
    robot.waitFor(words, () -> robot.words("status.notice").contains(words));
  }

  /** What is on the clipboard when the picture that is seen now is copied. */
  private BufferedImage copied() {
    return WindowRobot.onEvents(
        () -> {
          desk.canvas().copy();
          return (BufferedImage)
              Toolkit.getDefaultToolkit().getSystemClipboard().getData(DataFlavor.imageFlavor);
        });
  }

  private static int inked(BufferedImage image, int left, int right) {
    int paper = image.getRGB(1, 1);
    int inked = 0;
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = left; x < right; x++) {
        inked += image.getRGB(x, y) == paper ? 0 : 1;
      }
    }
    return inked;
  }

  @Test
  void whatIsSeen_isCopiedAsLargeAsItIs_andSavedAsLargeAsWanted() throws Exception {
    robot.find("canvas.pose");
    robot.waitFor("the bent tree is drawn", () -> copied().getHeight() == desk.view().getHeight());
    robot.menu("ip");
    told("clipboard");
    assertThat(copied().getWidth()).isEqualTo(desk.view().getWidth());
    assertThat(inked(copied(), 0, copied().getWidth())).isGreaterThan(5000);

    robot.menu("is");
    robot.write("picture.width", "50");
    robot.keys(KeyEvent.VK_ENTER);
    assertThat(robot.words("picture.width.fault")).contains("100").doesNotContain("\n");
    size("900", "500");
    desk.answerFile(folder.resolve("seen"));
    told("Saved");
    BufferedImage saved = ImageIO.read(folder.resolve("seen.png").toFile());
    assertThat(saved.getWidth()).isEqualTo(900);
    assertThat(saved.getHeight()).isEqualTo(500);
    assertThat(inked(saved, 0, 900)).isGreaterThan(5000);
  }

  @Test
  void beforeAndAfter_areSavedBesideEachOther_andNothingIsReplacedUnasked() throws Exception {
    Path file = Files.writeString(folder.resolve("pair.png"), "something else");
    robot.menu("ib");
    size("1000", "400");
    desk.answerFile(file);
    robot.find("question");
    robot.keys(KeyEvent.VK_ESCAPE);
    robot.waitFor("the question is gone", () -> !robot.isThere("question"));
    assertThat(file).hasContent("something else");

    robot.menu("ib");
    size("1000", "400");
    desk.answerFile(file);
    robot.click("answer.replace");
    told("Saved");
    BufferedImage pair = ImageIO.read(file.toFile());
    assertThat(pair.getWidth()).isEqualTo(1000);
    assertThat(inked(pair, 0, 500)).isGreaterThan(3000);
    assertThat(inked(pair, 500, 1000)).isGreaterThan(3000);
  }

  @Test
  void aTurntable_isSavedAsNumberedViewsInAFolderOfItsOwn() throws Exception {
    Path views = folder.resolve("round");
    robot.menu("it");
    robot.write("picture.views", "5");
    size("300", "260");
    desk.answerFile(views);
    told("5 views");
    try (Stream<Path> files = Files.list(views)) {
      assertThat(files.map(file -> file.getFileName().toString()).sorted().toList())
          .containsExactly(
              "view-001.png", "view-002.png", "view-003.png", "view-004.png", "view-005.png");
    }
    assertThat(ImageIO.read(views.resolve("view-005.png").toFile()).getWidth()).isEqualTo(300);
  }
}
