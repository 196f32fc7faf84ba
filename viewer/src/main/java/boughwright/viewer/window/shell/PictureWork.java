// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Place;
import boughwright.modeller.problem.Problem;
import boughwright.viewer.window.canvas.Snapshots;
import boughwright.viewer.window.work.Background;
import boughwright.viewer.window.work.Notice;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Has pictures drawn and saved while the window goes on working; what goes wrong is said once. */
final class PictureWork {
  private final MainWindow window;

  PictureWork(MainWindow window) {
    this.window = window;
  }

  /**
   * What a turntable is to be.
   *
   * @param views how many
   * @param size of each
   */
  record Round(int views, Snapshots.Size size) {}

  void save(Snapshots seen, Path file, Snapshots.Size size) {
    run(
        file,
        progress -> {
          seen.save(file, size);
          return "Saved " + file;
        });
  }

  void savePair(Snapshots seen, Path file, Snapshots.Size size) {
    run(
        file,
        progress -> {
          seen.savePair(file, size);
          return "Saved " + file;
        });
  }

  void saveTurntable(Snapshots seen, Path folder, Round round) {
    run(
        folder,
        progress -> {
          boolean made = make(folder);
          try {
            List<Path> views =
                seen.saveTurntable(folder, round.views(), round.size(), progress::part);
            return "Saved " + views.size() + " views in " + folder;
          } finally {
            if (made && isEmpty(folder)) {
              Files.deleteIfExists(folder);
            }
          }
        });
  }

  private void run(Path to, Background.Work<String> work) {
    window
        .jobs()
        .start(
            "Saving " + to.getFileName(),
            work,
            words -> window.workspace().say(new Notice(Notice.Kind.DONE, words)));
  }

  /** Whether a picture may take the place of what is there. */
  boolean mayReplace(Path file) {
    return !Files.exists(file)
        || new Question(
                "Replace " + file.getFileName() + "?",
                "A file of that name is there already. The picture takes its place.",
                List.of(new Question.Answer("replace", "Replace it", 'R'), Question.CANCEL))
            .ask(window)
            .isPresent();
  }

  /** Whether views may go into a folder; those that are there already would be written over. */
  boolean mayFill(Path folder) {
    if (!Files.isDirectory(folder) || isEmpty(folder)) {
      return true;
    }
    return new Question(
            "Put the views into " + folder.getFileName() + "?",
            "The folder is there already. Views of the same number in it are replaced; all else"
                + " in it stays.",
            List.of(new Question.Answer("replace", "Put them there", 'P'), Question.CANCEL))
        .ask(window)
        .isPresent();
  }

  /** Makes a folder and says whether it was not there before. */
  private static boolean make(Path folder) throws InputException {
    if (Files.isDirectory(folder)) {
      return false;
    }
    try {
      Files.createDirectory(folder);
      return true;
    } catch (IOException e) {
      throw new InputException(
          Problem.fault(
              Place.of(folder.toString()),
              "picture-folder",
              "the folder cannot be made",
              "Choose another place, or a folder that is there and may be written to"));
    }
  }

  private static boolean isEmpty(Path folder) {
    try (DirectoryStream<Path> there = Files.newDirectoryStream(folder)) {
      return !there.iterator().hasNext();
    } catch (IOException e) {
      return false;
    }
  }
}
