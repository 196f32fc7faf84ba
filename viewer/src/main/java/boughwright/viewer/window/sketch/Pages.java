// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch;

import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Fold;
import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.Rectangle;
import java.util.EnumMap;
import java.util.Map;
import javax.swing.BorderFactory;
import javax.swing.ButtonGroup;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JToggleButton;
import javax.swing.ScrollPaneConstants;
import javax.swing.Scrollable;
import net.miginfocom.swing.MigLayout;

/** The pages of the panel under a row of their names; the table takes all the height there is. */
final class Pages {
  private final Map<Page, JToggleButton> buttons = new EnumMap<>(Page.class);
  private final JPanel cards = new JPanel(new CardLayout());
  private final JScrollPane pane;
  private Page shown = Page.SEGMENTS;

  /** What is measured. */
  enum Page {
    TREE("Tree", 'T'),
    SEGMENTS("Segments", 'g'),
    TABLE("Table", 'b'),
    WOUNDS("Wounds", 'u'),
    FOLIAGE("Foliage", 'o'),
    PHOTOS("Photos", 'h');

    private final String words;
    private final char letter;

    Page(String words, char letter) {
      this.words = words;
      this.letter = letter;
    }
  }

  Pages() {
    JPanel row = new Fold(Page.values().length);
    ButtonGroup group = new ButtonGroup();
    for (Page page : Page.values()) {
      JToggleButton button = Controls.toggle(page.words);
      Controls.named(
          button, "measure.page." + page.words.toLowerCase(java.util.Locale.ROOT), page.words);
      button.setMnemonic(page.letter);
      button.setMargin(new Insets(2, 2, 2, 2));
      button.putClientProperty("JComponent.minimumWidth", 0);
      button.addActionListener(event -> show(page));
      group.add(button);
      buttons.put(page, button);
      row.add(button);
    }
    cards.setOpaque(false);
    Whole whole = new Whole();
    JPanel head = new JPanel(new MigLayout("insets 8 12 0 12, fillx", "[grow,fill,0:pref]", ""));
    head.setOpaque(false);
    head.add(row, "wmin 0");
    whole.add(head, BorderLayout.NORTH);
    whole.add(cards, BorderLayout.CENTER);
    pane =
        new JScrollPane(
            whole,
            ScrollPaneConstants.VERTICAL_SCROLLBAR_NEVER,
            ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
    pane.setBorder(BorderFactory.createEmptyBorder());
    pane.setName("measure");
  }

  /** As large as the room there is; its pages scroll by themselves. */
  private static final class Whole extends JPanel implements Scrollable {
    private static final long serialVersionUID = 1L;

    Whole() {
      super(new BorderLayout());
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
      return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
      return 0;
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
      return 0;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
      return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
      return true;
    }
  }

  void add(Page page, JComponent content) {
    JComponent card = content;
    if (page == Page.TABLE) {
      card = new JPanel(new MigLayout("fill, insets 8 6 8 6", "[grow,fill,0:pref]", "[grow,fill]"));
      card.setOpaque(false);
      card.add(content, "wmin 0, hmin 0");
    } else {
      card = Controls.scrolling(content);
    }
    cards.add(card, page.name());
  }

  JComponent component() {
    return pane;
  }

  Page shown() {
    return shown;
  }

  /** Brings a page into view; the table asks for more of the window than the others. */
  void show(Page page) {
    shown = page;
    buttons.get(page).setSelected(true);
    ((CardLayout) cards.getLayout()).show(cards, page.name());
    pane.putClientProperty(Controls.WIDE, page == Page.TABLE);
    for (JComponent up = pane; up != null; up = up.getParent() instanceof JComponent p ? p : null) {
      up.invalidate();
    }
    if (pane.getRootPane() != null) {
      pane.getRootPane().validate();
      pane.getRootPane().repaint();
    }
  }
}
