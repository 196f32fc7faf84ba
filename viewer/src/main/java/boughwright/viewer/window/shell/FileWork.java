// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import boughwright.modeller.edit.Edit;
import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Problem;
import boughwright.viewer.window.work.Notice;
import boughwright.viewer.window.work.Topic;
import boughwright.viewer.window.work.Workspace;
import java.awt.Window;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/** Opens trees into a window and saves the one that is in it. */
final class FileWork {
  private static final Question.Answer ELSEWHERE =
      new Question.Answer("elsewhere", "Save as\u2026", 'S');

  private final Window window;
  private final Workspace workspace;
  private final Consumer<Path> used;
  private Optional<Fingerprint> print;
  private boolean busy;

  /**
   * @param window the window to ask over
   * @param workspace what is open in it
   * @param print what its file held when it was opened
   * @param used told of each file that is opened or saved
   */
  FileWork(Window window, Workspace workspace, Optional<Fingerprint> print, Consumer<Path> used) {
    this.window = window;
    this.workspace = workspace;
    this.print = print;
    this.used = used;
  }

  /** Gets a tree from somewhere. */
  @FunctionalInterface
  interface Source {
    Opened get() throws InputException;
  }

  /**
   * Puts a tree in place of the one that is open, after asking what becomes of that.
   *
   * @return whether it is open now
   */
  boolean open(String what, Source source) {
    try {
      Waiting.Face face = new Waiting.Face(window, "Opening " + what, true);
      Optional<Opened> opened = waitFor(face, source::get);
      if (opened.isEmpty() || !mayLeave()) {
        return false;
      }
      take(opened.get());
      return true;
    } catch (InputException e) {
      Trouble.tell(window, what + " cannot be opened", e.problems());
      return false;
    }
  }

  private <T> Optional<T> waitFor(Waiting.Face face, Callable<T> work) throws InputException {
    busy = true;
    try {
      return Waiting.get(face, work);
    } finally {
      busy = false;
    }
  }

  /** Whether a file is being read or written, so that the window has to stay. */
  boolean isBusy() {
    return busy;
  }

  /** Puts a tree in place of the one that is open, which may go. */
  void take(Opened opened) {
    print = opened.print();
    workspace.photos().hold(opened.photos());
    workspace.open(opened.history(), opened.file());
    opened.file().ifPresent(used);
    welcome(opened);
  }

  /** Says that a tree is open, and what to look at in it. */
  void welcome(Opened opened) {
    if (opened.warnings().isEmpty()) {
      int segments = workspace.document().tree().segments().size();
      String many = segments == 1 ? "1 segment" : segments + " segments";
      workspace.say(
          new Notice(
              Notice.Kind.DONE, "Opened " + workspace.document().tree().name() + ", " + many));
    } else {
      workspace.say(
          new Notice(
              Notice.Kind.CAUTION,
              opened.warnings().stream().map(Problem::line).collect(Collectors.joining("\n"))));
    }
  }

  /** Whether what is open may go: it is saved, or the person saves it now or gives it up. */
  boolean mayLeave() {
    Typing.commit(window);
    if (workspace.history().isSaved()) {
      return true;
    }
    String name = workspace.document().tree().name();
    Optional<String> answer =
        new Question(
                "Save " + shortened(name) + "?",
                "It has changes that no file holds yet. Without saving they are gone.",
                List.of(
                    new Question.Answer("save", "Save", 'S'),
                    new Question.Answer("discard", "Do not save", 'D'),
                    Question.CANCEL))
            .ask(window);
    return answer.map(said -> said.equals("discard") || save()).orElse(false);
  }

  static String shortened(String name) {
    int most = 48;
    return name.length() <= most ? name : name.substring(0, most - 1) + "\u2026";
  }

  /**
   * Saves to the file of the document, or asks for one.
   *
   * @return whether a file holds it now
   */
  boolean save() {
    Typing.commit(window);
    Optional<Path> file = workspace.file();
    if (file.isEmpty()) {
      return saveAs();
    }
    Optional<Fingerprint> now = Fingerprint.of(file.get());
    if (now.isPresent() && !now.equals(print)) {
      return askChanged(file.get());
    }
    return write(file.get());
  }

  private boolean askChanged(Path file) {
    Optional<String> answer =
        new Question(
                file.getFileName() + " was changed by something else",
                "It is not as it was when you opened or saved it here. If you replace it, what it"
                    + " holds now is kept beside it, with a ~ at the end of its name.",
                List.of(
                    ELSEWHERE, new Question.Answer("replace", "Replace it", 'R'), Question.CANCEL))
            .ask(window);
    return answer.map(said -> said.equals("replace") ? write(file) : saveAs()).orElse(false);
  }

  /**
   * Asks for a file and saves there.
   *
   * @return whether a file holds it now
   */
  boolean saveAs() {
    Typing.commit(window);
    String name =
        workspace
            .file()
            .map(file -> file.getFileName().toString())
            .orElse(FilePick.nameFor(workspace.document().tree().name()));
    Optional<Path> to = FilePick.toSave(window, workspace.file(), name);
    return to.isPresent() && mayReplace(to.get()) && write(to.get());
  }

  private boolean mayReplace(Path to) {
    if (!Files.exists(to) || workspace.file().equals(Optional.of(to))) {
      return true;
    }
    return new Question(
            "Replace " + to.getFileName() + "?",
            "A file of that name is there already. It is kept beside it, with a ~ at the end of its"
                + " name.",
            List.of(new Question.Answer("replace", "Replace it", 'R'), Question.CANCEL))
        .ask(window)
        .isPresent();
  }

  /** What is on the disk now. */
  private record Saved(Document document, Optional<Fingerprint> print) {}

  private boolean write(Path to) {
    Document now = workspace.document();
    Optional<Path> before = workspace.file();
    try {
      Waiting.Face face = new Waiting.Face(window, "Saving " + to.getFileName(), false);
      Saved saved = waitFor(face, () -> write(now, before, to)).orElseThrow();
      print = saved.print();
      if (workspace.document() != now) {
        // Work that ended in between has changed it.
        return write(to);
      }
      if (!saved.document().equals(now)) {
        workspace.edit(new Edit("Name photos", document -> saved.document()));
      }
    } catch (InputException e) {
      return Trouble.offer(window, "Not saved", e.problems(), ELSEWHERE) && saveAs();
    }
    workspace.saved(to);
    used.accept(to);
    workspace.say(new Notice(Notice.Kind.DONE, "Saved " + to));
    return true;
  }

  private Saved write(Document now, Optional<Path> before, Path to) throws InputException {
    Document written = TreeFiles.write(now, to, workspace.photos().toWrite(now, before, to));
    return new Saved(written, Fingerprint.of(to));
  }

  /** Tells when the file or its state changes. */
  void onChange(Runnable run) {
    workspace.listen(
        topic -> {
          if (topic == Topic.FILE || topic == Topic.DOCUMENT || topic == Topic.OPENED) {
            run.run();
          }
        });
  }
}
