// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import boughwright.viewer.window.WindowRobot;
import boughwright.viewer.window.shell.kept.Settings;
import java.awt.Window;
import java.nio.file.Path;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** A desk with one window on the hornbeam, for tests. */
public final class TestDesk {
  public final WindowRobot robot = new WindowRobot();
  final Desk desk;
  public final MainWindow window;

  /**
   * @param home folder of its settings
   * @param maker fills its windows
   */
  TestDesk(Path home, PartsMaker maker) {
    this(home, maker, settings -> settings);
  }

  TestDesk(Path home, PartsMaker maker, UnaryOperator<Settings> liked) {
    desk = WindowRobot.onEvents(() -> new Desk(home, liked.apply(Settings.FIRST), maker));
    window = WindowRobot.onEvents(() -> desk.open(Opened.example(Example.HORNBEAM)));
    robot.waitFor("the window has the focus", () -> window.isFocused());
  }

  /** A window with all its modes, on the hornbeam. */
  public static TestDesk whole(Path home) {
    return new TestDesk(home, new OwnParts());
  }

  /** Opens a file in the window, as from the menu. */
  public void openFile(Path file) {
    WindowRobot.doOnEvents(() -> FileCommands.openFile(window, file));
  }

  /** Leaves all windows as a person would who gives up what is not saved. */
  public static void closeAll() {
    WindowRobot.doOnEvents(
        () ->
            Stream.of(Window.getWindows())
                .filter(Window::isDisplayable)
                .filter(MainWindow.class::isInstance)
                .forEach(window -> ((MainWindow) window).leave()));
    WindowRobot.closeAll();
  }

  /** The example it began with, changed, so that it is not saved. */
  void change(String name) {
    WindowRobot.doOnEvents(
        () -> window.workspace().edit(boughwright.modeller.edit.TreeEdits.name(name)));
  }

  /** Resizes the window and lays it out. */
  public void resize(int width, int height) {
    WindowRobot.doOnEvents(
        () -> {
          window.setBounds(0, 0, width, height);
          // the toolkit does so too, once the screen has answered
          window.validate();
        });
    robot.waitFor(
        "it has its size", () -> window.getWidth() == width && window.getHeight() == height);
    robot.settle();
  }
}
