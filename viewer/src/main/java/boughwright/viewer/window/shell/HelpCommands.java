// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import boughwright.viewer.window.look.Command;
import boughwright.viewer.window.look.Explained;
import boughwright.viewer.window.look.Keys;
import boughwright.viewer.window.shell.WindowCommands.Face;
import boughwright.viewer.window.work.Notice;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.KeyStroke;

/** Help where it is needed. */
final class HelpCommands {
  private final MainWindow window;
  private final Desk desk;

  HelpCommands(MainWindow window, Desk desk) {
    this.window = window;
    this.desk = desk;
  }

  List<Command> all() {
    HelpSheets sheets = new HelpSheets(window);
    return List.of(
        face("explain", "Explain this number", 'E', "Says what the number in focus is and how sure")
            .does(this::explain),
        face("keys", "Keys", 'K', "All keys of this window").does(sheets::keys),
        face("cautions", "Cautions", 'C', "What can hurt you, and the law").does(sheets::cautions),
        face("tour", "First tour", 'T', "Five steps on the hornbeam").does(this::tour),
        face("notices", "All notices", 'N', "Everything that was said in this window")
            .does(sheets::notices),
        face("about", "About Boughwright", 'A', "Version and licences").does(sheets::about));
  }

  private static Face face(String id, String name, char mnemonic, String tip) {
    Optional<KeyStroke> key =
        id.equals("explain") ? Optional.of(Keys.plain(KeyEvent.VK_F1)) : Optional.empty();
    return new Face("help." + id, name, mnemonic, key, tip);
  }

  private void explain() {
    Component part = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    while (part != null && !(part instanceof Explained)) {
      part = part.getParent();
    }
    if (part instanceof Explained explained && explained.explanation().isPresent()) {
      explained.explain();
    } else {
      window
          .workspace()
          .say(new Notice(Notice.Kind.DONE, "Go to a number with Tab; then F1 explains it"));
    }
  }

  private void tour() {
    if (window.files().open("The hornbeam", () -> Opened.example(Example.HORNBEAM))) {
      Tour.start(window, desk);
    }
  }
}
