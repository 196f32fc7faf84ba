// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.choose;

import boughwright.modeller.design.front.FrontCase;
import boughwright.modeller.design.front.FrontRules;
import boughwright.modeller.edit.FrontEdits;
import boughwright.modeller.plan.FrontMeasure;
import boughwright.modeller.plan.FrontWishes;
import boughwright.modeller.plan.TreeStyle;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Explanation;
import boughwright.viewer.window.look.Measure;
import boughwright.viewer.window.look.QuantityField;
import boughwright.viewer.window.work.Workspace;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;

/** By what fronts are judged: style, eye, and what counts how much; all of it is saved. */
final class WishFields {
  private static final double MOST_WEIGHT = 1000;
  private static final double FARTHEST = 100;

  private final Workspace workspace;
  private final JComboBox<String> style = Controls.choice();
  private final JComboBox<String> measure = Controls.choice();
  private final QuantityField weight;
  private final QuantityField height;
  private final QuantityField distance;
  private final JButton usual = Controls.button("As the style says");
  private final JComponent section;
  private boolean following;

  WishFields(Workspace workspace) {
    this.workspace = workspace;
    weight = field("choose.weight", "How much it counts", Measure.number(""), 0, MOST_WEIGHT);
    height = field("choose.eye", "Height of your eye", Measure.LENGTH, -FARTHEST, FARTHEST);
    distance = field("choose.eye-distance", "Distance of your eye", Measure.LENGTH, 1e-3, FARTHEST);
    explain();
    for (TreeStyle one : TreeStyle.values()) {
      style.addItem(MeasureWords.style(one));
    }
    for (FrontMeasure one : FrontMeasure.values()) {
      measure.addItem(MeasureWords.title(one));
    }
    Controls.named(style, "choose.style", "Style of the tree");
    Controls.named(measure, "choose.measure", "What counts");
    Controls.named(usual, "choose.weights-usual", "Let everything count as the style says");
    style.addActionListener(
        event -> {
          if (!following) {
            TreeStyle wanted = TreeStyle.values()[style.getSelectedIndex()];
            workspace.edit(FrontEdits.style(Optional.of(wanted)));
          }
        });
    measure.addActionListener(event -> showWeight());
    weight.onCommit(value -> workspace.edit(FrontEdits.weight(chosen(), OptionalDouble.of(value))));
    height.onCommit(value -> workspace.edit(FrontEdits.eyeHeight(OptionalDouble.of(value))));
    distance.onCommit(value -> workspace.edit(FrontEdits.eyeDistance(OptionalDouble.of(value))));
    usual.addActionListener(event -> workspace.edit(FrontEdits.weightsOfStyle()));
    section =
        Controls.section(
            "What counts",
            Controls.note("Style"),
            style,
            Controls.row(height, distance),
            Controls.note("What counts how much"),
            Controls.row(measure, weight),
            usual);
    follow();
  }

  private QuantityField field(String name, String words, Measure sort, double least, double most) {
    return new QuantityField(
        new QuantityField.Asked(name, words, sort, least, most), workspace.units());
  }

  private void explain() {
    String own = "Set by you, and kept in the tree file.";
    weight.explainAs(
        new Explanation(
            "How much this measure counts in the score beside the others: 0 for not at all.",
            "What the style says is common practice, no source.",
            own));
    height.explainAs(
        new Explanation(
            "How high above the soil line your eye is when you judge the front.",
            "Without it the tree is looked at level.",
            own));
    distance.explainAs(
        new Explanation(
            "How far from the trunk your eye is; with its height it says how far you look down.",
            "Without it "
                + Measure.LENGTH.words(FrontCase.USUAL_DISTANCE, workspace.units())
                + " is taken, a choice.",
            own));
  }

  JComponent component() {
    return section;
  }

  private FrontMeasure chosen() {
    return FrontMeasure.values()[measure.getSelectedIndex()];
  }

  private FrontWishes wishes() {
    return workspace.document().fronts().wishes();
  }

  void follow() {
    following = true;
    style.setSelectedIndex(wishes().style().orElse(TreeStyle.UPRIGHT).ordinal());
    following = false;
    show(height, wishes().eyeHeight());
    show(distance, wishes().eyeDistance());
    usual.setEnabled(!wishes().weights().isEmpty());
    showWeight();
  }

  void useUnits() {
    height.use(workspace.units());
    distance.use(workspace.units());
  }

  private static void show(QuantityField field, OptionalDouble value) {
    if (field.isBeingTyped()) {
      return;
    }
    if (value.isPresent()) {
      field.setValue(value.getAsDouble());
    } else {
      field.clear();
    }
  }

  private void showWeight() {
    if (!weight.isBeingTyped()) {
      weight.setValue(FrontRules.of(wishes()).rule(chosen()).weight());
    }
  }
}
