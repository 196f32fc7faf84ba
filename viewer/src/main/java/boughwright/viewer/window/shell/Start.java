// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import boughwright.modeller.file.TreeFile;
import boughwright.modeller.problem.InputException;
import boughwright.viewer.window.shell.kept.HomeFolder;
import boughwright.viewer.window.shell.kept.Settings;
import boughwright.viewer.window.shell.kept.SettingsFile;
import java.awt.Desktop;
import java.awt.EventQueue;
import java.awt.GraphicsEnvironment;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;

/** Starts the window. */
public final class Start {
  private Start() {}

  /**
   * A tree to open.
   *
   * @param tree what was read
   * @param file where from
   * @param plan the plan to work on; empty for the first
   */
  public record Given(TreeFile tree, Path file, Optional<String> plan) {
    public Given {
      Objects.requireNonNull(tree, "tree");
      Objects.requireNonNull(file, "file");
      Objects.requireNonNull(plan, "plan");
    }
  }

  /** Whether this process has a screen to show a window on. */
  public static boolean hasDisplay() {
    return !GraphicsEnvironment.isHeadless() && hasScreen();
  }

  private static boolean hasScreen() {
    try {
      return GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices().length > 0;
    } catch (RuntimeException | Error e) {
      // a display is named that nobody answers at
      return false;
    }
  }

  /**
   * Opens the window and returns when the last one is closed.
   *
   * @param given a tree to open; empty for the one worked on last
   * @throws InputException if there is nothing that can be opened
   * @throws InterruptedException if the waiting is stopped
   */
  public static void window(Optional<Given> given) throws InputException, InterruptedException {
    Path home = HomeFolder.ofProcess();
    Settings settings = new SettingsFile(home).read();
    AtomicReference<Desk> desk = new AtomicReference<>();
    AtomicReference<InputException> refused = new AtomicReference<>();
    try {
      EventQueue.invokeAndWait(
          () -> {
            try {
              desk.set(new Desk(home, settings, new OwnParts()));
              begin(desk.get(), given);
            } catch (InputException e) {
              refused.set(e);
            }
          });
    } catch (InvocationTargetException e) {
      throw new IllegalStateException("the window did not open", e.getCause());
    }
    if (refused.get() != null) {
      throw refused.get();
    }
    desk.get().await();
  }

  private static void begin(Desk desk, Optional<Given> given) throws InputException {
    catchAll(desk);
    Opened first = given.isPresent() ? opened(given.get()) : desk.begin();
    boolean firstStart = given.isEmpty() && !desk.settings().tourSeen();
    MainWindow window = desk.open(first);
    given.flatMap(Given::plan).ifPresent(window.workspace()::choosePlan);
    EventQueue.invokeLater(() -> welcome(desk, window, firstStart));
  }

  private static Opened opened(Given given) {
    Path whole = given.file().toAbsolutePath().normalize();
    return Opened.read(given.tree(), whole, Fingerprint.of(whole));
  }

  private static void welcome(Desk desk, MainWindow window, boolean firstStart) {
    new Rescue(desk, window).offer();
    if (firstStart) {
      new StartSheet(window).show();
      desk.change(Settings::withTourSeen);
      if (window.isShowing()) {
        Tour.start(window, desk);
      }
    }
  }

  private static void catchAll(Desk desk) {
    boolean traced = "1".equals(System.getenv("BOUGHWRIGHT_TRACE"));
    Thread.setDefaultUncaughtExceptionHandler(
        (thread, e) -> {
          if (traced) {
            e.printStackTrace();
          }
          EventQueue.invokeLater(() -> desk.defect(e));
        });
    if (Desktop.isDesktopSupported()
        && Desktop.getDesktop().isSupported(Desktop.Action.APP_QUIT_HANDLER)) {
      Desktop.getDesktop()
          .setQuitHandler(
              (event, response) -> {
                response.cancelQuit();
                desk.quit();
              });
    }
  }
}
