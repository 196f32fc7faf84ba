// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

import java.awt.Dimension;
import javax.swing.BorderFactory;
import javax.swing.JTextArea;
import javax.swing.text.DefaultCaret;

/** Text that breaks its lines to the width there is; only to be read. */
public final class Prose extends JTextArea {
  private static final long serialVersionUID = 1L;

  private Shade shade;

  public Prose(String words, Shade shade) {
    super(words);
    this.shade = shade;
    setEditable(false);
    setFocusable(false);
    setOpaque(false);
    setLineWrap(true);
    setWrapStyleWord(true);
    setHighlighter(null);
    // saying something else must not scroll what it stands in
    ((DefaultCaret) getCaret()).setUpdatePolicy(DefaultCaret.NEVER_UPDATE);
    getAccessibleContext().setAccessibleName(words);
    dress();
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
    setFont(Theme.text());
    setForeground(Theme.colour(shade));
    setBorder(BorderFactory.createEmptyBorder());
  }

  @Override
  public Dimension getMinimumSize() {
    return new Dimension(0, getPreferredSize().height);
  }
}
