// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Optional;
import java.util.regex.Pattern;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.AbstractAction;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;

/**
 * A number to be read from afar: its name, its value with the unit, a note, and what it is. It can
 * be reached by keyboard; F1 or Enter opens the explanation.
 */
public final class Reading extends JPanel implements Explained {
  private static final long serialVersionUID = 1L;
  private static final String NOTHING = "\u2013";

  /** The space between a number and its unit, where no line breaks. */
  private static final Pattern TO_UNIT =
      Pattern.compile("(?<=[0-9]) (?=(?:N|lbf|kgf|mm|cm|m|in|%)(?!\\p{L}))");

  private final String title;
  private final Prose value = new Prose(NOTHING, Shade.INK, Words.Rank.READING);

  private final Prose note = new Prose("", Shade.QUIET);
  private transient Optional<Explanation> explanation = Optional.empty();

  /**
   * @param name name for tests, such as {@code pull.tension}
   * @param title what a person calls the number
   */
  public Reading(String name, String title) {
    super(new MigLayout("wrap 1, insets 6 8 6 8, gapy 0, hidemode 3", "[grow,fill,0:pref]", ""));
    this.title = title;
    setName(name);
    Controls.asHighAsWide(this);
    setOpaque(false);
    setFocusable(true);
    add(Controls.note(title), "wmin 0");
    add(value, "wmin 0, growx");
    value.setName(name + ".value");
    note.setName(name + ".note");
    note.setVisible(false);
    add(note, "wmin 0, growx");
    listen();
    speak();
  }

  private void listen() {
    for (int key : new int[] {KeyEvent.VK_F1, KeyEvent.VK_ENTER}) {
      getInputMap().put(KeyStroke.getKeyStroke(key, 0), "explain");
    }
    getActionMap()
        .put(
            "explain",
            new AbstractAction() {
              private static final long serialVersionUID = 1L;

              @Override
              public void actionPerformed(ActionEvent event) {
                explain();
              }
            });
    addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusGained(FocusEvent event) {
            Focus.reveal(Reading.this);
            repaint();
          }

          @Override
          public void focusLost(FocusEvent event) {
            repaint();
          }
        });
    addMouseListener(
        new MouseAdapter() {
          @Override
          public void mousePressed(MouseEvent event) {
            requestFocusInWindow();
          }
        });
  }

  /** Shows a value, with its unit in the words, and what it is. */
  public void show(String words, String smallNote, Explanation what) {
    value.say(words, Shade.INK);
    value.setVisible(true);
    note.say(TO_UNIT.matcher(smallNote).replaceAll("\u00A0"), Shade.QUIET);
    note.setVisible(!smallNote.isEmpty());
    explanation = Optional.of(what);
    setToolTipText(ExplanationPopup.tip(what));
    speak();
  }

  /** Says something in words that break their lines, where a big number would not fit. */
  public void tell(String words, Explanation what) {
    show("", words, what);
    note.say(words, Shade.INK);
    value.setVisible(false);
    speak();
  }

  /** Shows that there is no value, and why. */
  public void clear(String why) {
    value.say(NOTHING, Shade.INK);
    value.setVisible(true);
    note.say(why, Shade.QUIET);
    note.setVisible(!why.isEmpty());
    explanation = Optional.empty();
    setToolTipText(null);
    speak();
  }

  private void speak() {
    String shown = value.getText().isEmpty() ? note.getText() : value.getText();
    String said = shown.equals(NOTHING) ? "not known" : shown;
    getAccessibleContext().setAccessibleName(title + ": " + said);
    getAccessibleContext()
        .setAccessibleDescription(
            (note.getText() + " " + explanation.map(ExplanationPopup::spoken).orElse("")).strip());
  }

  /** The value as it is shown. */
  public String words() {
    return value.getText();
  }

  @Override
  public Optional<Explanation> explanation() {
    return explanation;
  }

  @Override
  public void explain() {
    explanation.ifPresent(what -> ExplanationPopup.show(this, title, what));
  }

  @Override
  public AccessibleContext getAccessibleContext() {
    if (accessibleContext == null) {
      accessibleContext = new Spoken();
    }
    return accessibleContext;
  }

  /** A reading is a label that can be reached. */
  private final class Spoken extends AccessibleJPanel {
    private static final long serialVersionUID = 1L;

    @Override
    public AccessibleRole getAccessibleRole() {
      return AccessibleRole.LABEL;
    }
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    super.paintComponent(graphics);
    if (isFocusOwner()) {
      Focus.ring((Graphics2D) graphics.create(), this);
    }
  }
}
