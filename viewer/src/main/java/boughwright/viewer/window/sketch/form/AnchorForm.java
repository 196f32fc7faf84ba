// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.form;

import boughwright.modeller.edit.Edit;
import boughwright.modeller.edit.TreeEdits;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.AnchorKind;
import boughwright.modeller.tree.AnchorPoint;
import boughwright.modeller.units.LengthUnit;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Measure;
import boughwright.viewer.window.look.QuantityField;
import boughwright.viewer.window.sketch.entry.Shown;
import boughwright.viewer.window.sketch.entry.Typed;
import boughwright.viewer.window.work.Topic;
import boughwright.viewer.window.work.Workspace;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** Points beside the tree that lines can be tied to. */
final class AnchorForm {
  private static final double FAR = 5;

  private final Workspace workspace;
  private final PickList<AnchorPoint> list;
  private final JPanel fields = Controls.column();
  private final TextEntry name;
  private final Choice<AnchorKind> kind;
  private final QuantityField right;
  private final QuantityField behind;
  private final QuantityField above;
  private final JPanel section;

  AnchorForm(Workspace workspace) {
    this.workspace = workspace;
    list =
        new PickList<>(
            "measure.anchors", "Anchors", AnchorPoint::id, this::words, this::showPicked);
    name = new TextEntry("measure.anchor.name", "Name", this::rename);
    kind =
        new Choice<>(
            "measure.anchor.kind",
            "What it is",
            Typed::word,
            one -> change(was -> new AnchorPoint(was.id(), was.at(), one, was.extras())));
    kind.offer(List.of(AnchorKind.values()), AnchorKind.SCREW);
    right = field("x", "To the right");
    behind = field("y", "Behind");
    above = field("z", "Above the soil");
    JButton add = Controls.button("Add an anchor");
    Controls.named(add, "measure.anchor.add", "Add an anchor");
    add.addActionListener(event -> add());
    JButton remove = Controls.button("Take it out");
    Controls.named(remove, "measure.anchor.remove", "Take the anchor out");
    remove.addActionListener(
        event -> list.picked().ifPresent(one -> workspace.edit(TreeEdits.deleteAnchor(one.id()))));
    fields.setLayout(
        new net.miginfocom.swing.MigLayout(
            "wrap 1, fillx, insets 0, gapy 8", "[grow,fill,0:pref]", ""));
    fields.add(Controls.row(name, kind), "wmin 0");
    fields.add(
        Controls.remark("From the middle of the trunk base, as you stand at azimuth 0"), "wmin 0");
    fields.add(Controls.row(right, behind, above), "wmin 0");
    fields.add(remove, "wmin 0");
    section = Controls.section("Anchors to tie lines to", list, fields, add);
    workspace.listen(
        topic -> {
          if (topic == Topic.UNITS) {
            List.of(right, behind, above).forEach(one -> one.use(workspace.units()));
          }
        });
  }

  private QuantityField field(String axis, String label) {
    QuantityField field =
        new QuantityField(
            new QuantityField.Asked("measure.anchor." + axis, label, Measure.LENGTH, -FAR, FAR),
            workspace.units());
    field.onCommit(value -> change(this::moved));
    return field;
  }

  private AnchorPoint moved(AnchorPoint was) {
    Point3 at =
        new Point3(
            right.value().orElse(was.at().x()),
            behind.value().orElse(was.at().y()),
            above.value().orElse(was.at().z()));
    return new AnchorPoint(was.id(), at, was.kind(), was.extras());
  }

  private void change(java.util.function.UnaryOperator<AnchorPoint> how) {
    list.picked()
        .ifPresent(
            was -> {
              AnchorPoint now = how.apply(was);
              list.keep(now.id());
              workspace.edit(TreeEdits.changeAnchor(was.id(), now));
            });
  }

  private void rename(String text) throws InputException {
    Optional<AnchorPoint> picked = list.picked();
    if (picked.isPresent()) {
      AnchorPoint was = picked.get();
      AnchorPoint now = new AnchorPoint(text.strip(), was.at(), was.kind(), was.extras());
      Edit edit = TreeEdits.changeAnchor(was.id(), now);
      edit.of(workspace.document());
      list.keep(now.id());
      workspace.edit(edit);
    }
  }

  private String words(AnchorPoint anchor) {
    LengthUnit unit = workspace.units().length();
    return anchor.id()
        + ", "
        + Typed.word(anchor.kind())
        + ": "
        + Shown.length(anchor.at().x(), unit)
        + " / "
        + Shown.length(anchor.at().y(), unit)
        + " / "
        + Shown.measure(anchor.at().z(), unit);
  }

  private void add() {
    List<AnchorPoint> all = workspace.document().tree().setting().anchors();
    int n = all.size() + 1;
    while (isTaken(all, "a" + n)) {
      n++;
    }
    String id = "a" + n;
    list.keep(id);
    Point3 at =
        workspace
            .document()
            .tree()
            .setting()
            .container()
            .map(
                box ->
                    new Point3(box.centreX() + box.size().length() / 2, box.centreY(), box.rim()))
            .orElse(new Point3(0.15, 0, 0));
    workspace.edit(TreeEdits.addAnchor(new AnchorPoint(id, at, AnchorKind.SCREW, Map.of())));
  }

  private static boolean isTaken(List<AnchorPoint> all, String id) {
    return all.stream().anyMatch(one -> one.id().equals(id));
  }

  private void showPicked(Optional<AnchorPoint> picked) {
    fields.setVisible(picked.isPresent());
    picked.ifPresent(
        anchor -> {
          name.setValue(anchor.id());
          kind.setValue(anchor.kind());
          TreeForm.show(right, OptionalDouble.of(anchor.at().x()));
          TreeForm.show(behind, OptionalDouble.of(anchor.at().y()));
          TreeForm.show(above, OptionalDouble.of(anchor.at().z()));
        });
  }

  JComponent component() {
    return section;
  }

  void refresh() {
    list.offer(workspace.document().tree().setting().anchors());
  }
}
