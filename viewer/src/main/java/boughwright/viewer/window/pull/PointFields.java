// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.pull;

import boughwright.modeller.geometry.Point3;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Measure;
import boughwright.viewer.window.look.QuantityField;
import boughwright.viewer.window.work.Topic;
import boughwright.viewer.window.work.Workspace;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JComponent;

/** Three lengths: to the right, back and up. */
final class PointFields {
  private static final double FAR = 20;

  /** Lengths are shown and typed in tenths of a millimetre [1/m]. */
  private static final double PER_METRE = 10_000;

  private final List<QuantityField> fields;
  private final JComponent row;

  /**
   * @param name for tests, such as {@code pull.target}
   * @param taker gets a point once all three are there and one was typed
   */
  PointFields(String name, Workspace workspace, Consumer<Point3> taker) {
    fields =
        List.of(
            field(name + "-right", "To the right", workspace),
            field(name + "-back", "Back", workspace),
            field(name + "-up", "Up", workspace));
    fields.forEach(one -> one.onCommit(value -> typed(taker)));
    row = Controls.row(fields.toArray(new JComponent[0]));
    workspace.listen(
        topic -> {
          if (topic == Topic.UNITS) {
            fields.forEach(one -> one.use(workspace.units()));
          }
        });
  }

  private static QuantityField field(String name, String label, Workspace workspace) {
    return new QuantityField(
        new QuantityField.Asked(name, label, Measure.LENGTH, -FAR, FAR), workspace.units());
  }

  private void typed(Consumer<Point3> taker) {
    if (fields.stream().allMatch(one -> one.value().isPresent())) {
      taker.accept(new Point3(value(0), value(1), value(2)));
    }
  }

  private double value(int n) {
    return fields.get(n).value().orElseThrow();
  }

  JComponent component() {
    return row;
  }

  void setEnabled(boolean enabled) {
    fields.forEach(one -> one.setEnabled(enabled));
  }

  /** Whether something is typed that is not taken yet. */
  boolean isTyping() {
    return fields.stream().anyMatch(QuantityField::isBeingTyped);
  }

  void show(Point3 point) {
    fields.get(0).setValue(tidy(point.x()));
    fields.get(1).setValue(tidy(point.y()));
    fields.get(2).setValue(tidy(point.z()));
  }

  /** To a tenth of a millimetre, as a hand can set it. */
  static double tidy(double metres) {
    return Math.rint(metres * PER_METRE) / PER_METRE;
  }
}
