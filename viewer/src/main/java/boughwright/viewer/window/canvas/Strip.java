// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.viewer.window.look.Command;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Fold;
import boughwright.viewer.window.look.Keys;
import boughwright.viewer.window.look.Prose;
import boughwright.viewer.window.look.Shade;
import boughwright.viewer.window.look.Theme;
import java.awt.Dimension;
import java.awt.Insets;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JMenuItem;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/**
 * The controls under the tree: from where it is seen, and in which pose. Where there is little room
 * the views are behind one button, and a hint is its first sentence, where nothing else is told;
 * where there is hardly any, the tree comes before the hint.
 */
final class Strip {
  private static final List<String> VIEWS =
      List.of("view.front", "view.back", "view.left", "view.right", "view.top", "view.fit");

  /** Less height than this is little [user pixels at 100 %]. */
  private static final int LOW = 420;

  /** Less than this is hardly any [user pixels at 100 %]. */
  private static final int LOWEST = 220;

  private final Showing showing;
  private final JButton views = Controls.button("Seen from");
  private final PoseSlider slider;
  private final Prose remark = Controls.prose("");
  private final Prose hint = Controls.prose("");
  private final Fold row;
  private final JPanel panel =
      new JPanel(new MigLayout("insets 8, gap 6 6, fillx, hidemode 3, wrap 1", "[grow,fill]", ""));
  private Dimension room = new Dimension(Short.MAX_VALUE, Short.MAX_VALUE);
  private String hinted = "";
  private boolean tight;
  private boolean cramped;

  Strip(Showing showing, List<Command> commands) {
    this.showing = showing;
    List<Command> offered =
        VIEWS.stream()
            .flatMap(id -> commands.stream().filter(command -> command.id().equals(id)))
            .toList();
    slider = new PoseSlider(showing, views);
    row = new Fold(offered.size(), offered.stream().map(Strip::button).toArray(JComponent[]::new));
    remark.setName("canvas.remark");
    hint.setName("canvas.hint");
    hint.setVisible(false);
    panel.setName("canvas.strip");
    Controls.named(views, "canvas.views", "From where the tree is seen");
    views.setToolTipText("Front, back, left, right, top or the whole tree");
    views.addActionListener(event -> menu(offered).show(views, 0, views.getHeight()));
    views.setVisible(false);
    row.addPropertyChangeListener("UI", event -> SwingUtilities.invokeLater(() -> fit(room)));
    panel.add(hint, "wmin 0");
    panel.add(remark, "wmin 0");
    panel.add(slider.component(), "wmin 0");
    panel.add(row, "wmin 0");
    follow();
  }

  private static JButton button(Command command) {
    JButton button = Controls.button(command.name());
    Controls.named(button, "canvas." + command.id().substring("view.".length()), command.name());
    button.setToolTipText(
        command.tip() + command.key().map(key -> "  (" + Keys.words(key) + ")").orElse(""));
    button.getAccessibleContext().setAccessibleDescription(command.tip());
    button.setMargin(new Insets(6, 6, 6, 6));
    button.addActionListener(event -> command.run().run());
    return button;
  }

  private static JPopupMenu menu(List<Command> commands) {
    JPopupMenu menu = new JPopupMenu();
    menu.setName("canvas.views.menu");
    for (Command command : commands) {
      JMenuItem item = new JMenuItem(command.name(), command.mnemonic());
      item.setName("canvas.views." + command.id().substring("view.".length()));
      item.addActionListener(event -> command.run().run());
      menu.add(item);
    }
    return menu;
  }

  /** Follows how large the canvas is as a whole. */
  void fit(Dimension canvas) {
    room = canvas;
    Insets insets = panel.getInsets();
    int inside = canvas.width - insets.left - insets.right - 2 * Controls.NEAR;
    tight = canvas.height < Theme.px(LOW) || !row.fits(inside);
    cramped = canvas.height < Theme.px(LOWEST);
    views.setVisible(tight);
    row.setVisible(!tight);
    hint(hinted);
    panel.revalidate();
  }

  JComponent component() {
    return panel;
  }

  void follow() {
    slider.follow();
    remark.say(
        showing.remark(), showing.stops().trouble().isPresent() ? Shade.CAUTION : Shade.QUIET);
    remark.setVisible(!showing.remark().isBlank());
    hint(hinted);
  }

  /** Says what a tool does; blank for nothing. */
  void hint(String words) {
    hinted = words;
    int end = words.indexOf(". ");
    hint.say(tight && end > 0 ? words.substring(0, end + 1) : words, Shade.INK);
    hint.setVisible(!words.isBlank() && !cramped && !(tight && remark.isVisible()));
  }
}
