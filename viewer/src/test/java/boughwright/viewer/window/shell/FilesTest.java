// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.edit.TreeEdits;
import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.plan.Document;
import boughwright.viewer.window.OnScreen;
import boughwright.viewer.window.WindowRobot;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.event.KeyEvent;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JMenuItem;
import javax.swing.JTextField;
import javax.swing.TransferHandler;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Opening, saving and closing, by mouse and keyboard. */
@OnScreen
class FilesTest {
  @TempDir Path folder;

  private TestDesk test;
  private WindowRobot robot;

  @BeforeEach
  void open() {
    WindowRobot.requireDisplay();
    test = new TestDesk(folder.resolve("home"), new PlainParts());
    robot = test.robot;
  }

  @AfterEach
  void close() {
    TestDesk.closeAll();
  }

  private Document document() {
    return WindowRobot.onEvents(() -> test.window.workspace().document());
  }

  private String title() {
    return WindowRobot.onEvents(test.window::getTitle);
  }

  private Path write(String name, String called) throws Exception {
    Path file = folder.resolve(name);
    Document changed = TreeEdits.name(called).of(Example.LARCH.read().document());
    TreeFiles.write(changed, file);
    return file;
  }

  private void answerFile(Path file) {
    robot.find("file.chooser");
    JTextField field =
        (JTextField)
            robot.find(
                "the name of the file",
                part -> part instanceof JTextField && part.getParent() != null && inChooser(part));
    robot.click(field);
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_A);
    WindowRobot.doOnEvents(() -> field.setText(file.toString()));
    robot.keys(KeyEvent.VK_ENTER);
    robot.waitFor("the files are gone", () -> !robot.isThere("file.chooser"));
  }

  private static boolean inChooser(java.awt.Component part) {
    for (java.awt.Component up = part; up != null; up = up.getParent()) {
      if ("file.chooser".equals(up.getName())) {
        return true;
      }
    }
    return false;
  }

  @Test
  void anOpenedFile_isShownByNameAndFile() throws Exception {
    Path file = write("mine.tree.json", "Bench larch");
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_O);
    answerFile(file);
    robot.waitFor("it is open", () -> title().equals("Bench larch \u2014 mine.tree.json"));
  }

  @Test
  void saveAs_writesTheDocumentAndClearsTheMark() throws Exception {
    test.change("Mine");
    assertThat(title()).endsWith("not saved");
    Path file = folder.resolve("kept.tree.json");
    robot.menu("fa");
    answerFile(file);
    robot.waitFor("it is saved", () -> title().equals("Mine \u2014 kept.tree.json"));
    assertThat(TreeFiles.read(file).document()).isEqualTo(document());
  }

  @Test
  void aFileChangedByAnother_isNotReplacedUnasked() throws Exception {
    Path file = write("mine.tree.json", "First");
    WindowRobot.doOnEvents(() -> FileCommands.openFile(test.window, file));
    test.change("Second");
    Path other = write("other.tree.json", "From elsewhere");
    Files.copy(other, file, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_S);
    robot.find("question");
    robot.keys(KeyEvent.VK_ESCAPE);
    robot.waitFor("the question is gone", () -> !robot.isThere("question"));
    assertThat(TreeFiles.read(file).document().tree().name()).isEqualTo("From elsewhere");
    assertThat(title()).endsWith("not saved");
  }

  @Test
  void closing_asksOnce_andCancelKeepsTheWindow() {
    test.change("Mine");
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_W);
    robot.find("question");
    robot.keys(KeyEvent.VK_ESCAPE);
    robot.waitFor("the question is gone", () -> !robot.isThere("question"));
    assertThat(test.window.isShowing()).isTrue();
    assertThat(document().tree().name()).isEqualTo("Mine");
  }

  @Test
  void closing_withoutSaving_endsTheProgram() throws Exception {
    test.change("Mine");
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_W);
    robot.find("question");
    robot.keys(KeyEvent.VK_ALT, KeyEvent.VK_D);
    robot.waitFor("the window is gone", () -> !test.window.isShowing());
    test.desk.await();
    assertThat(test.desk.windows()).isEmpty();
  }

  @Test
  void anUntouchedExample_closesUnasked() {
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_W);
    robot.waitFor("the window is gone", () -> !test.window.isShowing());
    assertThat(robot.isThere("question")).isFalse();
  }

  @Test
  void quitting_asksOnceForAllWindows() {
    test.change("One");
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT, KeyEvent.VK_N);
    robot.waitFor("there are two windows", () -> test.desk.windows().size() == 2);
    MainWindow second = WindowRobot.onEvents(() -> test.desk.windows().get(1));
    robot.waitFor("the second has the focus", second::isFocused);
    WindowRobot.doOnEvents(() -> second.workspace().edit(TreeEdits.name("Two")));
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_Q);
    robot.find("question");
    robot.keys(KeyEvent.VK_ALT, KeyEvent.VK_D);
    robot.waitFor("both are gone", () -> test.desk.windows().isEmpty());
    assertThat(test.window.isShowing()).isFalse();
    assertThat(second.isShowing()).isFalse();
  }

  @Test
  void aFaultyFile_isToldLineByLine_andNothingChanges() throws Exception {
    Path file = folder.resolve("bad.tree.json");
    Files.writeString(
        file,
        Files.readString(write("good.tree.json", "Good"))
            .replaceFirst("\"caliper_start_mm\": [0-9.]+", "\"caliper_start_mm\": -4")
            .replaceFirst("\"kind\": \"branch\"", "\"kind\": \"twig\""));
    Document before = document();
    javax.swing.SwingUtilities.invokeLater(() -> FileCommands.openFile(test.window, file));
    assertThat(robot.words("trouble.0")).contains("bad.tree.json");
    assertThat(robot.words("trouble.1")).contains("bad.tree.json");
    robot.keys(KeyEvent.VK_ESCAPE);
    assertThat(document()).isSameAs(before);
  }

  @Test
  void aFolderThatRefuses_isToldAndTheDocumentStaysUnsaved() throws Exception {
    test.change("Mine");
    Path file = folder.resolve("taken").resolve("no").resolve("x.tree.json");
    Files.writeString(folder.resolve("taken"), "a file where a folder is wanted");
    WindowRobot.doOnEvents(() -> test.window.workspace().saved(file));
    test.change("Mine again");
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_S);
    assertThat(robot.words("trouble.0")).contains("x.tree.json").doesNotContain("\n");
    robot.keys(KeyEvent.VK_ESCAPE);
    assertThat(title()).endsWith("not saved");
  }

  @Test
  void aDroppedFile_isOpened() throws Exception {
    Path file = write("dropped.tree.json", "Dropped larch");
    TransferHandler.TransferSupport support =
        new TransferHandler.TransferSupport(test.window.getRootPane(), files(file));
    boolean taken =
        WindowRobot.onEvents(
            () -> test.window.getRootPane().getTransferHandler().importData(support));
    assertThat(taken).isTrue();
    robot.waitFor("it is open", () -> title().startsWith("Dropped larch"));
  }

  private static Transferable files(Path file) {
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

  @Test
  void aRecentFile_isOpenedFromTheMenu() throws Exception {
    Path file = write("mine.tree.json", "Bench larch");
    WindowRobot.doOnEvents(() -> FileCommands.openFile(test.window, file));
    robot.menu("fe");
    robot.click("start.hornbeam");
    robot.waitFor("the hornbeam is back", () -> title().startsWith("Hornbeam"));
    robot.menu("fr");
    JMenuItem item = robot.find("menu.file.recent.1", JMenuItem.class);
    assertThat(item.getText()).contains("mine.tree.json");
    robot.click(item);
    robot.waitFor("it is open again", () -> title().startsWith("Bench larch"));
  }

  @Test
  void aTapeSheet_becomesATreeThatIsNotSaved() throws Exception {
    Path sheet = folder.resolve("own.sheet.csv");
    Files.copy(Path.of("..", "examples", "larch.sheet.csv"), sheet);
    WindowRobot.doOnEvents(() -> FileCommands.openFile(test.window, sheet));
    assertThat(title()).startsWith("Larch").endsWith("not saved");
  }

  @Test
  void aNewTree_startsWithOneTrunkSegment() {
    robot.keys(KeyEvent.VK_CONTROL, KeyEvent.VK_N);
    robot.fill("new-tree.name", "Bench pine");
    robot.waitFor("the sheet is gone", () -> !robot.isThere("new-tree"));
    assertThat(document().tree().name()).isEqualTo("Bench pine");
    assertThat(document().tree().segments()).hasSize(1);
  }
}
