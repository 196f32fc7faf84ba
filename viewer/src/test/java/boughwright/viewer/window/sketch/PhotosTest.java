// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.edit.BackdropEdits;
import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.plan.Document;
import boughwright.modeller.tree.Backdrop;
import boughwright.viewer.window.OnScreen;
import boughwright.viewer.window.WindowRobot;
import boughwright.viewer.window.work.Notice;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import javax.imageio.ImageIO;
import javax.swing.JSlider;
import javax.swing.TransferHandler.TransferSupport;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Photos in the window: dropped, kept with the tree, taken along, refused. */
@OnScreen
class PhotosTest {
  private static final Path CASES =
      Path.of("src", "test", "resources", "boughwright", "viewer", "picture", "photos");

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

  private Path photo(String name) throws Exception {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    ImageIO.write(new BufferedImage(300, 400, BufferedImage.TYPE_INT_RGB), "png", file.toFile());
    return file;
  }

  private void drop(Path file) {
    TransferSupport support = new TransferSupport(frame.frame.getRootPane(), dropped(file));
    assertThat(
            WindowRobot.<Boolean>onEvents(
                () -> frame.frame.getRootPane().getTransferHandler().importData(support)))
        .isTrue();
    robot.settle();
  }

  private static Transferable dropped(Path file) {
    List<File> list = List.of(file.toFile());
    return new Transferable() {
      @Override
      public DataFlavor[] getTransferDataFlavors() {
        return new DataFlavor[] {DataFlavor.javaFileListFlavor};
      }

      @Override
      public boolean isDataFlavorSupported(DataFlavor flavor) {
        return flavor.equals(DataFlavor.javaFileListFlavor);
      }

      @Override
      public Object getTransferData(DataFlavor flavor) {
        return list;
      }
    };
  }

  private Document document() {
    return WindowRobot.onEvents(frame.workspace::document);
  }

  private List<Backdrop> backdrops() {
    return document().backdrops();
  }

  private void addedByDrop(Path file) {
    int before = backdrops().size();
    drop(file);
    robot.waitFor("it is added", () -> frame.workspace.document().backdrops().size() == before + 1);
  }

  private void save(Path to) {
    robot.menu("fa");
    frame.desk.answerFile(to);
    robot.waitFor("it is saved", () -> frame.workspace.file().filter(to::equals).isPresent());
  }

  @Test
  void aDroppedPhoto_isKeptBesideTheTree_andTakenAlongToAnotherFolder() throws Exception {
    Path from = photo("camera/front.png");
    robot.keys(KeyEvent.VK_ALT, KeyEvent.VK_1);
    addedByDrop(from);
    robot.find("photo.list");
    robot.fill("photo.height", "80 cm");
    robot.fill("photo.base-x", "120");
    JSlider strength = robot.find("photo.strength", JSlider.class);
    WindowRobot.doOnEvents(() -> strength.setValue(35));
    Files.createDirectories(folder.resolve("one"));
    Path first = folder.resolve("one").resolve("t.tree.json");
    save(first);
    Backdrop kept = backdrops().get(0);
    assertThat(kept.metresPerPixel()).isEqualTo(OptionalDouble.of(0.002));
    assertThat(kept.baseX()).isEqualTo(120);
    assertThat(kept.shown()).isEqualTo(0.35);
    assertThat(first.resolveSibling(kept.photo())).hasSameBinaryContentAs(from);
    assertThat(TreeFiles.read(first).document()).isEqualTo(document());

    Files.createDirectories(folder.resolve("two"));
    Path second = folder.resolve("two").resolve("u.tree.json");
    save(second);
    assertThat(second.resolveSibling(kept.photo())).hasSameBinaryContentAs(from);
  }

  @Test
  void aTreeWhosePhotoIsGone_opens_saysSoInOneLine_andSavesAgain() throws Exception {
    Document lost =
        BackdropEdits.add(
                new Backdrop("lost.jpg", 0, OptionalDouble.of(1e-3), 10, 20, 0.5, Map.of()))
            .of(Sketches.small());
    Path file = folder.resolve("t.tree.json");
    TreeFiles.write(lost, file);

    robot.menu("fo");
    frame.desk.answerFile(file);
    frame.desk.answerNotToSave();

    robot.waitFor("it is told", () -> robot.words("status.notice").contains("lost.jpg is missing"));
    assertThat(robot.words("status.notice")).doesNotContain("\n");
    robot.click("measure.page.tree");
    robot.fill("measure.name", "Another name");
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_S);
    robot.waitFor("it is saved", () -> frame.workspace.history().isSaved());
    assertThat(TreeFiles.read(file).document().backdrops()).isEqualTo(lost.backdrops());
    assertThat(TreeFiles.read(file).document().tree().name()).isEqualTo("Another name");
  }

  @Test
  void whatIsDoneToAphoto_isUndoneAndDoneAgain() throws Exception {
    Document start = document();
    addedByDrop(photo("front.png"));
    robot.fill("photo.height", "40 cm");
    robot.fill("photo.azimuth", "90");
    robot.click("photo.remove");
    robot.waitFor("it is out", () -> frame.workspace.document().backdrops().isEmpty());
    for (int i = 0; i < 4; i++) {
      WindowRobot.doOnEvents(frame.workspace::undo);
    }
    assertThat(document()).isEqualTo(start);
    for (int i = 0; i < 3; i++) {
      WindowRobot.doOnEvents(frame.workspace::redo);
    }
    assertThat(backdrops()).hasSize(1);
    assertThat(backdrops().get(0).metresPerPixel()).isEqualTo(OptionalDouble.of(0.001));
    assertThat(robot.words("photo.state")).doesNotContain("missing");
  }

  @Test
  void everyPhoto_isShownOrRefusedInOneLine_asItsCaseSays() throws Exception {
    for (String row : Files.readAllLines(CASES.resolve("INDEX.csv"))) {
      String[] cells = row.split(",", 4);
      if (cells.length < 4 || !cells[1].equals("image")) {
        continue;
      }
      Document before = document();
      WindowRobot.doOnEvents(() -> frame.workspace.say(new Notice(Notice.Kind.DONE, "waits")));
      drop(CASES.resolve(cells[0]));
      if (cells[2].equals("reject")) {
        robot.waitFor(cells[0] + " is refused", () -> refused(cells[0]));
        assertThat(document()).isEqualTo(before);
        assertThat(robot.words("status.notice")).doesNotContain("\n", "Exception");
      } else {
        int many = before.backdrops().size() + 1;
        robot.waitFor(
            cells[0] + " is added", () -> frame.workspace.document().backdrops().size() == many);
        robot.waitFor("it is shown", () -> !robot.words("photo.state").contains("missing"));
      }
    }
    assertThat(backdrops()).hasSizeGreaterThan(10);
  }

  private boolean refused(String file) {
    return frame
        .workspace
        .notice()
        .filter(said -> said.words().contains(Path.of(file).getFileName().toString()))
        .isPresent();
  }
}
