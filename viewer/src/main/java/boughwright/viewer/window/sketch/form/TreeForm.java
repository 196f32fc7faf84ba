// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.form;

import boughwright.modeller.edit.Edit;
import boughwright.modeller.edit.TreeEdits;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.Unions;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Explanation;
import boughwright.viewer.window.look.Measure;
import boughwright.viewer.window.look.QuantityField;
import boughwright.viewer.window.sketch.entry.Typed;
import boughwright.viewer.window.work.Topic;
import boughwright.viewer.window.work.Workspace;
import com.formdev.flatlaf.FlatClientProperties;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** What is said about the tree as a whole. */
public final class TreeForm {
  private static final double MOST_BARK = 0.05;

  private final Workspace workspace;
  private final JPanel column = Controls.column();
  private final TextEntry name;
  private final SpeciesChooser species;
  private final TextEntry measuredOn;
  private final QuantityField bark;
  private final QuantityField error;
  private final Choice<Unions> unions;
  private final ContainerForm container;
  private final AnchorForm anchors;

  public TreeForm(Workspace workspace) {
    this.workspace = workspace;
    name = new TextEntry("measure.name", "Name of the tree", text -> tried(TreeEdits.name(text)));
    name.setMnemonic('N');
    species = new SpeciesChooser(workspace);
    measuredOn =
        new TextEntry(
            "measure.day",
            "Measured on (year-month-day)",
            text -> tried(TreeEdits.measuredOn(new Typed("Measured on", text).day())));
    JButton today = Controls.button("Today");
    Controls.named(today, "measure.today", "Measured today");
    today.addActionListener(
        event -> workspace.edit(TreeEdits.measuredOn(Optional.of(LocalDate.now()))));
    bark = quantity("measure.bark", "Bark, one layer", 0);
    bark.explainAs(
        new Explanation(
            "How thick the bark is on one side. Calipers are read over bark; the wood is thinner by"
                + " two layers.",
            "Cut a twig to see it; it enters the force to the fourth power of the caliper.",
            "What you measured; nothing typed counts as 0."));
    bark.onCommit(value -> workspace.edit(TreeEdits.bark(OptionalDouble.of(value))));
    error = quantity("measure.error", "Caliper error", 1e-6);
    error.explainAs(
        new Explanation(
            "Nine readings in ten lie within this of the truth.",
            "Read one place five times to see it.",
            "Nothing typed counts as 0.3 mm: common practice, no source."));
    error
        .field()
        .putClientProperty(
            FlatClientProperties.PLACEHOLDER_TEXT,
            Measure.LENGTH.show(Tree.USUAL_CALIPER_ERROR, workspace.units()));
    error.onCommit(value -> workspace.edit(TreeEdits.caliperError(OptionalDouble.of(value))));
    unions =
        new Choice<>(
            "measure.unions",
            "Branches bend from",
            one ->
                one == Unions.SURFACE
                    ? "the bark (real trees)"
                    : "the axis of what they grow on (rod theory)",
            one -> workspace.edit(TreeEdits.unions(one)));
    unions.offer(List.of(Unions.values()), Unions.SURFACE);
    container = new ContainerForm(workspace);
    anchors = new AnchorForm(workspace);
    lay(today);
    refresh();
    workspace.listen(this::heard);
  }

  private QuantityField quantity(String id, String label, double least) {
    return new QuantityField(
        new QuantityField.Asked(id, label, Measure.LENGTH, least, MOST_BARK), workspace.units());
  }

  private void lay(JButton today) {
    JPanel day = Controls.row(measuredOn, today);
    day.setLayout(
        new net.miginfocom.swing.MigLayout("fillx, insets 0, gapx 8", "[grow,fill][]", "[bottom]"));
    column.add(Controls.section("The tree", name, species, day, Controls.row(bark, error), unions));
    column.add(container.component(), "gaptop 12");
    column.add(anchors.component(), "gaptop 12");
  }

  /** Makes a change or refuses it where it was typed. */
  private void tried(Edit edit) throws InputException {
    edit.of(workspace.document());
    workspace.edit(edit);
  }

  public JComponent component() {
    return column;
  }

  private void heard(Topic topic) {
    if (topic == Topic.UNITS) {
      bark.use(workspace.units());
      error.use(workspace.units());
    }
    if (topic == Topic.OPENED) {
      List.of(bark, error).forEach(QuantityField::clear);
    }
    if (topic == Topic.DOCUMENT || topic == Topic.UNITS) {
      refresh();
    }
  }

  private void refresh() {
    Tree tree = workspace.document().tree();
    name.setValue(tree.name());
    species.refresh();
    measuredOn.setValue(tree.measuredOn().map(LocalDate::toString).orElse(""));
    show(bark, tree.bark());
    show(error, tree.caliperError());
    unions.setValue(tree.unions());
    container.refresh();
    anchors.refresh();
  }

  static void show(QuantityField field, OptionalDouble value) {
    if (value.isEmpty()) {
      field.clear();
    } else if (!value.equals(field.value())) {
      field.setValue(value.getAsDouble());
    }
  }
}
