// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.form;

import boughwright.modeller.design.shape.LeafPads;
import boughwright.modeller.design.shape.WoodLeft;
import boughwright.modeller.edit.FoliageEdits;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.Leaves;
import boughwright.modeller.tree.Pad;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.units.LengthUnit;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Measure;
import boughwright.viewer.window.look.Prose;
import boughwright.viewer.window.look.QuantityField;
import boughwright.viewer.window.look.Shade;
import boughwright.viewer.window.sketch.draw.Shape;
import boughwright.viewer.window.sketch.entry.Shown;
import boughwright.viewer.window.sketch.entry.Typed;
import boughwright.viewer.window.work.Topic;
import boughwright.viewer.window.work.Workspace;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.UnaryOperator;
import javax.swing.AbstractButton;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** What the tree wears in leaf: its pads. */
public final class PadForm {
  private static final double LEAST = 1e-3;
  private static final double MOST = 2;
  private static final double USUAL = 60e-3;

  private final Workspace workspace;
  private final Shape shape;
  private final PickList<Pad> list;
  private final Prose none =
      new Prose(
          "No pad is given: in leaf, the tree wears a guess. Add a pad on a picked branch, or take"
              + " the guess over and change it.",
          Shade.QUIET);
  private final JPanel fields = Controls.section("The picked pad");
  private final Choice<Optional<Leaves>> leaves;
  private final TextEntry segment;
  private final TextEntry along;
  private final QuantityField length;
  private final QuantityField width;
  private final QuantityField thickness;
  private final QuantityField raised;
  private final JButton guess = Controls.button("Take the guess over");
  private final JPanel section;

  /** A form for the open tree. */
  public PadForm(Workspace workspace, Shape shape) {
    this.workspace = workspace;
    this.shape = shape;
    leaves =
        new Choice<>(
            "measure.foliage.leaves",
            "In winter",
            PadForm::words,
            chosen -> workspace.edit(FoliageEdits.leaves(chosen)));
    list = new PickList<>("measure.pads", "Pads", Pad::id, this::words, this::showPicked);
    segment = new TextEntry("measure.pad.segment", "On segment", this::toSegment);
    along =
        new TextEntry(
            "measure.pad.along",
            "At (0 start, 1 end)",
            text -> {
              double at = new Typed("At", text).along();
              tell(was -> was.at(was.segment(), at));
            });
    length = size("length", "Length", LEAST, value -> was -> sized(was, value, was.width()));
    width = size("width", "Width", LEAST, value -> was -> sized(was, was.length(), value));
    thickness =
        size("thickness", "Thickness", LEAST, value -> was -> set(was, value, was.raised()));
    raised = size("raised", "Raised by", -MOST, value -> was -> set(was, was.thickness(), value));
    section = lay();
    workspace.listen(this::heard);
    refresh();
  }

  private QuantityField size(
      String id, String label, double least, DoubleFunction<UnaryOperator<Pad>> change) {
    QuantityField field =
        new QuantityField(
            new QuantityField.Asked("measure.pad." + id, label, Measure.LENGTH, least, MOST),
            workspace.units());
    field.onCommit(value -> tell(change.apply(value)));
    return field;
  }

  private static String words(Optional<Leaves> leaves) {
    return leaves
        .map(one -> one == Leaves.EVERGREEN ? "keeps its leaves" : "stands bare")
        .orElse("not said");
  }

  private JPanel lay() {
    AbstractButton add = Controls.button("Add on the picked segment");
    Controls.named(add, "measure.pad.add", "Add a pad on the picked segment");
    add.addActionListener(event -> add());
    Controls.named(guess, "measure.pad.guess", "Take the guess over");
    guess.addActionListener(event -> takeGuess());
    JButton remove = Controls.button("Take this pad out");
    Controls.named(remove, "measure.pad.remove", "Take this pad out");
    remove.addActionListener(
        event -> list.picked().ifPresent(one -> workspace.edit(FoliageEdits.delete(one.id()))));
    for (JComponent part :
        List.of(
            Controls.row(segment, along),
            Controls.row(length, width),
            Controls.row(thickness, raised),
            remove)) {
      fields.add(part, "wmin 0, growx");
    }
    return Controls.section("Foliage", leaves, none, list, add, guess, fields);
  }

  public JComponent component() {
    return section;
  }

  private void heard(Topic topic) {
    if (topic == Topic.UNITS) {
      List.of(length, width, thickness, raised).forEach(field -> field.use(workspace.units()));
    }
    if (topic == Topic.DOCUMENT || topic == Topic.UNITS) {
      refresh();
    }
  }

  private void refresh() {
    var foliage = workspace.document().tree().foliage();
    none.setVisible(foliage.pads().isEmpty());
    guess.setVisible(foliage.pads().isEmpty());
    leaves.offer(
        List.of(Optional.empty(), Optional.of(Leaves.DECIDUOUS), Optional.of(Leaves.EVERGREEN)),
        foliage.leaves());
    list.offer(foliage.pads());
  }

  private String words(Pad pad) {
    LengthUnit unit = workspace.units().length();
    return pad.id()
        + " on "
        + pad.segment()
        + ", "
        + Shown.length(pad.length(), unit)
        + " \u00D7 "
        + Shown.measure(pad.width(), unit)
        + " \u00D7 "
        + Shown.measure(pad.thickness(), unit);
  }

  private void showPicked(Optional<Pad> picked) {
    fields.setVisible(picked.isPresent());
    picked.ifPresent(
        pad -> {
          segment.setValue(pad.segment());
          along.setValue(Shown.fraction(pad.along()));
          TreeForm.show(length, OptionalDouble.of(pad.length()));
          TreeForm.show(width, OptionalDouble.of(pad.width()));
          TreeForm.show(thickness, OptionalDouble.of(pad.thickness()));
          TreeForm.show(raised, OptionalDouble.of(pad.raised()));
        });
  }

  private void toSegment(String text) throws InputException {
    String id = text.strip();
    if (!shape.skeleton().has(id)) {
      throw new Typed("On segment", text)
          .refusal("unknown-segment", "no segment is called so", "Type a name of the table");
    }
    tell(was -> was.at(id, was.along()));
  }

  private void tell(UnaryOperator<Pad> how) {
    list.picked().ifPresent(was -> workspace.edit(FoliageEdits.change(was.id(), how.apply(was))));
  }

  private static Pad sized(Pad was, double length, double width) {
    return new Pad(
        was.id(),
        was.segment(),
        was.along(),
        length,
        width,
        was.thickness(),
        was.raised(),
        was.extras());
  }

  private static Pad set(Pad was, double thickness, double raised) {
    return new Pad(
        was.id(),
        was.segment(),
        was.along(),
        was.length(),
        was.width(),
        thickness,
        raised,
        was.extras());
  }

  private void add() {
    Skeleton skeleton = shape.skeleton();
    String on = workspace.selection().last().orElse(skeleton.segment(skeleton.outward(0)).id());
    String id = FoliageEdits.nextId(workspace.document());
    list.keep(id);
    workspace.edit(
        FoliageEdits.add(
            new Pad(id, on, 0.5, USUAL, USUAL * 2 / 3, USUAL / 3, USUAL / 12, Map.of())));
  }

  private void takeGuess() {
    List<Pad> pads = LeafPads.grown(new WoodLeft(shape.skeleton()));
    if (!pads.isEmpty()) {
      workspace.edit(FoliageEdits.addAll(pads));
    }
  }
}
