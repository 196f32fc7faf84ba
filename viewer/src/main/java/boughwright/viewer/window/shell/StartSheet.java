// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Theme;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.swing.JButton;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** What there is to begin with: the examples, an own tree, a file. */
final class StartSheet {
  private static final int WIDTH = 620;

  private final MainWindow window;
  private final Sheet sheet;

  StartSheet(MainWindow window) {
    this.window = window;
    sheet = new Sheet(window, "start", "Which tree?", true);
  }

  void show() {
    sheet.add(
        Controls.prose(
            "Two invented trees come with the program. They open as copies, so try anything."));
    List<JButton> choices = new ArrayList<>();
    for (Example example : Example.values()) {
      JButton choice = Controls.button(example.words());
      choice.setName("start." + example.name().toLowerCase(Locale.ROOT));
      choice.setMnemonic(example.words().charAt(0));
      choice.getAccessibleContext().setAccessibleDescription(example.about());
      choice.addActionListener(event -> open(example));
      sheet.add(described(choice, example.about()));
      choices.add(choice);
    }
    JButton own = Controls.button("Measure my own\u2026");
    own.setName("start.own");
    own.setMnemonic('M');
    own.addActionListener(event -> then("file.new"));
    sheet.add(described(own, "Tape, caliper and a few minutes."));
    JButton file = Controls.button("Open a file\u2026");
    file.setName("start.file");
    file.setMnemonic('O');
    file.addActionListener(event -> then("file.open"));
    sheet.add(described(file, "A tree file you or somebody else saved."));
    sheet.buttons(List.of(sheet.closing("Close", 'C')));
    sheet.show(WIDTH, 0);
  }

  private static JPanel described(JButton button, String words) {
    JPanel row =
        new JPanel(
            new MigLayout(
                "insets 0, fillx, gapx 16",
                "[" + Theme.length(190) + "!,fill][grow,fill,0:pref]",
                "[center]"));
    row.setOpaque(false);
    row.add(button, "hmin " + Theme.length(44));
    row.add(Controls.prose(words), "wmin 0, growx");
    return row;
  }

  private void open(Example example) {
    sheet.close();
    window.files().open(example.words(), () -> Opened.example(example));
  }

  private void then(String command) {
    sheet.close();
    window.commands().run(command);
  }
}
