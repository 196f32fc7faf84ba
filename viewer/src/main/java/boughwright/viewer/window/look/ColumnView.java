// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Rectangle;
import javax.swing.JPanel;
import javax.swing.Scrollable;

/** What scrolls up and down only: always as wide as the room it has. */
final class ColumnView extends JPanel implements Scrollable {
  private static final long serialVersionUID = 1L;

  ColumnView(Component content) {
    super(new BorderLayout());
    setOpaque(false);
    add(content, BorderLayout.NORTH);
  }

  @Override
  public Dimension getPreferredScrollableViewportSize() {
    return getPreferredSize();
  }

  @Override
  public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
    return Theme.px(24);
  }

  @Override
  public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
    return visible.height * 3 / 4;
  }

  @Override
  public boolean getScrollableTracksViewportWidth() {
    return true;
  }

  @Override
  public boolean getScrollableTracksViewportHeight() {
    return false;
  }
}
