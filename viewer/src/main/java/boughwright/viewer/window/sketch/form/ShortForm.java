// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.form;

import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Focus;
import boughwright.viewer.window.look.Prose;
import boughwright.viewer.window.look.QuantityField;
import boughwright.viewer.window.look.Shade;
import boughwright.viewer.window.look.Theme;
import java.awt.Component;
import java.awt.Dialog;
import java.awt.event.KeyEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.List;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;

/** A few values that a command needs: Enter does it, Esc leaves it. */
public final class ShortForm {
  private static final int WIDTH = 420;

  private final JDialog dialog;
  private final Prose refusal = new Prose("", Shade.FAULT);
  private final Supplier<String> act;
  private final List<JComponent> parts;

  /**
   * What a form is about.
   *
   * @param title what it does, such as {@code Split b2}
   * @param words how it does it
   * @param button the word on the button that does it
   */
  public record Face(String title, String words, String button) {}

  /**
   * @param act does it; gives why it was refused, or nothing
   */
  public ShortForm(Component over, Face face, List<JComponent> parts, Supplier<String> act) {
    this.act = act;
    this.parts = parts;
    dialog =
        new JDialog(
            SwingUtilities.getWindowAncestor(over),
            face.title(),
            Dialog.ModalityType.DOCUMENT_MODAL);
    dialog.setName("short");
    JButton yes = Controls.button(face.button());
    Controls.named(yes, "short.do", face.title());
    yes.addActionListener(event -> act());
    JButton no = Controls.button("Cancel");
    Controls.named(no, "short.cancel", "Cancel");
    no.addActionListener(event -> dialog.dispose());
    refusal.setName("short.refusal");
    refusal.setVisible(false);
    JPanel column = Controls.column();
    column.add(Controls.heading(face.title()), "wmin 0");
    column.add(Controls.prose(face.words()), "growx, wmin 0");
    parts.forEach(part -> column.add(part, "growx, wmin 0"));
    column.add(refusal, "growx, wmin 0");
    column.add(Controls.row(yes, no), "gaptop 8");
    column.setOpaque(true);
    dialog.setContentPane(column);
    dialog.getRootPane().setDefaultButton(yes);
    dialog
        .getRootPane()
        .registerKeyboardAction(
            event -> dialog.dispose(),
            KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0),
            JComponent.WHEN_IN_FOCUSED_WINDOW);
    enterActs(column);
  }

  /** A field keeps Enter for itself; here it does what the button does. */
  private void enterActs(java.awt.Container in) {
    for (Component part : in.getComponents()) {
      if (part instanceof JTextField field) {
        field.addActionListener(event -> act());
      } else if (part instanceof java.awt.Container container) {
        enterActs(container);
      }
    }
  }

  private void act() {
    for (JComponent part : parts) {
      if (part instanceof QuantityField field && !field.commit()
          || part instanceof TextEntry entry && !entry.commit()) {
        dialog.pack();
        return;
      }
    }
    String why = act.get();
    if (why.isEmpty()) {
      dialog.dispose();
    } else {
      refusal.say(why, Shade.FAULT);
      refusal.setVisible(true);
      fit();
    }
  }

  private void fit() {
    dialog.setSize(Theme.px(WIDTH), dialog.getHeight());
    dialog.validate();
    dialog.pack();
    dialog.setSize(Math.max(Theme.px(WIDTH), dialog.getWidth()), dialog.getHeight());
  }

  /** Shows it until it is done or left. */
  public void show() {
    fit();
    dialog.setLocationRelativeTo(dialog.getOwner());
    dialog.addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowOpened(WindowEvent event) {
            parts.get(0).transferFocus();
          }
        });
    Focus.lend(dialog.getOwner(), () -> dialog.setVisible(true));
  }
}
