// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.photo;

import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Theme;
import java.util.function.DoubleConsumer;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSlider;
import net.miginfocom.swing.MigLayout;

/** How strongly a photo is shown. */
final class Strength extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final int FULL = 100;

  private final JSlider slider = new JSlider(0, FULL, FULL / 2);
  private final transient DoubleConsumer chosen;
  private boolean telling = true;

  Strength(DoubleConsumer chosen) {
    super(new MigLayout("wrap 1, fillx, insets 0, gapy 4", "[grow,fill,0:pref]", ""));
    this.chosen = chosen;
    setOpaque(false);
    JLabel label = Controls.note("Strength");
    label.setLabelFor(slider);
    Controls.named(slider, "photo.strength", "Strength of the photo in percent");
    slider.addChangeListener(
        event -> {
          if (telling && !slider.getValueIsAdjusting()) {
            chosen.accept(slider.getValue() / (double) FULL);
          }
        });
    add(label, "wmin 0");
    add(slider, "growx, wmin 0, hmin " + Theme.length(Controls.TARGET));
  }

  void show(double shown) {
    telling = false;
    slider.setValue((int) Math.round(shown * FULL));
    telling = true;
  }
}
