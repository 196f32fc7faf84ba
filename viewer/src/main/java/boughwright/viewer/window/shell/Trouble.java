// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import boughwright.modeller.problem.Problem;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Prose;
import java.awt.Window;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import javax.swing.JButton;
import javax.swing.JPanel;

/** Says what went wrong, each fault in a line of its own. */
final class Trouble {
  private static final int WIDTH = 720;
  private static final int MANY = 5;
  private static final int HIGH = 480;

  private Trouble() {}

  /** Says it and waits until it was read. */
  static void tell(Window over, String title, List<Problem> problems) {
    Sheet sheet = sheet(over, title, problems);
    sheet.buttons(List.of(sheet.closing("Close", 'C')));
    show(sheet, problems);
  }

  /**
   * Says it and offers a way out.
   *
   * @return whether the person takes that way
   */
  static boolean offer(Window over, String title, List<Problem> problems, Question.Answer way) {
    Sheet sheet = sheet(over, title, problems);
    AtomicBoolean taken = new AtomicBoolean();
    JButton button = Controls.button(way.words());
    button.setName("answer." + way.id());
    button.setMnemonic(way.mnemonic());
    button.addActionListener(
        event -> {
          taken.set(true);
          sheet.close();
        });
    sheet.buttons(List.of(button, sheet.closing("Close", 'C')));
    show(sheet, problems);
    return taken.get();
  }

  private static Sheet sheet(Window over, String title, List<Problem> problems) {
    Sheet sheet = new Sheet(over, "trouble", title, true);
    JPanel lines = Controls.column();
    for (int i = 0; i < problems.size(); i++) {
      Prose line = Controls.prose(problems.get(i).line());
      line.setName("trouble." + i);
      lines.add(line, "wmin 0, growx");
    }
    if (problems.size() < MANY) {
      sheet.add(lines);
    } else {
      sheet.addLarge(Controls.scrolling(lines));
    }
    return sheet;
  }

  private static void show(Sheet sheet, List<Problem> problems) {
    sheet.show(WIDTH, problems.size() < MANY ? 0 : HIGH);
  }
}
