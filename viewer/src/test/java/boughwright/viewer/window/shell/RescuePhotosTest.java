// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.file.Recovery;
import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.tree.Backdrop;
import boughwright.viewer.gl.Graphics;
import boughwright.viewer.window.OnScreen;
import boughwright.viewer.window.Parts;
import boughwright.viewer.window.WindowRobot;
import boughwright.viewer.window.sketch.MeasurePanel;
import java.awt.Component;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.swing.AbstractButton;
import javax.swing.JSlider;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Photos that no folder held yet when the program was killed. */
@OnScreen
class RescuePhotosTest {
  private static final double STRENGTH = 0.37;

  @TempDir static Path killed;
  @TempDir Path folder;
  private TestDesk test;

  /** Puts two photos behind a tree until it is killed. */
  public static void main(String[] args) {
    Path folder = Path.of(args[0]);
    TestDesk test = TestDesk.whole(folder.resolve("home"));
    test.resize(1280, 860);
    test.openFile(folder.resolve("bench.tree.json"));
    WindowRobot.doOnEvents(() -> test.window.choose(1));
    add(test, folder.resolve("camera/front.png"));
    test.robot.fill("photo.height", "80 cm");
    test.robot.fill("photo.base-x", "120");
    add(test, folder.resolve("camera/side.png"));
    pick(test, 1);
    test.robot.fill("photo.azimuth", "90");
    JSlider strength = test.robot.find("photo.strength", JSlider.class);
    WindowRobot.doOnEvents(() -> strength.setValue((int) Math.round(100 * STRENGTH)));
    test.robot.waitFor("it is kept", () -> isKept(folder.resolve("home").resolve("recovery")));
    System.out.println("kept");
    test.robot.waitFor("it is killed", () -> false);
  }

  private static void add(TestDesk test, Path photo) {
    int before = WindowRobot.onEvents(() -> backdrops(test).size());
    MeasurePanel measure = (MeasurePanel) test.window.parts().panels().get(1);
    WindowRobot.doOnEvents(() -> measure.addPhoto(photo));
    test.robot.waitFor("it is added", () -> backdrops(test).size() == before + 1);
  }

  private static void pick(TestDesk test, int photo) {
    javax.swing.JList<?> list = test.robot.find("photo.list", javax.swing.JList.class);
    WindowRobot.doOnEvents(() -> list.setSelectedIndex(photo));
  }

  private static List<Backdrop> backdrops(TestDesk test) {
    return test.window.workspace().document().backdrops();
  }

  private static boolean isKept(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return false;
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> file.toString().endsWith(".kept")).anyMatch(f -> isLast(f));
    }
  }

  private static boolean isLast(Path file) {
    try {
      return Files.readString(file).contains(String.valueOf(STRENGTH));
    } catch (IOException e) {
      return false;
    }
  }

  private static void photo(String name, int width) throws IOException {
    BufferedImage image = new BufferedImage(width, 400, BufferedImage.TYPE_INT_RGB);
    ImageIO.write(
        image, "png", Files.createDirectories(killed.resolve("camera")).resolve(name).toFile());
  }

  @BeforeAll
  static void kill() throws Exception {
    Graphics.require();
    WindowRobot.requireDisplay();
    TreeFiles.write(Example.LARCH.read().document(), killed.resolve("bench.tree.json"));
    photo("front.png", 300);
    photo("side.png", 200);
    Child child =
        Child.start(killed.resolve("home"), List.of(), RescuePhotosTest.class, killed.toString());
    assertThat(child.line()).isEqualTo("kept");
    child.kill();
  }

  /** The program starts again on what the killed one left. */
  @BeforeEach
  void startAgain() throws IOException {
    Path home = Files.createDirectories(folder.resolve("home").resolve("recovery"));
    try (Stream<Path> left = Files.list(killed.resolve("home").resolve("recovery"))) {
      for (Path one : left.toList()) {
        Files.copy(one, home.resolve(one.getFileName()));
      }
    }
    test = TestDesk.whole(folder.resolve("home"));
    test.resize(1280, 860);
  }

  @AfterEach
  void close() {
    TestDesk.closeAll();
  }

  private void recover() {
    SwingUtilities.invokeLater(() -> new Rescue(test.desk, test.window).offer());
    test.robot.find("question");
    test.robot.click("answer.recover");
    test.robot.waitFor("the question is gone", () -> !test.robot.isThere("question"));
  }

  private void lookAtPhotos(MainWindow window) {
    WindowRobot.doOnEvents(() -> window.choose(1));
    WindowRobot.doOnEvents(((AbstractButton) part(window, "measure.page.photos"))::doClick);
    JTextArea state = (JTextArea) part(window, "photo.state");
    test.robot.waitFor("the photo is there", () -> state.getText().startsWith("Shown"));
  }

  private static Component part(MainWindow window, String name) {
    return WindowRobot.onEvents(
        () ->
            Parts.all(window.getContentPane()).stream()
                .filter(part -> name.equals(part.getName()))
                .findFirst()
                .orElseThrow());
  }

  @Test
  void photosThatWereNotSaved_areThereWithTheirPlaces_andAreSaved() throws Exception {
    recover();
    test.robot.waitFor("it is open", () -> backdrops(test).size() == 2);
    List<Backdrop> both = WindowRobot.onEvents(() -> backdrops(test));
    assertThat(both.get(0).metresPerPixel()).isEqualTo(OptionalDouble.of(0.002));
    assertThat(both.get(0).baseX()).isEqualTo(120);
    assertThat(both.get(1).seenFrom()).isEqualTo(Math.toRadians(90));
    assertThat(both.get(1).shown()).isEqualTo(STRENGTH);
    lookAtPhotos(test.window);

    Path file = killed.resolve("bench.tree.json");
    assertThat(TreeFiles.read(file).document().backdrops()).isEmpty();
    test.robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_S);
    test.robot.waitFor("it is saved", () -> test.window.workspace().history().isSaved());
    assertThat(TreeFiles.read(file).document().backdrops()).isEqualTo(both);
    assertThat(file.resolveSibling(both.get(0).photo()))
        .hasSameBinaryContentAs(killed.resolve("camera/front.png"));
    assertThat(file.resolveSibling(both.get(1).photo()))
        .hasSameBinaryContentAs(killed.resolve("camera/side.png"));
    test.robot.waitFor(
        "nothing is kept any more",
        () -> Recovery.leftBehind(folder.resolve("home").resolve("recovery")).isEmpty());
  }

  /** What is in the window stays there, and the photos are in the window beside it. */
  @Test
  void besideOtherWork_photosAreThereToo() {
    test.change("Other work");
    recover();
    test.robot.waitFor("another window", () -> test.desk.windows().size() == 2);
    MainWindow second = WindowRobot.onEvents(() -> test.desk.windows().get(1));
    assertThat(WindowRobot.onEvents(() -> test.window.workspace().document().tree().name()))
        .isEqualTo("Other work");
    lookAtPhotos(second);
    assertThat(WindowRobot.onEvents(() -> second.workspace().notice().orElseThrow().words()))
        .doesNotContain("missing");
  }
}
