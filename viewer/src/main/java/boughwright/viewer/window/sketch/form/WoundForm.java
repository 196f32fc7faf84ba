// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.form;

import boughwright.modeller.edit.WoundEdits;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Wound;
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
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.AbstractButton;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** The wounds of the tree. */
public final class WoundForm {
  private static final double LEAST = 1e-4;
  private static final double MOST = 2;
  private static final double USUAL = 10e-3;

  private final Workspace workspace;
  private final Shape shape;
  private final PickList<Wound> list;
  private final Prose none =
      new Prose(
          "No wound is marked. Mark one on the bark, or add one and type its place.", Shade.QUIET);
  private final JPanel fields = Controls.section("The picked wound");
  private final TextEntry segment;
  private final TextEntry along;
  private final Choice<Sides> side;
  private final QuantityField round;
  private final QuantityField width;
  private final QuantityField height;
  private final TextEntry seenOn;
  private final JPanel section;

  /** A change of one wound, which may be refused. */
  private interface Change {
    Wound of(Wound was) throws InputException;
  }

  /**
   * @param mark the button that lets wounds be marked on the bark
   */
  public WoundForm(Workspace workspace, Shape shape, AbstractButton mark) {
    this.workspace = workspace;
    this.shape = shape;
    list = new PickList<>("measure.wounds", "Wounds", Wound::id, this::words, this::showPicked);
    segment = new TextEntry("measure.wound.segment", "On segment", this::toSegment);
    along =
        new TextEntry(
            "measure.wound.along",
            "At (0 start, 1 end)",
            text -> {
              double at = new Typed("At", text).along();
              change(was -> with(was, new Place(was.segment(), at, was.round())));
            });
    side = new Choice<>("measure.wound.side", "Side", Sides::words, this::toSide);
    round = quantity("round", "Round it", Measure.ANGLE, -2 * Math.PI, 2 * Math.PI);
    round.onCommit(value -> tell(was -> with(was, new Place(was.segment(), was.along(), value))));
    width = quantity("width", "Width", Measure.LENGTH, LEAST, MOST);
    width.onCommit(value -> tell(was -> sized(was, value, was.height())));
    height = quantity("height", "Height", Measure.LENGTH, LEAST, MOST);
    height.onCommit(value -> tell(was -> sized(was, was.width(), value)));
    seenOn =
        new TextEntry(
            "measure.wound.seen",
            "Seen on (year-month-day)",
            text -> {
              Optional<LocalDate> day = new Typed("Seen on", text).day();
              change(was -> seen(was, day));
            });
    section = lay(mark);
    workspace.listen(this::heard);
    refresh();
  }

  private QuantityField quantity(
      String id, String label, Measure measure, double least, double most) {
    return new QuantityField(
        new QuantityField.Asked("measure.wound." + id, label, measure, least, most),
        workspace.units());
  }

  private JPanel lay(AbstractButton mark) {
    JButton add = Controls.button("Add on the picked segment");
    Controls.named(add, "measure.wound.add", "Add a wound on the picked segment");
    add.addActionListener(event -> add());
    JButton remove = Controls.button("Take this wound out");
    Controls.named(remove, "measure.wound.remove", "Take this wound out");
    remove.addActionListener(
        event -> list.picked().ifPresent(one -> workspace.edit(WoundEdits.delete(one.id()))));
    for (JComponent part :
        List.of(
            Controls.row(segment, along),
            Controls.row(side, round),
            Controls.row(width, height),
            seenOn,
            remove)) {
      fields.add(part, "wmin 0, growx");
    }
    return Controls.section("Wounds", none, list, mark, add, fields);
  }

  public JComponent component() {
    return section;
  }

  private void heard(Topic topic) {
    if (topic == Topic.UNITS) {
      width.use(workspace.units());
      height.use(workspace.units());
    }
    if (topic == Topic.DOCUMENT || topic == Topic.UNITS) {
      refresh();
    }
  }

  private void refresh() {
    List<Wound> wounds = workspace.document().tree().wounds();
    none.setVisible(wounds.isEmpty());
    list.offer(wounds);
  }

  private String words(Wound wound) {
    LengthUnit unit = workspace.units().length();
    return wound.id()
        + " on "
        + wound.segment()
        + ", "
        + Sides.nearest(sides(wound), wound.round()).words()
        + ", "
        + Shown.length(wound.width(), unit)
        + " \u00D7 "
        + Shown.measure(wound.height(), unit);
  }

  private List<Sides> sides(Wound wound) {
    Skeleton skeleton = shape.skeleton();
    double front = workspace.plan().flatMap(plan -> front(plan.frontAzimuth())).orElse(0.0);
    return Sides.of(skeleton.direction(skeleton.indexOf(wound.segment())), front);
  }

  private static Optional<Double> front(OptionalDouble azimuth) {
    return azimuth.isPresent() ? Optional.of(azimuth.getAsDouble()) : Optional.empty();
  }

  private void showPicked(Optional<Wound> picked) {
    fields.setVisible(picked.isPresent());
    picked.ifPresent(
        wound -> {
          segment.setValue(wound.segment());
          along.setValue(Shown.fraction(wound.along()));
          List<Sides> sides = sides(wound);
          side.offer(sides, Sides.nearest(sides, wound.round()));
          TreeForm.show(round, OptionalDouble.of(wound.round()));
          TreeForm.show(width, OptionalDouble.of(wound.width()));
          TreeForm.show(height, OptionalDouble.of(wound.height()));
          seenOn.setValue(wound.seenOn().map(LocalDate::toString).orElse(""));
        });
  }

  private void toSegment(String text) throws InputException {
    String id = text.strip();
    if (!shape.skeleton().has(id)) {
      throw new Typed("On segment", text)
          .refusal("unknown-segment", "no segment is called so", "Type a name of the table");
    }
    change(was -> with(was, new Place(id, was.along(), was.round())));
  }

  private void toSide(Sides chosen) {
    tell(was -> with(was, new Place(was.segment(), was.along(), chosen.round())));
  }

  private void tell(java.util.function.UnaryOperator<Wound> how) {
    list.picked().ifPresent(was -> workspace.edit(WoundEdits.change(was.id(), how.apply(was))));
  }

  private void change(Change how) throws InputException {
    Optional<Wound> was = list.picked();
    if (was.isPresent()) {
      workspace.edit(WoundEdits.change(was.get().id(), how.of(was.get())));
    }
  }

  private record Place(String segment, double along, double round) {}

  private static Wound with(Wound was, Place place) {
    return new Wound(
        was.id(),
        place.segment(),
        place.along(),
        place.round(),
        was.width(),
        was.height(),
        was.seenOn(),
        was.extras());
  }

  private static Wound sized(Wound was, double width, double height) {
    return new Wound(
        was.id(),
        was.segment(),
        was.along(),
        was.round(),
        width,
        height,
        was.seenOn(),
        was.extras());
  }

  private static Wound seen(Wound was, Optional<LocalDate> day) {
    return new Wound(
        was.id(),
        was.segment(),
        was.along(),
        was.round(),
        was.width(),
        was.height(),
        day,
        was.extras());
  }

  private void add() {
    Skeleton skeleton = shape.skeleton();
    String on = workspace.selection().last().orElse(skeleton.segment(skeleton.outward(0)).id());
    String id = WoundEdits.nextId(workspace.document());
    list.keep(id);
    workspace.edit(
        WoundEdits.add(
            new Wound(
                id, on, 0.5, 0, USUAL, USUAL, workspace.document().tree().measuredOn(), Map.of())));
  }
}
