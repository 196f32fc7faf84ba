// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.viewer.window.look.Command;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Keys;
import boughwright.viewer.window.look.Prose;
import boughwright.viewer.window.look.Shade;
import boughwright.viewer.window.look.Theme;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** The controls under the tree: from where it is seen, and in which pose. */
final class Strip {
  private static final List<String> BUTTONS =
      List.of("view.front", "view.back", "view.left", "view.right", "view.top", "view.fit");

  /** On a canvas that is lower the words stand beside the slider [user pixels]. */
  private static final int LOW = 420;

  private final Showing showing;
  private final PoseSlider slider;
  private final Prose remark = Controls.prose("");
  private final Prose hint = Controls.prose("");
  private boolean low;
  private final JPanel panel =
      new JPanel(new MigLayout("insets 8, gap 6 6, fillx, hidemode 3, wrap 1", "[grow,fill]", ""));

  Strip(Showing showing, List<Command> commands) {
    this.showing = showing;
    slider = new PoseSlider(showing);
    remark.setName("canvas.remark");
    hint.setName("canvas.hint");
    hint.setVisible(false);
    panel.setName("canvas.strip");
    JPanel row = new JPanel(new MigLayout("insets 0, gap 6 0, fillx", "", "[]"));
    row.setOpaque(false);
    for (String id : BUTTONS) {
      commands.stream()
          .filter(command -> command.id().equals(id))
          .forEach(command -> row.add(button(command), "wmin pref, growx, pushx, hmin 36"));
    }
    panel.add(hint, "wmin 0");
    panel.add(remark, "wmin 0");
    panel.add(slider.component());
    panel.add(row);
    follow();
  }

  private static JButton button(Command command) {
    JButton button = Controls.button(command.name());
    Controls.named(button, "canvas." + command.id().substring("view.".length()), command.name());
    button.setToolTipText(
        command.tip() + command.key().map(key -> "  (" + Keys.words(key) + ")").orElse(""));
    button.getAccessibleContext().setAccessibleDescription(command.tip());
    button.setMargin(new java.awt.Insets(6, 6, 6, 6));
    button.addActionListener(event -> command.run().run());
    return button;
  }

  /** Follows how high the canvas is as a whole [user pixels]. */
  void fit(int height) {
    boolean isLow = height < LOW * Theme.textSize().percent() / 100;
    if (isLow != low) {
      low = isLow;
      slider.layOut(low);
    }
  }

  JComponent component() {
    return panel;
  }

  void follow() {
    slider.follow();
    remark.say(
        showing.remark(), showing.stops().trouble().isPresent() ? Shade.CAUTION : Shade.QUIET);
    remark.setVisible(!showing.remark().isBlank());
  }

  /** Says what a tool does; blank for nothing. */
  void hint(String words) {
    hint.say(words, Shade.INK);
    hint.setVisible(!words.isBlank());
  }
}
