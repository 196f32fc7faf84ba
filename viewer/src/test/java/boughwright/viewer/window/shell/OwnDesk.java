// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import boughwright.modeller.history.History;
import boughwright.modeller.plan.Document;
import boughwright.viewer.window.WindowRobot;
import boughwright.viewer.window.canvas.TreeCanvas;
import boughwright.viewer.window.look.ModePanel;
import boughwright.viewer.window.shell.kept.Settings;
import boughwright.viewer.window.work.Workspace;
import java.awt.Component;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;

/** The program's own window with all its modes, for tests of other rooms. */
public final class OwnDesk {
  private final TestDesk test;

  /**
   * @param home folder of its settings
   */
  public OwnDesk(Path home) {
    this(home, settings -> settings);
  }

  /**
   * @param liked what of the first settings is to be otherwise
   */
  public OwnDesk(Path home, UnaryOperator<Settings> liked) {
    test = new TestDesk(home, new OwnParts(), liked);
  }

  public WindowRobot robot() {
    return test.robot;
  }

  public MainWindow window() {
    return test.window;
  }

  public Workspace workspace() {
    return test.window.workspace();
  }

  public TreeCanvas canvas() {
    return (TreeCanvas) test.window.parts().canvas();
  }

  /** The panel of a mode, counted from 0. */
  public ModePanel panel(int mode) {
    return test.window.parts().panels().get(mode);
  }

  /** What the mouse draws on. */
  public Component view() {
    return robot().find("canvas.view");
  }

  /** Puts a document that no file holds into the window. */
  public void open(Document document) {
    WindowRobot.doOnEvents(
        () -> workspace().open(History.unsaved(document), Optional.<Path>empty()));
  }

  /** Opens a file as from the menu. */
  public void open(Path file) {
    WindowRobot.doOnEvents(() -> FileCommands.openFile(test.window, file));
  }

  /** Answers the dialog that asks for a file. */
  public void answerFile(Path file) {
    Component chooser = robot().find("file.chooser");
    JTextField field =
        (JTextField)
            robot()
                .find(
                    "the name of the file",
                    part ->
                        part instanceof JTextField
                            && SwingUtilities.isDescendingFrom(part, chooser));
    robot().click(field);
    robot().keys(KeyEvent.VK_CONTROL, KeyEvent.VK_A);
    WindowRobot.doOnEvents(() -> field.setText(file.toString()));
    robot().keys(KeyEvent.VK_ENTER);
    robot().waitFor("the files are gone", () -> !robot().isThere("file.chooser"));
  }

  /** Lets what is open go without saving it, when that is asked. */
  public void answerNotToSave() {
    robot().find("question");
    robot().keys(KeyEvent.VK_ALT, KeyEvent.VK_D);
    robot().waitFor("the question is gone", () -> !robot().isThere("question"));
  }

  /** Resizes the window and waits until it is laid out. */
  public void resize(int width, int height) {
    test.resize(width, height);
  }

  /** Leaves the window without asking. */
  public void close() {
    TestDesk.closeAll();
  }
}
