// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import boughwright.modeller.problem.InputException;
import boughwright.viewer.window.look.Theme;
import boughwright.viewer.window.shell.kept.Settings;
import boughwright.viewer.window.shell.kept.SettingsFile;
import boughwright.viewer.window.work.Defect;
import boughwright.viewer.window.work.Notice;
import java.awt.EventQueue;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** All windows of the program and what they share. Belongs to the event thread. */
public final class Desk {
  private final PartsMaker maker;
  private final Path home;
  private final SettingsFile file;
  private final List<MainWindow> windows = new ArrayList<>();
  private final CountDownLatch empty = new CountDownLatch(1);
  private final ExecutorService disk = Executors.newSingleThreadExecutor(Desk::thread);
  private Settings settings;
  private boolean toldNotKept;

  /**
   * @param home folder of settings and recovery
   * @param settings the settings kept there
   * @param maker fills the windows
   */
  public Desk(Path home, Settings settings, PartsMaker maker) {
    this.home = home;
    this.settings = settings;
    this.maker = maker;
    file = new SettingsFile(home);
    Theme.apply(settings.tone(), settings.textSize());
  }

  private static Thread thread(Runnable run) {
    Thread thread = new Thread(run, "settings");
    thread.setDaemon(true);
    return thread;
  }

  PartsMaker maker() {
    return maker;
  }

  Path recovery() {
    return home.resolve("recovery");
  }

  public Settings settings() {
    return settings;
  }

  /** The windows that are open, the oldest first. */
  public List<MainWindow> windows() {
    return List.copyOf(windows);
  }

  /** Changes settings, in all windows at once, and keeps them. */
  void change(UnaryOperator<Settings> how) {
    Settings before = settings;
    settings = how.apply(before);
    if (settings.tone() != before.tone() || settings.textSize() != before.textSize()) {
      Theme.apply(settings.tone(), settings.textSize());
    }
    windows.forEach(
        window -> {
          window.workspace().use(settings.units());
          window.commands().refresh();
        });
    Settings now = settings;
    disk.execute(() -> keep(now));
  }

  private void keep(Settings now) {
    if (!file.write(now)) {
      EventQueue.invokeLater(this::tellNotKept);
    }
  }

  /** Says once that nothing is remembered; the work does not suffer from it. */
  private void tellNotKept() {
    if (!toldNotKept && !windows.isEmpty()) {
      toldNotKept = true;
      last()
          .workspace()
          .say(
              new Notice(
                  Notice.Kind.CAUTION,
                  home
                      + ": units, colours and recent files are not remembered, for nothing can be"
                      + " written there. Make room there or allow writing; your trees are not"
                      + " touched by this"));
    }
  }

  /** Remembers a file that was opened or saved. */
  void used(Path path) {
    change(known -> known.withRecent(path));
  }

  /** Opens a window with a tree in it. */
  public MainWindow open(Opened opened) {
    MainWindow window = new MainWindow(this, opened, settings.units());
    window.place(windows.isEmpty() ? Optional.empty() : Optional.of(last()));
    windows.add(window);
    opened.file().ifPresent(this::used);
    window.setVisible(true);
    return window;
  }

  private MainWindow last() {
    return windows.get(windows.size() - 1);
  }

  /** The tree to begin with: the last one that is still there, else the first example. */
  Opened begin() throws InputException {
    Optional<Path> recent = settings.recent().stream().filter(Files::isRegularFile).findFirst();
    if (recent.isPresent()) {
      try {
        return Opened.file(recent.get());
      } catch (InputException e) {
        settings = settings.withoutRecent(recent.get());
      }
    }
    return Opened.example(Example.HORNBEAM);
  }

  /** Closes a window, after asking about what is not saved; the last one ends the program. */
  void close(MainWindow window) {
    if (windows.contains(window) && !isBusy(window) && window.files().mayLeave()) {
      gone(window);
    }
  }

  private void gone(MainWindow window) {
    change(window::placed);
    windows.remove(window);
    window.leave();
    if (windows.isEmpty()) {
      end();
    }
  }

  private void end() {
    disk.shutdown();
    empty.countDown();
  }

  /** Whether a window has to wait for a file; the person is told. */
  private boolean isBusy(MainWindow window) {
    boolean busy = window.files().isBusy();
    if (busy) {
      window
          .workspace()
          .say(
              new Notice(
                  Notice.Kind.CAUTION,
                  "A file is still being read or written. Close the window after that"));
    }
    return busy;
  }

  /** Closes all windows, after asking once about all that is not saved. */
  void quit() {
    if (windows.stream().anyMatch(this::isBusy)) {
      return;
    }
    List<MainWindow> unsaved =
        windows.stream().filter(window -> !window.workspace().history().isSaved()).toList();
    boolean may =
        unsaved.isEmpty()
            || (unsaved.size() == 1 ? unsaved.get(0).files().mayLeave() : mayLeaveAll(unsaved));
    if (may) {
      windows().forEach(this::gone);
    }
  }

  private boolean mayLeaveAll(List<MainWindow> unsaved) {
    String names =
        unsaved.stream()
            .map(window -> FileWork.shortened(window.workspace().document().tree().name()))
            .collect(Collectors.joining("\n"));
    Optional<String> answer =
        new Question(
                "Save " + unsaved.size() + " trees?",
                "They have changes that no file holds yet:\n\n" + names,
                List.of(
                    new Question.Answer("save", "Save all", 'S'),
                    new Question.Answer("discard", "Do not save", 'D'),
                    Question.CANCEL))
            .ask(last());
    return answer
        .map(
            said ->
                said.equals("discard")
                    || unsaved.stream().allMatch(window -> window.files().save()))
        .orElse(false);
  }

  /** Tells of a defect that nobody caught, in the window that is used. */
  void defect(Throwable e) {
    Notice notice = new Notice(Notice.Kind.FAULT, Defect.words(e));
    windows.stream()
        .filter(MainWindow::isActive)
        .findFirst()
        .or(() -> windows.stream().findFirst())
        .ifPresent(window -> window.workspace().say(notice));
  }

  /**
   * Waits, on any other thread, until the last window is closed and the settings are kept.
   *
   * @throws InterruptedException if the waiting is stopped
   */
  public void await() throws InterruptedException {
    empty.await();
    disk.awaitTermination(2, TimeUnit.SECONDS);
  }
}
