// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.form;

import boughwright.modeller.edit.TreeEdits;
import boughwright.modeller.tree.Container;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Measure;
import boughwright.viewer.window.look.QuantityField;
import boughwright.viewer.window.work.Topic;
import boughwright.viewer.window.work.Workspace;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** What the tree stands in. */
final class ContainerForm {
  private static final double LEAST = 1e-3;
  private static final double MOST = 5;
  private static final double MOST_MASS = 5000;

  private final Workspace workspace;
  private final QuantityField length;
  private final QuantityField width;
  private final QuantityField depth;
  private final QuantityField rim;
  private final QuantityField mass;
  private final JCheckBox tiedIn = new JCheckBox("Roots are tied to it");
  private final JButton none = Controls.button("Take the container out");
  private final JPanel section;

  ContainerForm(Workspace workspace) {
    this.workspace = workspace;
    length = field("length", "Inner length", Measure.LENGTH, LEAST);
    width = field("width", "Inner width", Measure.LENGTH, LEAST);
    depth = field("depth", "Inner depth", Measure.LENGTH, LEAST);
    rim = field("rim", "Rim above the soil", Measure.LENGTH, -MOST);
    mass =
        new QuantityField(
            new QuantityField.Asked(
                "measure.container.mass",
                "All together weigh",
                Measure.number("kg"),
                LEAST,
                MOST_MASS),
            workspace.units());
    all().forEach(one -> one.onCommit(value -> commit()));
    Controls.named(Controls.large(tiedIn), "measure.container.tied", "Roots are tied to it");
    tiedIn.addActionListener(event -> commit());
    Controls.named(none, "measure.container.none", "Take the container out");
    none.addActionListener(event -> workspace.edit(TreeEdits.container(Optional.empty())));
    section =
        Controls.section(
            "Container", Controls.row(length, width, depth), Controls.row(rim, mass), tiedIn, none);
    workspace.listen(
        topic -> {
          if (topic == Topic.UNITS) {
            all().forEach(one -> one.use(workspace.units()));
          }
          if (topic == Topic.OPENED) {
            empty();
          }
        });
  }

  private QuantityField field(String name, String label, Measure measure, double least) {
    return new QuantityField(
        new QuantityField.Asked("measure.container." + name, label, measure, least, MOST),
        workspace.units());
  }

  private List<QuantityField> all() {
    return List.of(length, width, depth, rim, mass);
  }

  JComponent component() {
    return section;
  }

  /** A container is there as soon as its three sizes are. */
  private void commit() {
    if (length.value().isEmpty() || width.value().isEmpty() || depth.value().isEmpty()) {
      return;
    }
    Container.Size size =
        new Container.Size(
            length.value().getAsDouble(), width.value().getAsDouble(), depth.value().getAsDouble());
    Optional<Container> was = workspace.document().tree().setting().container();
    Container now =
        new Container(
            size,
            was.map(Container::centreX).orElse(0.0),
            was.map(Container::centreY).orElse(0.0),
            was.map(Container::turn).orElse(0.0),
            rim.value().orElse(0),
            mass.value(),
            tiedIn.isSelected(),
            was.map(Container::extras).orElse(Map.of()));
    workspace.edit(TreeEdits.container(Optional.of(now)));
  }

  private void empty() {
    all().forEach(QuantityField::clear);
    tiedIn.setSelected(false);
  }

  void refresh() {
    Optional<Container> there = workspace.document().tree().setting().container();
    if (there.isEmpty()) {
      // Sizes that are being typed stay until all three are there.
      if (none.isVisible()) {
        empty();
      }
      none.setVisible(false);
      return;
    }
    none.setVisible(true);
    Container container = there.get();
    TreeForm.show(length, OptionalDouble.of(container.size().length()));
    TreeForm.show(width, OptionalDouble.of(container.size().width()));
    TreeForm.show(depth, OptionalDouble.of(container.size().depth()));
    TreeForm.show(rim, OptionalDouble.of(container.rim()));
    TreeForm.show(mass, container.mass());
    tiedIn.setSelected(container.tiedIn());
  }
}
