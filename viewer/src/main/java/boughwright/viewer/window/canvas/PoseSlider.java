// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.viewer.scene.PoseStops;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Prose;
import boughwright.viewer.window.look.Shade;
import boughwright.viewer.window.look.Theme;
import java.awt.event.ActionEvent;
import java.util.List;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JSlider;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;

/** Leads from the tree as measured by way of its stages to what stays of the bend. */
final class PoseSlider {
  /** Steps from one stop to the next. */
  static final int STEPS = 20;

  /** Least width of the slider [user pixels at 100 %]. */
  private static final int LEAST = 96;

  /** A slider that is let go so near to a stop goes there. */
  private static final int CATCH = 3;

  private final Showing showing;
  private final JSlider slider = new JSlider(0, STEPS, 0);
  private final Prose words = Controls.title(" ");
  private final JPanel panel =
      new JPanel(
          new MigLayout("insets 0, gapy 0, fillx, wrap 1, hidemode 3", "[grow,fill,0:pref]", ""));
  private boolean following;
  private boolean dragged;

  /**
   * @param lead what stands at its left
   */
  PoseSlider(Showing showing, JComponent lead) {
    this.showing = showing;
    Controls.named(slider, "canvas.pose", "Pose");
    slider.setMajorTickSpacing(STEPS);
    slider.setPaintTicks(true);
    slider.setToolTipText("From the tree as measured to what stays; Page up and Page down jump");
    slider.addChangeListener(event -> moved());
    bind("PAGE_UP", +1);
    bind("PAGE_DOWN", -1);
    words.setName("canvas.pose-words");
    JPanel line =
        new JPanel(
            new MigLayout("insets 0, gapx 8, fillx, hidemode 3", "[][grow,fill]", "[center]"));
    line.setOpaque(false);
    line.add(lead, "cell 0 0, wmin pref");
    line.add(
        slider,
        "cell 1 0, growx, wmin " + Theme.length(LEAST) + ", hmin " + Theme.length(Controls.TARGET));
    panel.setOpaque(false);
    panel.add(words, "wmin 0, growx");
    panel.add(line, "wmin 0, growx");
    follow();
  }

  private void bind(String key, int step) {
    slider.getInputMap(JComponent.WHEN_FOCUSED).put(KeyStroke.getKeyStroke(key), "stop" + step);
    slider
        .getActionMap()
        .put(
            "stop" + step,
            new AbstractAction() {
              private static final long serialVersionUID = 1L;

              @Override
              public void actionPerformed(ActionEvent event) {
                jump(step);
              }
            });
  }

  /** Goes to the next stop up or down. */
  void jump(int step) {
    double at = showing.at();
    showing.setAt(step > 0 ? Math.floor(at) + 1 : Math.ceil(at) - 1);
  }

  JComponent component() {
    return panel;
  }

  private void moved() {
    if (following) {
      return;
    }
    int value = slider.getValue();
    int nearest = Math.round((float) value / STEPS) * STEPS;
    boolean caught = !slider.getValueIsAdjusting() && dragged && Math.abs(value - nearest) <= CATCH;
    dragged = slider.getValueIsAdjusting();
    showing.setAt((double) (caught ? nearest : value) / STEPS);
  }

  /** Takes over what is shown. */
  void follow() {
    following = true;
    int last = showing.stops().stops().size() - 1;
    words.setVisible(last > 0);
    slider.setVisible(last > 0);
    slider.setMaximum(Math.max(1, last) * STEPS);
    slider.setValue((int) Math.round(showing.at() * STEPS));
    slider.setEnabled(showing.preview().isEmpty());
    words.say(words(showing), Shade.INK);
    slider.getAccessibleContext().setAccessibleDescription(words.getText());
    following = false;
  }

  /** What the shown pose is called. */
  static String words(Showing showing) {
    if (showing.preview().isPresent()) {
      return showing.preview().get().words();
    }
    List<PoseStops.Stop> stops = showing.stops().stops();
    if (!showing.isBetween()) {
      return showing.stop().name();
    }
    int before = (int) Math.floor(showing.at());
    return "between " + stops.get(before).name() + " and " + stops.get(before + 1).name();
  }
}
