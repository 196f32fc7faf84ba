// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

import javax.swing.JLabel;

/** One line of text that keeps its rank when the theme changes. */
final class Words extends JLabel {
  private static final long serialVersionUID = 1L;

  /** How much a line matters. */
  enum Rank {
    HEADING,
    TEXT,
    NOTE,
    READING
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
    setFont(
        switch (rank) {
          case HEADING -> Theme.heading();
          case TEXT -> Theme.text();
          case NOTE -> Theme.small();
          case READING -> Theme.reading();
        });
    setForeground(Theme.colour(rank == Rank.NOTE ? Shade.QUIET : Shade.INK));
  }
}
