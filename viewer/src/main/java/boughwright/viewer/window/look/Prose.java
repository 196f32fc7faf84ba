// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Rectangle;
import java.util.Arrays;
import java.util.regex.Pattern;
import javax.swing.BorderFactory;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import javax.swing.text.DefaultCaret;

/** Text that breaks its lines to the width there is; only to be read. */
public final class Prose extends JTextArea {
  private static final long serialVersionUID = 1L;

  /** A word of so many letters is a name, and may be broken anywhere. */
  private static final int NAME = 20;

  /** The space between a number and its unit, where no line breaks. */
  private static final Pattern TO_UNIT =
      Pattern.compile("(?<=[0-9]) (?=(?:N|lbf|kgf|kg|mm|cm|m|in|%)(?!\\p{L}))");

  private static final char UNBROKEN = '\u00A0';

  private final Words.Rank rank;
  private Shade shade;

  public Prose(String words, Shade shade) {
    this(words, shade, Words.Rank.TEXT);
  }

  Prose(String words, Shade shade, Words.Rank rank) {
    super(words);
    this.shade = shade;
    this.rank = rank;
    setEditable(false);
    setFocusable(false);
    setOpaque(false);
    setLineWrap(true);
    setWrapStyleWord(true);
    setHighlighter(null);
    getAccessibleContext().setAccessibleName(words);
    dress();
  }

  @Override
  public void setText(String words) {
    super.setText(TO_UNIT.matcher(words).replaceAll(String.valueOf(UNBROKEN)));
  }

  /** What it says, as it was told. */
  @Override
  public String getText() {
    return super.getText().replace(UNBROKEN, ' ');
  }

  /** Says something else. */
  public void say(String words, Shade newShade) {
    shade = newShade;
    dress();
    if (!getText().equals(words)) {
      setText(words);
      getAccessibleContext().setAccessibleName(words);
    }
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (shade != null) {
      dress();
    }
  }

  private void dress() {
    setFont(rank.font());
    setForeground(Theme.colour(shade));
    setBorder(BorderFactory.createEmptyBorder());
    // saying something else must not scroll what it stands in
    ((DefaultCaret) getCaret()).setUpdatePolicy(DefaultCaret.NEVER_UPDATE);
  }

  /** What is only read never scrolls what it stands in. */
  @Override
  public void scrollRectToVisible(Rectangle place) {
    // it is scrolled to by what stands around
  }

  /** What is only read leaves the mouse to what it stands in, which explains it. */
  @Override
  public boolean contains(int x, int y) {
    return getToolTipText() != null && super.contains(x, y);
  }

  /** Width of the longest word, which lines cannot break [user pixels]. */
  int longestWord() {
    FontMetrics metrics = getFontMetrics(getFont());
    return Arrays.stream(super.getText().split("\\s+"))
            .filter(word -> word.length() < NAME)
            .mapToInt(metrics::stringWidth)
            .max()
            .orElse(0)
        + 1;
  }

  /** What stands around was laid out for the lines of before, and cannot be told while it is. */
  @Override
  public void setBounds(int x, int y, int width, int height) {
    boolean other = width != getWidth();
    super.setBounds(x, y, width, height);
    if (other && getPreferredSize().height != height) {
      SwingUtilities.invokeLater(this::revalidate);
    }
  }

  @Override
  public Dimension getMinimumSize() {
    return new Dimension(0, getPreferredSize().height);
  }
}
