// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.ButtonGroup;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JToggleButton;
import javax.swing.ScrollPaneConstants;
import javax.swing.Scrollable;
import net.miginfocom.swing.MigLayout;

/** The pages of a panel under a row of their names. */
public final class Pages {
  private final Map<Page, JToggleButton> buttons = new LinkedHashMap<>();
  private final List<Consumer<Page>> listeners = new ArrayList<>();
  private final JPanel cards = new JPanel(new CardLayout());
  private final JScrollPane pane;
  private Page shown;

  /**
   * A page.
   *
   * @param id name for tests
   * @param words the word on its button
   * @param letter the letter of the word that is underlined
   * @param whole whether it takes all the height there is, and more of the window than the others;
   *     else it scrolls
   */
  public record Page(String id, String words, char letter, boolean whole) {}

  /**
   * @param name name of the panel for tests
   * @param pages the pages in their order; the first is shown
   */
  public Pages(String name, List<Page> pages) {
    shown = pages.get(0);
    JPanel row = new Fold(pages.size());
    ButtonGroup group = new ButtonGroup();
    for (Page page : pages) {
      JToggleButton button = Controls.toggle(page.words());
      Controls.named(button, name + ".page." + page.id(), page.words());
      button.setMnemonic(page.letter());
      button.setMargin(new Insets(2, 2, 2, 2));
      button.putClientProperty("JComponent.minimumWidth", 0);
      button.addActionListener(event -> show(page));
      group.add(button);
      buttons.put(page, button);
      row.add(button);
    }
    cards.setOpaque(false);
    Whole whole = new Whole();
    JPanel head = new JPanel(new MigLayout("insets 8 12 4 12, fillx", "[grow,fill,0:pref]", ""));
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
    pane.setName(name);
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

  /** Fills a page. */
  public void add(Page page, JComponent content) {
    JComponent card = content;
    if (page.whole()) {
      card = new JPanel(new MigLayout("fill, insets 8 6 8 6", "[grow,fill,0:pref]", "[grow,fill]"));
      card.setOpaque(false);
      card.add(content, "wmin 0, hmin 0");
    } else {
      card = Controls.scrolling(content);
    }
    cards.add(card, page.id());
  }

  public JComponent component() {
    return pane;
  }

  public Page shown() {
    return shown;
  }

  /** Asks to be told when a page comes into view. */
  public void listen(Consumer<Page> listener) {
    listeners.add(listener);
  }

  /** Brings a page into view. */
  public void show(Page page) {
    shown = page;
    buttons.get(page).setSelected(true);
    ((CardLayout) cards.getLayout()).show(cards, page.id());
    pane.putClientProperty(Controls.WIDE, page.whole());
    for (JComponent up = pane; up != null; up = up.getParent() instanceof JComponent p ? p : null) {
      up.invalidate();
    }
    if (pane.getRootPane() != null) {
      pane.getRootPane().validate();
      pane.getRootPane().repaint();
    }
    listeners.forEach(listener -> listener.accept(page));
  }
}
