// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

import java.util.Optional;
import java.util.regex.Pattern;
import net.miginfocom.swing.MigLayout;

/**
 * A number to be read from afar: its name, its value with the unit, a note, and what it is. It can
 * be reached by keyboard; F1 or Enter opens the explanation.
 */
public final class Reading extends ExplainedPanel {
  private static final long serialVersionUID = 1L;
  private static final String NOTHING = "\u2013";

  /** The space between a number and its unit, where no line breaks. */
  private static final Pattern TO_UNIT =
      Pattern.compile("(?<=[0-9]) (?=(?:N|lbf|kgf|mm|cm|m|in|%)(?!\\p{L}))");

  private final Prose value = new Prose(NOTHING, Shade.INK, Words.Rank.READING);

  private final Prose note = new Prose("", Shade.QUIET);

  /**
   * @param name name for tests, such as {@code pull.tension}
   * @param title what a person calls the number
   */
  public Reading(String name, String title) {
    super(
        name,
        title,
        new MigLayout("wrap 1, insets 6 8 6 8, gapy 0, hidemode 3", "[grow,fill,0:pref]", ""));
    add(Controls.note(title), "wmin 0");
    add(value, "wmin 0, growx");
    value.setName(name + ".value");
    note.setName(name + ".note");
    note.setVisible(false);
    add(note, "wmin 0, growx");
    speak();
  }

  /** Shows a value, with its unit in the words, and what it is. */
  public void show(String words, String smallNote, Explanation what) {
    value.say(words, Shade.INK);
    value.setVisible(true);
    note.say(TO_UNIT.matcher(smallNote).replaceAll("\u00A0"), Shade.QUIET);
    note.setVisible(!smallNote.isEmpty());
    take(Optional.of(what));
    speak();
  }

  /** Says something in words that break their lines, where a big number would not fit. */
  public void tell(String words, Explanation what) {
    show("", words, what);
    note.say(note.getText(), Shade.INK);
    value.setVisible(false);
    speak();
  }

  /** Shows that there is no value, and why. */
  public void clear(String why) {
    value.say(NOTHING, Shade.INK);
    value.setVisible(true);
    note.say(why, Shade.QUIET);
    note.setVisible(!why.isEmpty());
    take(Optional.empty());
    speak();
  }

  private void speak() {
    String shown = value.getText().isEmpty() ? note.getText() : value.getText();
    speak(shown.equals(NOTHING) ? "not known" : shown, note.getText());
  }

  /** The value as it is shown. */
  public String words() {
    return value.getText();
  }
}
