// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.form;

import boughwright.modeller.problem.InputException;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.HighAsWide;
import boughwright.viewer.window.look.Prose;
import boughwright.viewer.window.look.Shade;
import boughwright.viewer.window.look.Theme;
import com.formdev.flatlaf.FlatClientProperties;
import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import javax.swing.AbstractAction;
import javax.swing.JLabel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;

/**
 * Words that are typed. Enter and leaving the field commit; Esc takes back what was typed. What is
 * refused is not committed, and a line beneath says why.
 */
public final class TextEntry extends HighAsWide {
  private static final long serialVersionUID = 1L;

  private final JLabel label;
  private final JTextField field = new JTextField(8);
  private final Prose fault = new Prose("", Shade.FAULT);
  private final transient Taker taker;
  private String value = "";

  /** What is done with what was typed. */
  @FunctionalInterface
  public interface Taker {
    /**
     * Takes a text.
     *
     * @throws InputException if it is refused
     */
    void take(String text) throws InputException;
  }

  /**
   * @param name name for tests
   * @param words what a person calls it
   */
  public TextEntry(String name, String words, Taker taker) {
    super(new MigLayout("wrap 1, fillx, insets 0, gapy 4, hidemode 3", "[grow,fill,0:pref]", ""));
    this.taker = taker;
    label = Controls.note(words);
    label.setLabelFor(field);
    Controls.named(field, name, words);
    fault.setName(name + ".fault");
    fault.setVisible(false);
    field.putClientProperty(
        FlatClientProperties.SELECT_ALL_ON_FOCUS_POLICY,
        FlatClientProperties.SELECT_ALL_ON_FOCUS_POLICY_ALWAYS);
    add(label, "wmin 0");
    add(field, "growx, wmin 0, hmin " + Theme.length(Controls.TARGET));
    add(fault, "growx, wmin 0");
    listen();
  }

  private void listen() {
    field.addActionListener(event -> commit());
    field.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusLost(FocusEvent event) {
            if (!event.isTemporary()) {
              commit();
            }
          }
        });
    field.getInputMap().put(KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0), "revert");
    field
        .getActionMap()
        .put(
            "revert",
            new AbstractAction() {
              private static final long serialVersionUID = 1L;

              @Override
              public boolean accept(Object sender) {
                return !field.getText().equals(value) || fault.isVisible();
              }

              @Override
              public void actionPerformed(ActionEvent event) {
                setValue(value);
                field.selectAll();
              }
            });
  }

  /** Underlines a letter of the label; Alt with it goes to the field. */
  public void setMnemonic(char letter) {
    label.setDisplayedMnemonic(letter);
  }

  public JTextField field() {
    return field;
  }

  /** Shows a text that came from elsewhere; what was typed and not committed is gone. */
  public void setValue(String text) {
    value = text;
    if (!field.getText().equals(text)) {
      field.setText(text);
      field.setCaretPosition(0);
    }
    tell("");
  }

  /** What is typed now. */
  public String text() {
    return field.getText();
  }

  /**
   * Takes what is typed, if it is not refused.
   *
   * @return whether there is nothing wrong
   */
  public boolean commit() {
    if (field.getText().equals(value) && !fault.isVisible()) {
      return true;
    }
    try {
      taker.take(field.getText());
      value = field.getText();
      tell("");
      return true;
    } catch (InputException e) {
      tell(e.problems().get(0).line());
      return false;
    }
  }

  private void tell(String words) {
    if (fault.isVisible() == words.isEmpty() || !fault.getText().equals(words)) {
      fault.say(words, Shade.FAULT);
      fault.setVisible(!words.isEmpty());
      field.putClientProperty(
          FlatClientProperties.OUTLINE,
          words.isEmpty() ? null : FlatClientProperties.OUTLINE_ERROR);
      field.getAccessibleContext().setAccessibleDescription(words);
      revalidate();
    }
  }
}
