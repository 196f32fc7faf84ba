// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.choose;

import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.units.DisplayUnits;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Explanation;
import boughwright.viewer.window.look.Measure;
import boughwright.viewer.window.look.QuantityField;
import java.util.List;
import java.util.function.DoubleConsumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JSlider;
import net.miginfocom.swing.MigLayout;

/** Turns and tilts the tree by sliders and by typing. */
final class TurnFields {
  /** Angles are shown to a tenth of a degree: nobody plants a tree more finely. */
  private static final double TENTHS = 10;

  private static final int HALF_TURN = 180;
  private static final int QUARTER = 90;
  private static final String EXACT = "As exact as you set it.";
  private static final String OWN = "Set by you; a plan keeps it as its front and planting angle.";

  private final Turning turning;
  private final Pair turn;
  private final Pair right;
  private final Pair toward;
  private final JComponent section;

  TurnFields(Turning turning, DisplayUnits units) {
    this.turning = turning;
    turn =
        new Pair(
            new QuantityField.Asked(
                "choose.turn", "Side that faces you", Measure.ANGLE, -2 * Math.PI, 2 * Math.PI),
            HALF_TURN,
            units);
    right = tilt("choose.tilt-right", "Tilt right", units);
    toward = tilt("choose.tilt-toward", "Tilt toward you", units);
    turn.onChange(turning::turnTo);
    right.onChange(angle -> turning.tiltTo(angle, turning.pose().tiltToward()));
    toward.onChange(angle -> turning.tiltTo(turning.pose().tiltRight(), angle));
    turn.field.explainAs(
        new Explanation(
            "The azimuth of the tree as measured that faces you: 90\u00B0 is the left side seen"
                + " from 0\u00B0.",
            EXACT,
            OWN));
    Explanation about =
        new Explanation(
            "How far the tree is tilted about its trunk base from how it was measured; less than 0"
                + " is left, or away from you.",
            EXACT,
            OWN);
    right.field.explainAs(about);
    toward.field.explainAs(about);
    JButton upright = button("As measured", "choose.upright", 'd', turning::upright);
    JButton planned = button("As in the plan", "choose.as-planned", 'n', turning::asPlanned);
    section = Controls.section("Turn and tilt", pairs(), Controls.row(upright, planned));
  }

  private static Pair tilt(String name, String words, DisplayUnits units) {
    return new Pair(
        new QuantityField.Asked(name, words, Measure.ANGLE, -Turning.MOST_TILT, Turning.MOST_TILT),
        QUARTER,
        units);
  }

  private static JButton button(String words, String name, char letter, Runnable run) {
    JButton button = Controls.named(Controls.button(words), name, words);
    button.setMnemonic(letter);
    button.addActionListener(event -> run.run());
    return button;
  }

  /** The sliders under one another, each beside the box of its field. */
  private JComponent pairs() {
    JPanel panel =
        new JPanel(
            new MigLayout(
                "wrap 2, fillx, insets 0, gapx 8, gapy " + Controls.NEAR,
                "[fill,pref:pref][grow,fill,0:pref]",
                "[bottom]"));
    panel.setOpaque(false);
    for (Pair pair : List.of(turn, right, toward)) {
      panel.add(pair.field);
      panel.add(pair.slider, "wmin 0, growx");
    }
    return panel;
  }

  JComponent component() {
    return section;
  }

  void follow() {
    FrontPose pose = turning.pose();
    turn.show(pose.azimuth());
    right.show(pose.tiltRight());
    toward.show(pose.tiltToward());
  }

  void use(DisplayUnits units) {
    for (Pair pair : List.of(turn, right, toward)) {
      pair.field.use(units);
    }
  }

  /** An angle to be typed, and a slider for it in whole degrees. */
  private static final class Pair {
    final QuantityField field;
    final JSlider slider;
    private boolean following;

    Pair(QuantityField.Asked asked, int most, DisplayUnits units) {
      field = new QuantityField(asked, units);
      slider = Controls.high(new JSlider(-most, most));
      slider.setOpaque(false);
      Controls.named(slider, asked.name() + "-slider", asked.label());
    }

    void onChange(DoubleConsumer change) {
      field.onCommit(change);
      slider.addChangeListener(
          event -> {
            if (!following) {
              change.accept(Math.toRadians(slider.getValue()));
            }
          });
    }

    void show(double angle) {
      if (!field.isBeingTyped()) {
        field.setValue(Math.toRadians(Math.round(TENTHS * Math.toDegrees(angle)) / TENTHS));
      }
      following = true;
      slider.setValue((int) Math.round(Math.toDegrees(angle)));
      following = false;
    }
  }
}
