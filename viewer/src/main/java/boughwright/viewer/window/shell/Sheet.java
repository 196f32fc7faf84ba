// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Focus;
import boughwright.viewer.window.look.Shade;
import boughwright.viewer.window.look.Theme;
import com.formdev.flatlaf.ui.FlatLineBorder;
import java.awt.Component;
import java.awt.Dialog;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.Rectangle;
import java.awt.Window;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.util.List;
import javax.swing.AbstractAction;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;

/** A dialog in the look of the window: a title, what it says, big buttons at the foot. */
public final class Sheet {
  private final JDialog dialog;
  private final JPanel page;

  /**
   * @param over the window it lies over
   * @param name name for tests
   * @param title what it is about
   * @param waits whether the window waits until it is closed
   */
  public Sheet(Window over, String name, String title, boolean waits) {
    Dialog.ModalityType type =
        waits ? Dialog.ModalityType.DOCUMENT_MODAL : Dialog.ModalityType.MODELESS;
    dialog = new JDialog(over, title, type);
    dialog.setName(name);
    dialog.setDefaultCloseOperation(JDialog.DISPOSE_ON_CLOSE);
    page =
        new JPanel(
            new MigLayout(
                "wrap 1, fill, hidemode 3, insets 20, gapy 12", "[grow,fill,0:pref]", ""));
    page.add(Controls.heading(title), "wmin 0");
    page.setBorder(new FlatLineBorder(new Insets(0, 0, 0, 0), Theme.colour(Shade.RULE)));
    dialog.setContentPane(page);
    bindEscape();
  }

  private void bindEscape() {
    page.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW)
        .put(KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0), "close");
    page.getActionMap()
        .put(
            "close",
            new AbstractAction() {
              private static final long serialVersionUID = 1L;

              @Override
              public void actionPerformed(ActionEvent event) {
                close();
              }
            });
  }

  /** Adds text or controls that keep their height. */
  public void add(Component part) {
    page.add(part, "wmin 0, growx");
  }

  /** Adds what takes the room that is left. */
  public void addLarge(Component part) {
    page.add(part, "wmin 0, hmin 0, grow, push");
  }

  /** Adds the buttons at the foot, the usual one first; Enter presses that. */
  public void buttons(List<JButton> buttons) {
    JPanel foot = new JPanel(new MigLayout("insets 8 0 0 0, gapx 8", "push[]", ""));
    for (JButton button : buttons) {
      foot.add(button, "hmin " + Theme.length(Controls.TARGET) + ", gapx 0 8");
    }
    page.add(foot, "growx, wmin 0");
    dialog.getRootPane().setDefaultButton(buttons.get(0));
  }

  /** A button that closes it. */
  public JButton closing(String words, char mnemonic) {
    JButton button = Controls.button(words);
    button.setName("sheet.close");
    button.setMnemonic(mnemonic);
    button.addActionListener(event -> close());
    return button;
  }

  /**
   * Shows it, no wider than wished and no larger than the screen has room [user pixels at 100 %].
   */
  public void show(int width, int height) {
    Rectangle room = Placement.room(dialog.getOwner().getGraphicsConfiguration());
    int wide = Math.min(Theme.px(width), room.width);
    page.setSize(wide, Short.MAX_VALUE);
    page.doLayout();
    dialog.pack();
    int wanted = dialog.getPreferredSize().height;
    int high = height > 0 ? Math.min(Theme.px(height), wanted) : wanted;
    dialog.setSize(wide, Math.min(high, room.height));
    if (height <= 0) {
      dialog.validate();
      Dimension now = dialog.getPreferredSize();
      dialog.setSize(wide, Math.min(now.height, room.height));
    }
    dialog.setMinimumSize(new Dimension(Math.min(wide, Theme.px(320)), 160));
    dialog.setLocationRelativeTo(dialog.getOwner());
    if (dialog.isModal()) {
      Focus.lend(dialog.getOwner(), () -> dialog.setVisible(true));
    } else {
      dialog.setVisible(true);
    }
  }

  /** Only {@link #close} closes it, not the person. */
  void stay() {
    dialog.setDefaultCloseOperation(JDialog.DO_NOTHING_ON_CLOSE);
    page.getActionMap().remove("close");
  }

  /** Closes it. */
  public void close() {
    dialog.dispose();
  }

  /** Whether it is on the screen. */
  public boolean isShowing() {
    return dialog.isShowing();
  }
}
