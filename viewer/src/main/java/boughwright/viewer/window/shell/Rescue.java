// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import boughwright.modeller.file.LeftBehind;
import boughwright.modeller.file.Recovery;
import boughwright.modeller.problem.InputException;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Offers, at the start, what a program left behind that ended without being asked. */
final class Rescue {
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

  private final Desk desk;
  private final MainWindow window;

  Rescue(Desk desk, MainWindow window) {
    this.desk = desk;
    this.window = window;
  }

  /** Asks about each tree that was left behind, the newest first. */
  void offer() {
    for (LeftBehind left : Recovery.leftBehind(desk.recovery())) {
      offer(left);
    }
  }

  private void offer(LeftBehind left) {
    Optional<String> answer =
        new Question(
                named(left) + " was not saved",
                "The program ended on "
                    + TIME.format(left.at().atZone(ZoneId.systemDefault()))
                    + " before this was saved"
                    + left.file().map(file -> " to " + file.getFileName()).orElse("")
                    + ". Recovering opens it as it was then; no file is changed.",
                List.of(
                    new Question.Answer("recover", "Recover", 'R'),
                    new Question.Answer("later", "Leave for later", 'L'),
                    new Question.Answer("discard", "Discard", 'D')))
            .ask(window);
    switch (answer.orElse("later")) {
      case "recover" -> recover(left);
      case "discard" -> discard(left);
      default -> {
        // it is offered again at the next start
      }
    }
  }

  private static String named(LeftBehind left) {
    return left.name().isEmpty() ? "A tree" : FileWork.shortened(left.name());
  }

  private void discard(LeftBehind left) {
    Optional<String> sure =
        new Question(
                "Discard " + named(left) + "?",
                "What was not saved of it is gone then. This cannot be undone.",
                List.of(
                    new Question.Answer("keep", "Keep it", 'K'),
                    new Question.Answer("discard", "Discard", 'D')))
            .ask(window);
    if (sure.equals(Optional.of("discard"))) {
      left.discard();
    }
  }

  private void recover(LeftBehind left) {
    try {
      Optional<LeftBehind.Taken> taken = left.take();
      if (taken.isPresent()) {
        open(taken.get());
      }
    } catch (InputException e) {
      Trouble.tell(window, named(left) + " cannot be recovered", e.problems());
    }
  }

  private void open(LeftBehind.Taken taken) {
    Opened opened = Opened.recovered(taken);
    if (window.workspace().history().isSaved()) {
      window.files().take(opened);
      window.keeping().goOnWith(taken.recovery());
    } else {
      desk.open(opened);
    }
  }
}
