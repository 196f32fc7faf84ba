// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

import java.awt.Font;
import javax.swing.JLabel;

/** One line of text that keeps its rank when the theme changes. */
final class Words extends JLabel {
  private static final long serialVersionUID = 1L;

  /** How much a line matters. */
  enum Rank {
    HEADING,
    TEXT,
    NOTE,
    READING;

    Font font() {
      return switch (this) {
        case HEADING -> Theme.heading();
        case TEXT -> Theme.text();
        case NOTE -> Theme.small();
        case READING -> Theme.reading();
      };
    }

    Shade shade() {
      return this == NOTE ? Shade.QUIET : Shade.INK;
    }
  }

  private final Rank rank;

  Words(String words, Rank rank) {
    super(words);
    this.rank = rank;
    dress();
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (rank != null) {
      dress();
    }
  }

  private void dress() {
    setFont(rank.font());
    setForeground(Theme.colour(rank.shade()));
  }
}
