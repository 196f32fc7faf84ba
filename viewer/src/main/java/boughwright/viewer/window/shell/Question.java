// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import boughwright.viewer.window.look.Controls;
import java.awt.Window;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import javax.swing.JButton;

/**
 * One question with a few answers. Esc and closing give none.
 *
 * @param title the question
 * @param words what hangs on it
 * @param answers what can be said, the usual answer first
 */
record Question(String title, String words, List<Answer> answers) {
  private static final int WIDTH = 560;

  /**
   * An answer.
   *
   * @param id what it is called inside, such as {@code save}
   * @param words words on its button
   * @param mnemonic letter that gives it
   */
  record Answer(String id, String words, char mnemonic) {}

  static final Answer CANCEL = new Answer("cancel", "Cancel", 'C');

  Question {
    answers = List.copyOf(answers);
  }

  /** Asks and waits. */
  Optional<String> ask(Window over) {
    Sheet sheet = new Sheet(over, "question", title, true);
    AtomicReference<String> said = new AtomicReference<>();
    sheet.add(Controls.prose(words));
    sheet.buttons(answers.stream().map(answer -> button(sheet, answer, said)).toList());
    sheet.show(WIDTH, 0);
    return Optional.ofNullable(said.get()).filter(id -> !id.equals(CANCEL.id()));
  }

  private static JButton button(Sheet sheet, Answer answer, AtomicReference<String> said) {
    JButton button = Controls.button(answer.words());
    button.setName("answer." + answer.id());
    button.setMnemonic(answer.mnemonic());
    button.addActionListener(
        event -> {
          said.set(answer.id());
          sheet.close();
        });
    return button;
  }
}
