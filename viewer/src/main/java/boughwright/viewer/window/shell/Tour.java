// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Prose;
import boughwright.viewer.window.look.Shade;
import boughwright.viewer.window.look.Theme;
import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.event.ActionEvent;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.KeyEvent;
import javax.swing.AbstractAction;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JLayeredPane;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** Five steps on a real tree: a card beside the control it speaks of, and a ring round that. */
final class Tour extends JComponent {
  private static final long serialVersionUID = 1L;
  private static final int WIDTH = 380;
  private static final int GAP = 14;

  /** What is lower has the card beneath it, so that nothing beside it is covered [user pixels]. */
  private static final int SMALL = 120;

  private final transient MainWindow window;
  private final JPanel card = new Card();
  private final JLabel title = Controls.heading("");
  private final JLabel count = Controls.note("");
  private final Prose words = new Prose("", Shade.INK);
  private final JButton next = Controls.button("Next");
  private final JButton back = Controls.button("Back");
  private final JButton skip = Controls.button("Skip");
  private final transient ComponentAdapter moving =
      new ComponentAdapter() {
        @Override
        public void componentResized(ComponentEvent event) {
          place();
        }
      };
  private int step;

  private Tour(MainWindow window) {
    this.window = window;
    setName("tour");
    words.setName("tour.words");
    count.setName("tour.count");
    card.setName("tour.card");
    card.getAccessibleContext().setAccessibleName("First tour");
    card.add(title, "split 2, growx, pushx, wmin 0");
    card.add(count, "wrap");
    card.add(words, "w " + Theme.length(WIDTH) + "!, wrap");
    card.add(back, "split 3, gaptop 8");
    card.add(next, "");
    card.add(skip, "gapleft push");
    dress(next, "tour.next", 'X', () -> go(1));
    dress(back, "tour.back", 'B', () -> go(-1));
    dress(skip, "tour.skip", 'K', this::end);
    add(card);
    card.getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
        .put(KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0), "end");
    card.getActionMap()
        .put(
            "end",
            new AbstractAction() {
              private static final long serialVersionUID = 1L;

              @Override
              public void actionPerformed(ActionEvent event) {
                end();
              }
            });
  }

  private static void dress(JButton button, String name, char mnemonic, Runnable run) {
    button.setName(name);
    button.setMnemonic(mnemonic);
    button.addActionListener(event -> run.run());
  }

  /** Begins the tour in a window, in place of one that is going on there. */
  static void start(MainWindow window, Desk desk) {
    JLayeredPane layers = window.getLayeredPane();
    for (Component old : layers.getComponentsInLayer(JLayeredPane.MODAL_LAYER)) {
      if (old instanceof Tour tour) {
        tour.end();
      }
    }
    desk.change(settings -> settings.withTourSeen());
    Tour tour = new Tour(window);
    layers.add(tour, JLayeredPane.MODAL_LAYER);
    layers.addComponentListener(tour.moving);
    tour.go(0);
    tour.next.requestFocusInWindow();
  }

  private void go(int by) {
    step += by;
    if (step >= TourStep.values().length) {
      end();
      return;
    }
    TourStep now = TourStep.values()[step];
    now.mode(window).ifPresent(window::choose);
    title.setText(now.title());
    count.setText((step + 1) + " of " + TourStep.values().length);
    words.say(now.words(), Shade.INK);
    back.setEnabled(step > 0);
    boolean last = step == TourStep.values().length - 1;
    next.setText(last ? "Done" : "Next");
    next.setMnemonic(last ? 'D' : 'X');
    skip.setVisible(!last);
    SwingUtilities.invokeLater(this::place);
  }

  private void end() {
    JLayeredPane layers = window.getLayeredPane();
    layers.removeComponentListener(moving);
    layers.remove(this);
    layers.repaint();
    window.parts().canvas().component().requestFocusInWindow();
  }

  /** Lays the card beside what it speaks of, inside the window. */
  private void place() {
    setBounds(0, 0, window.getLayeredPane().getWidth(), window.getLayeredPane().getHeight());
    int wide = Theme.px(WIDTH);
    words.setSize(new Dimension(wide, Short.MAX_VALUE));
    Dimension size = card.getPreferredSize();
    Rectangle target = target();
    int x = target.x - size.width - GAP;
    if (x < GAP) {
      x = target.x + target.width + GAP;
    }
    if (x + size.width + GAP > getWidth()) {
      x = target.x + GAP;
    }
    int y = target.y + GAP;
    if (target.height < SMALL) {
      x = target.x;
      y = target.y + target.height + GAP;
    }
    card.setBounds(
        Math.max(GAP, Math.min(x, getWidth() - size.width - GAP)),
        Math.max(GAP, Math.min(y, getHeight() - size.height - GAP)),
        size.width,
        size.height);
    card.revalidate();
    repaint();
  }

  private Rectangle target() {
    Component part = TourStep.values()[step].target(window);
    return SwingUtilities.convertRectangle(
        part.getParent(), part.getBounds(), window.getLayeredPane());
  }

  /** Where the mouse is the tour's own; elsewhere it goes to the window beneath. */
  @Override
  public boolean contains(int x, int y) {
    return card.getBounds().contains(x, y);
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D pen = (Graphics2D) graphics.create();
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    Rectangle ring = target();
    pen.setColor(Theme.colour(Shade.ACCENT));
    pen.setStroke(new BasicStroke(3));
    pen.drawRoundRect(ring.x + 2, ring.y + 2, ring.width - 4, ring.height - 4, 12, 12);
    pen.dispose();
  }

  /** A sheet of paper with a line round it. */
  private static final class Card extends JPanel {
    private static final long serialVersionUID = 1L;

    Card() {
      super(new MigLayout("insets 16, gapy 6", "", ""));
      setOpaque(false);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
      Graphics2D pen = (Graphics2D) graphics.create();
      pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      pen.setColor(Theme.colour(Shade.RAISED));
      pen.fillRoundRect(0, 0, getWidth() - 1, getHeight() - 1, 14, 14);
      pen.setColor(Theme.colour(Shade.ACCENT));
      pen.setStroke(new BasicStroke(2));
      pen.drawRoundRect(1, 1, getWidth() - 3, getHeight() - 3, 14, 14);
      pen.dispose();
    }
  }
}
