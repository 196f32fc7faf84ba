// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.LayoutManager;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;

/**
 * Parts of one width beside one another, as many as there is room for their words; the others go to
 * rows of as many below.
 */
public final class Fold extends HighAsWide {
  private static final long serialVersionUID = 1L;

  /** What a choice or a field is never narrower than [user pixels at 100 %]. */
  private static final int LEAST_FIELD = 96;

  private final int most;

  /**
   * @param most parts in a row at most
   */
  public Fold(int most, JComponent... parts) {
    super(null);
    this.most = most;
    setLayout(new InRows());
    for (JComponent part : parts) {
      add(part);
    }
  }

  /** Whether all have room in one row of some width [user pixels]. */
  public boolean fits(int width) {
    List<Component> parts = shown(this);
    return columns(parts, width, most) == parts.size();
  }

  /** The width below which words of a part would be cut off [user pixels]. */
  static int need(Component part) {
    if (part instanceof Prose prose) {
      return prose.longestWord();
    }
    if (part instanceof JTextComponent || part instanceof JComboBox<?>) {
      return Math.min(Theme.px(LEAST_FIELD), part.getPreferredSize().width);
    }
    if (part instanceof JScrollPane) {
      return 0;
    }
    if (part instanceof JPanel panel) {
      Insets insets = panel.getInsets();
      int inside =
          shown(panel).stream().mapToInt(Fold::need).max().orElse(panel.getPreferredSize().width);
      int round = panel instanceof Reading ? 2 * Theme.px(Controls.NEAR) : 0;
      return inside + insets.left + insets.right + round;
    }
    return part.getPreferredSize().width;
  }

  private static int ownHeight(Component part) {
    return Math.max(part.getPreferredSize().height, part.getMinimumSize().height);
  }

  private static List<Component> shown(Container parent) {
    List<Component> all = new ArrayList<>();
    for (Component part : parent.getComponents()) {
      if (part.isVisible()) {
        all.add(part);
      }
    }
    return all;
  }

  /** How many stand in each row where there is some width. */
  private static int columns(List<Component> parts, int width, int most) {
    int need = parts.stream().mapToInt(Fold::need).max().orElse(0);
    int gap = Theme.px(Controls.NEAR);
    if (parts.size() <= most
        && parts.stream().mapToInt(one -> need(one) + gap).sum() <= width + gap) {
      return Math.max(1, parts.size());
    }
    int fit = Math.max(1, Math.min(most, (width + gap) / Math.max(1, need + gap)));
    int rows = (parts.size() + fit - 1) / Math.max(1, fit);
    return Math.max(1, (parts.size() + rows - 1) / Math.max(1, rows));
  }

  /** Rows of equal columns. */
  private final class InRows implements LayoutManager {
    private int laid = -1;

    @Override
    public void addLayoutComponent(String name, Component part) {
      // it asks the container
    }

    @Override
    public void removeLayoutComponent(Component part) {
      // it asks the container
    }

    @Override
    public Dimension preferredLayoutSize(Container parent) {
      List<Component> parts = shown(parent);
      int gap = Theme.px(Controls.NEAR);
      int widest = parts.stream().mapToInt(one -> one.getPreferredSize().width).max().orElse(0);
      int beside = Math.min(most, Math.max(1, parts.size()));
      int wide = beside * widest + (beside - 1) * gap;
      return new Dimension(wide, high(parts, parent.getWidth() > 0 ? parent.getWidth() : wide));
    }

    private int high(List<Component> parts, int width) {
      int gap = Theme.px(Controls.NEAR);
      int columns = columns(parts, width, most);
      int high = 0;
      for (int from = 0; from < parts.size(); from += columns) {
        high += (from > 0 ? gap : 0) + rowHeight(parts, from, columns);
      }
      return high;
    }

    private static int rowHeight(List<Component> parts, int from, int columns) {
      return IntStream.range(from, Math.min(parts.size(), from + columns))
          .map(n -> ownHeight(parts.get(n)))
          .max()
          .orElse(0);
    }

    @Override
    public Dimension minimumLayoutSize(Container parent) {
      int need = shown(parent).stream().mapToInt(Fold::need).max().orElse(0);
      return new Dimension(need, preferredLayoutSize(parent).height);
    }

    @Override
    public void layoutContainer(Container parent) {
      List<Component> parts = shown(parent);
      int gap = Theme.px(Controls.NEAR);
      int columns = columns(parts, parent.getWidth(), most);
      int y = 0;
      for (int from = 0; from < parts.size(); from += columns) {
        int[] edges = edges(parts, from, columns, parent.getWidth());
        for (int k = 0; k < columns && from + k < parts.size(); k++) {
          Component part = parts.get(from + k);
          int wide = edges[k + 1] - edges[k] - gap;
          part.setBounds(edges[k], y, wide, ownHeight(part));
        }
        y += rowHeight(parts, from, columns) + gap;
      }
      // what stands around was laid out for the height of before
      int asked = preferredLayoutSize(parent).height;
      if (asked != parent.getHeight() && asked != laid) {
        laid = asked;
        SwingUtilities.invokeLater(Fold.this::revalidate);
      } else if (asked == parent.getHeight()) {
        laid = -1;
      }
    }

    /** Where parts of a row begin, each with the gap behind it: equal, else as their words need. */
    private int[] edges(List<Component> parts, int from, int columns, int width) {
      int gap = Theme.px(Controls.NEAR);
      int[] edges = new int[columns + 1];
      int[] needs =
          IntStream.range(from, Math.min(parts.size(), from + columns))
              .map(n -> need(parts.get(n)) + gap)
              .toArray();
      boolean equal = Arrays.stream(needs).max().orElse(0) * columns <= width + gap;
      int left = width + gap - Arrays.stream(needs).sum();
      for (int k = 0; k < columns; k++) {
        int own = k < needs.length ? needs[k] + left / needs.length : 0;
        edges[k + 1] = equal ? (k + 1) * (width + gap) / columns : edges[k] + own;
      }
      return edges;
    }
  }
}
