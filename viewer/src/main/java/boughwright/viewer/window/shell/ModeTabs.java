// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.ModePanel;
import boughwright.viewer.window.look.Shade;
import boughwright.viewer.window.look.Theme;
import com.formdev.flatlaf.FlatClientProperties;
import java.awt.CardLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javax.swing.BorderFactory;
import javax.swing.ButtonGroup;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JToggleButton;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** The row of modes above the tree, and the panel of the one that is chosen. */
final class ModeTabs {
  private static final int USUAL_WIDTH = 420;
  private static final int LEAST_WIDTH = 380;
  private static final int TAB_HEIGHT = 44;
  private static final int TAB_WIDTH = 88;
  private static final String BOLD = "font: bold";

  /** The most of the window a panel takes, so that the tree stays the larger part [1]. */
  private static final double MOST_PART = 0.42;

  /** The part of the window that a panel takes which asks for more, such as a table [1]. */
  private static final double WIDE_PART = 0.6;

  /** What a wide panel has use for, as far as the tree keeps its room [user pixels at 100 %]. */
  private static final int WIDE = 840;

  /** How much more of it a panel takes for each doubling of the text [1]. */
  private static final double MORE_PART = 0.22;

  private static final double HUNDRED = 100;

  /** The room that a wide panel leaves to the tree [user pixels]. */
  private static final int LEAST_TREE = 400;

  private final List<ModePanel> modes;
  private final List<JToggleButton> tabs = new ArrayList<>();
  private final JPanel row;
  private final Side side = new Side();
  private final Set<Integer> seen = new HashSet<>();
  private int chosen = -1;

  ModeTabs(List<ModePanel> modes) {
    this.modes = modes;
    row = new JPanel(new MigLayout("insets 8 16 8 16, gapx 8", "", ""));
    row.setName("tabs");
    ButtonGroup group = new ButtonGroup();
    for (int i = 0; i < modes.size(); i++) {
      ModePanel mode = modes.get(i);
      JToggleButton tab = Controls.toggle(mode.name());
      String name = "tab." + mode.name().toLowerCase(Locale.ROOT);
      Controls.named(tab, name, mode.name());
      tab.setMnemonic(mode.mnemonic());
      int n = i;
      tab.addActionListener(event -> choose(n));
      group.add(tab);
      tabs.add(tab);
      row.add(tab, "hmin " + Theme.length(TAB_HEIGHT) + ", wmin " + Theme.length(TAB_WIDTH));
      side.add(inScroll(mode.component()), String.valueOf(i));
    }
  }

  private static JComponent inScroll(JComponent panel) {
    return panel instanceof JScrollPane ? panel : Controls.scrolling(panel);
  }

  /** The row of tabs. */
  JComponent row() {
    return row;
  }

  /** Where the panel of the chosen mode stands. */
  JComponent side() {
    return side;
  }

  /** The number of the chosen mode. */
  int chosen() {
    return chosen;
  }

  /** Brings a mode into view. */
  void choose(int n) {
    if (n == chosen) {
      return;
    }
    int before = chosen;
    chosen = n;
    if (before >= 0) {
      modes.get(before).hidden();
    }
    tabs.get(n).setSelected(true);
    tabs.forEach(
        tab -> tab.putClientProperty(FlatClientProperties.STYLE, tab.isSelected() ? BOLD : null));
    ((CardLayout) side.getLayout()).show(side, String.valueOf(n));
    modes.get(n).shown();
    if (seen.add(n)) {
      SwingUtilities.invokeLater(() -> side.toTop(n));
    }
  }

  /** The panel beside the tree: as wide as usual, less where the window is small. */
  private static final class Side extends JPanel {
    private static final long serialVersionUID = 1L;

    Side() {
      super(new CardLayout());
      setName("side");
    }

    @Override
    public void updateUI() {
      super.updateUI();
      setBorder(BorderFactory.createMatteBorder(1, 1, 0, 0, Theme.colour(Shade.RULE)));
    }

    /** Shows a panel from its beginning. */
    void toTop(int n) {
      if (getComponent(n) instanceof JScrollPane pane) {
        pane.getVerticalScrollBar().setValue(0);
      }
    }

    @Override
    public Dimension getPreferredSize() {
      Component parent = getParent();
      if (parent != null && isWide()) {
        int room = parent.getWidth() - LEAST_TREE;
        int wide = Math.max(Theme.px(WIDE), (int) (parent.getWidth() * WIDE_PART));
        return new Dimension(Math.min(wide, room), 0);
      }
      double part = MOST_PART + MORE_PART * (Theme.textSize().percent() / HUNDRED - 1);
      int room = parent == null ? Integer.MAX_VALUE : (int) (parent.getWidth() * part);
      int width = Math.max(LEAST_WIDTH, Math.min(Theme.px(USUAL_WIDTH), room));
      return new Dimension(width, 0);
    }

    private boolean isWide() {
      for (Component child : getComponents()) {
        if (child.isVisible() && child instanceof JComponent panel) {
          return Boolean.TRUE.equals(panel.getClientProperty(Controls.WIDE));
        }
      }
      return false;
    }

    @Override
    public Dimension getMinimumSize() {
      return new Dimension(LEAST_WIDTH, 0);
    }
  }
}
