// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.RoundRectangle2D;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;

/**
 * A number among many: its name, its value, and a bar that tells how good it is; F1 or Enter opens
 * the explanation.
 */
public final class BarReading extends ExplainedPanel {
  private static final long serialVersionUID = 1L;
  private static final int BAR = 8;

  /** Room for a number with its unit [user pixels at 100 %]. */
  private static final int VALUE = 76;

  private static final double HUNDRED = 100;

  private final JLabel value = Controls.label("");
  private final Prose note = Controls.remark("");
  private final Bar bar = new Bar();

  /**
   * @param name name for tests, such as {@code choose.taper}
   * @param title what a person calls the number
   * @param narrow whether it stands in a narrow column, the value under its name; else beside
   */
  public BarReading(String name, String title, boolean narrow) {
    super(
        name,
        title,
        new MigLayout(
            "wrap " + (narrow ? 1 : 2) + ", fillx, insets 3 8 3 8, gapy 2, hidemode 3",
            // beside a number the title takes what is left, and breaks where that is little
            narrow ? "[grow,fill,0:pref]" : "[grow,fill,0:0][]",
            ""));
    value.setName(name + ".value");
    note.setName(name + ".note");
    add(Controls.remark(title), "wmin 0, growx");
    value.setHorizontalAlignment(narrow ? SwingConstants.LEADING : SwingConstants.TRAILING);
    add(value, narrow ? "wmin 0" : "w " + Theme.length(VALUE) + "!");
    // what spans both columns asks for no width of its own, or it would push the value out
    add(bar, "span, growx, w 0:0");
    add(note, "span, growx, w 0:0");
    clear("");
  }

  /**
   * Shows a value.
   *
   * @param words the value with its unit
   * @param merit how good it is, 0 to 1 [1]
   * @param what what it is
   */
  public void show(String words, double merit, Explanation what) {
    value.setText(words);
    note.setVisible(false);
    bar.setVisible(true);
    bar.part = merit;
    bar.repaint();
    take(Optional.of(what));
    speak(words, "worth " + Math.round(HUNDRED * merit) + " of 100");
  }

  /** Shows that there is no value, and why. */
  public void clear(String why) {
    value.setText("\u2013");
    note.say(why, Shade.QUIET);
    note.setVisible(!why.isEmpty());
    bar.setVisible(false);
    take(Optional.empty());
    speak("not known", why);
  }

  /** The value as it is shown. */
  public String words() {
    return value.getText();
  }

  /** How much of the bar is filled [1]. */
  public double part() {
    return bar.part;
  }

  /** The bar. */
  private static final class Bar extends JComponent {
    private static final long serialVersionUID = 1L;
    private double part;

    @Override
    public Dimension getPreferredSize() {
      return new Dimension(Theme.px(BAR), Theme.px(BAR));
    }

    @Override
    public Dimension getMinimumSize() {
      return new Dimension(0, Theme.px(BAR));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
      Graphics2D pen = (Graphics2D) graphics.create();
      pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      double round = getHeight();
      pen.setColor(Theme.colour(Shade.RULE));
      pen.fill(new RoundRectangle2D.Double(0, 0, getWidth(), getHeight(), round, round));
      pen.setColor(Theme.colour(Shade.ACCENT));
      double wide = Math.max(Math.min(round, getWidth()), part * getWidth());
      pen.fill(new RoundRectangle2D.Double(0, 0, wide, getHeight(), round, round));
      pen.dispose();
    }
  }
}
