// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.form;

import boughwright.modeller.edit.SegmentEdits;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Skeleton;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Explanation;
import boughwright.viewer.window.look.Handover;
import boughwright.viewer.window.look.Measure;
import boughwright.viewer.window.look.Prose;
import boughwright.viewer.window.look.QuantityField;
import boughwright.viewer.window.look.Shade;
import boughwright.viewer.window.sketch.draw.PointWords;
import boughwright.viewer.window.sketch.draw.Shape;
import boughwright.viewer.window.sketch.entry.CaliperGuess;
import boughwright.viewer.window.sketch.entry.CourseGuess;
import boughwright.viewer.window.sketch.entry.Draft;
import boughwright.viewer.window.sketch.entry.Polar;
import boughwright.viewer.window.sketch.entry.Seat;
import boughwright.viewer.window.sketch.entry.Typed;
import boughwright.viewer.window.work.Selection;
import boughwright.viewer.window.work.Topic;
import boughwright.viewer.window.work.Workspace;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.JToggleButton;

/**
 * Adds segments by typing what tape, protractor and caliper say. Enter goes to the next field and
 * from the last one adds; the next segment then starts where it most likely does.
 */
public final class AddForm {
  private static final double SHORTEST = 1e-4;
  private static final double LONGEST = 10;
  private static final double THICKEST = 2;
  private static final double USUAL_LENGTH = 0.08;

  private final Workspace workspace;
  private final Shape shape;
  private final JPanel section;
  private final JToggleButton onward = Controls.toggle("Goes on");
  private final JToggleButton aside = Controls.toggle("Branch");
  private final TextEntry parent;
  private final TextEntry along;
  private final QuantityField azimuth;
  private final QuantityField elevation;
  private final QuantityField length;
  private final QuantityField start;
  private final QuantityField end;
  private final Choice<Kind> kind;
  private final TextEntry name;
  private final Rose rose = new Rose();
  private final Prose told = new Prose("", Shade.QUIET);
  private final JButton add = Controls.button("Add this segment");
  private boolean guessed = true;

  public AddForm(Workspace workspace, Shape shape) {
    this.workspace = workspace;
    this.shape = shape;
    parent = new TextEntry("measure.add.parent", "Grows on", this::hang);
    along = new TextEntry("measure.add.along", "At (0 start, 1 end)", this::place);
    azimuth = angle("azimuth", "Azimuth", -360, 360);
    elevation = angle("elevation", "Elevation", -90, 90);
    length = length("length", "Length", LONGEST);
    start = length("start", "Caliper at its start", THICKEST);
    end = length("end", "Caliper at its end", THICKEST);
    kind = new Choice<>("measure.add.kind", "Kind", Typed::word, this::chosen);
    kind.offer(List.of(Kind.values()), Kind.BRANCH);
    name = new TextEntry("measure.add.name", "Name", text -> {});
    told.setName("measure.add.told");
    explain();
    section = lay();
    listen();
    begin();
  }

  private QuantityField angle(String id, String label, double least, double most) {
    return new QuantityField(
        new QuantityField.Asked(
            "measure.add." + id, label, Measure.ANGLE, Math.toRadians(least), Math.toRadians(most)),
        workspace.units());
  }

  private QuantityField length(String id, String label, double most) {
    return new QuantityField(
        new QuantityField.Asked("measure.add." + id, label, Measure.LENGTH, SHORTEST, most),
        workspace.units());
  }

  private void explain() {
    String sure = "A protractor and a level read it to a few degrees.";
    azimuth.explainAs(
        new Explanation(
            "Where it points seen from above: 0 is toward you, 90 your left, 180 away from you, 270"
                + " your right.",
            sure,
            "What you measured, standing where you will always stand."));
    elevation.explainAs(
        new Explanation(
            "How far it rises above level: 90 is straight up, 0 level, negative hangs down.",
            sure,
            "What you measured."));
    start.explainAs(
        new Explanation(
            "Over bark, just outside the collar.",
            "The force goes with its fourth power: 5 % too much is 22 % too strong.",
            "Proposed from what it grows on until you type what the caliper says."));
  }

  private JPanel lay() {
    ButtonGroup group = new ButtonGroup();
    group.add(onward);
    group.add(aside);
    Controls.named(onward, "measure.add.onward", "The same shoot goes on");
    Controls.named(aside, "measure.add.aside", "A branch on it");
    onward.setMnemonic('G');
    aside.setMnemonic('B');
    Controls.named(add, "measure.add", "Add this segment");
    add.setMnemonic('D');
    return Controls.section(
        "Next segment",
        Controls.row(onward, aside),
        Controls.row(parent, along),
        Controls.row(azimuth, elevation),
        length,
        Controls.row(start, end),
        add,
        told,
        rose,
        Controls.row(kind, name));
  }

  private void listen() {
    onward.addActionListener(event -> join(Joint.CONTINUES));
    aside.addActionListener(event -> join(Joint.UNION));
    azimuth.onCommit(value -> showRose());
    elevation.onCommit(value -> showRose());
    length.onCommit(value -> proposeCalipers());
    start.onCommit(value -> guessed = false);
    end.onCommit(value -> guessed = false);
    add.addActionListener(event -> add());
    List<QuantityField> typed = List.of(azimuth, elevation, length, start, end);
    for (int i = 0; i < typed.size(); i++) {
      QuantityField here = typed.get(i);
      QuantityField next = i + 1 < typed.size() ? typed.get(i + 1) : null;
      here.field().addActionListener(event -> enter(here, next));
    }
    parent.field().addActionListener(event -> enter(parent, along.field()));
    along.field().addActionListener(event -> enter(along, azimuth.field()));
    name.field().addActionListener(event -> add());
    workspace.listen(this::heard);
  }

  /** Enter: on to the next field; from the last one it adds. */
  private void enter(QuantityField here, QuantityField next) {
    if (here.isFaulty()) {
      return;
    }
    if (next == null) {
      add();
    } else {
      Handover.to(next.field());
    }
  }

  private static void enter(TextEntry here, JTextField next) {
    if (here.commit()) {
      Handover.to(next);
    }
  }

  public JComponent component() {
    return section;
  }

  /** Puts the keyboard where measuring begins. */
  public void focus() {
    Handover.to(azimuth.field());
  }

  /** Puts the keyboard where the place is told that the next segment grows on. */
  public void focusPlace() {
    Handover.to(parent.field());
  }

  private void heard(Topic topic) {
    switch (topic) {
      case SELECTION -> begin();
      case DOCUMENT -> {
        if (!shape.skeleton().has(parent.text())) {
          begin();
        } else {
          propose();
        }
      }
      case UNITS ->
          Stream.of(azimuth, elevation, length, start, end)
              .forEach(field -> field.use(workspace.units()));
      default -> {}
    }
  }

  /** Starts a new segment on the picked one, or on the last of the trunk. */
  private void begin() {
    Skeleton skeleton = shape.skeleton();
    String on = workspace.selection().last().orElseGet(() -> trunkTop(skeleton));
    parent.setValue(on);
    along.setValue("1");
    guessed = true;
    if (length.value().isEmpty()) {
      length.setValue(USUAL_LENGTH);
    }
    boolean free = isFree(skeleton, skeleton.indexOf(on));
    (free ? onward : aside).setSelected(true);
    likely();
  }

  /** Proposes all of a segment but its length: of the likely kind, in the likely direction. */
  private void likely() {
    Seat seat = seat();
    kind.setValue(seat.kind(shape.skeleton(), 0));
    point();
    propose();
  }

  /** Proposes where a segment of the chosen kind points. */
  private void point() {
    CourseGuess guess = CourseGuess.of(shape.skeleton(), seat(), kind.value());
    azimuth.setValue(guess.azimuth());
    elevation.setValue(guess.elevation());
    showRose();
  }

  /** A root starts at the foot of the trunk, and hangs. */
  private void chosen(Kind one) {
    if (one == Kind.ROOT && seat().joins() == Joint.CONTINUES && !isRoot()) {
      Skeleton skeleton = shape.skeleton();
      parent.setValue(skeleton.segment(skeleton.outward(0)).id());
      along.setValue("0");
      aside.setSelected(true);
      point();
    }
    propose();
  }

  private boolean isRoot() {
    Skeleton skeleton = shape.skeleton();
    return skeleton.segment(seat().parent()).kind() == Kind.ROOT;
  }

  private static boolean isFree(Skeleton skeleton, int i) {
    return skeleton.children(i).stream().noneMatch(c -> skeleton.joint(c) == Joint.CONTINUES);
  }

  private static String trunkTop(Skeleton skeleton) {
    int at = skeleton.outward(0);
    boolean higher = true;
    while (higher) {
      Optional<Integer> next =
          skeleton.children(at).stream()
              .filter(c -> skeleton.joint(c) == Joint.CONTINUES)
              .findFirst();
      higher = next.isPresent();
      at = next.orElse(at);
    }
    return skeleton.segment(at).id();
  }

  private void hang(String text) throws InputException {
    if (!shape.skeleton().has(text.strip())) {
      throw new Typed("Grows on", text)
          .refusal(
              "unknown-segment",
              "no segment is called \u201C" + text.strip() + "\u201D",
              "Type a name of the table, or click on the tree");
    }
    workspace.select(Selection.of(text.strip()));
  }

  private void place(String text) throws InputException {
    double at = new Typed("At", text).along();
    if (at < 1) {
      aside.setSelected(true);
    }
    guessed = true;
    propose();
  }

  private void join(Joint joint) {
    if (joint == Joint.CONTINUES) {
      along.setValue("1");
    }
    guessed = true;
    likely();
    focus();
  }

  private Seat seat() {
    double at = 1;
    try {
      at = new Typed("At", along.text()).along();
    } catch (InputException e) {
      along.commit();
    }
    Skeleton skeleton = shape.skeleton();
    String on = parent.text().strip();
    int i = skeleton.indexOf(skeleton.has(on) ? on : trunkTop(skeleton));
    return new Seat(i, at, onward.isSelected() ? Joint.CONTINUES : Joint.UNION);
  }

  /** Proposes kind, name and calipers for the place. */
  private void propose() {
    Seat seat = seat();
    Skeleton skeleton = shape.skeleton();
    name.setValue(draft(seat).freeId(workspace.document(), skeleton));
    proposeCalipers();
  }

  private void proposeCalipers() {
    if (guessed) {
      CaliperGuess guess =
          CaliperGuess.of(shape.skeleton(), seat(), length.value().orElse(USUAL_LENGTH));
      start.setValue(guess.start());
      end.setValue(guess.end());
    }
  }

  private Draft draft(Seat seat) {
    Polar course =
        new Polar(
            azimuth.value().orElse(0),
            elevation.value().orElse(0),
            length.value().orElse(USUAL_LENGTH));
    CaliperGuess calipers =
        new CaliperGuess(start.value().orElse(SHORTEST), end.value().orElse(SHORTEST));
    return new Draft(seat, course, calipers, kind.value());
  }

  private void showRose() {
    rose.show(azimuth.value().orElse(0), elevation.value().orElse(0));
  }

  private void add() {
    boolean sound =
        Stream.of(azimuth, elevation, length, start, end).allMatch(QuantityField::commit);
    if (!sound || !parent.commit() || !along.commit()) {
      return;
    }
    Draft draft = draft(seat());
    Skeleton skeleton = shape.skeleton();
    String id = name.text().strip();
    if (workspace.edit(SegmentEdits.add(draft.segment(skeleton, id)))) {
      workspace.select(Selection.of(id));
      told.say(
          "Added "
              + id
              + ": "
              + PointWords.of(draft.course(), workspace.units().length())
              + ". The next one starts at its end.",
          Shade.QUIET);
      focus();
    } else {
      told.say(workspace.notice().map(notice -> notice.words()).orElse(""), Shade.FAULT);
    }
  }
}
