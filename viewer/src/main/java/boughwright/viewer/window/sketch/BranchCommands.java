// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch;

import boughwright.modeller.edit.BranchEdits;
import boughwright.modeller.edit.Edit;
import boughwright.modeller.edit.NextId;
import boughwright.modeller.edit.SegmentEdits;
import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Problem;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Skeleton;
import boughwright.viewer.window.look.Command;
import boughwright.viewer.window.look.Keys;
import boughwright.viewer.window.look.Measure;
import boughwright.viewer.window.look.QuantityField;
import boughwright.viewer.window.sketch.draw.Shape;
import boughwright.viewer.window.sketch.entry.Typed;
import boughwright.viewer.window.sketch.form.ShortForm;
import boughwright.viewer.window.sketch.form.TextEntry;
import boughwright.viewer.window.work.Notice;
import boughwright.viewer.window.work.Selection;
import boughwright.viewer.window.work.Workspace;
import java.awt.Component;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Split, move, mirror, duplicate and delete, for the picked segments; each is one step. */
final class BranchCommands {
  private static final double FULL_TURN = 2 * Math.PI;

  private final Workspace workspace;
  private final Shape shape;
  private final Component over;

  /**
   * @param over what the short forms stand over
   */
  BranchCommands(Workspace workspace, Shape shape, Component over) {
    this.workspace = workspace;
    this.shape = shape;
    this.over = over;
  }

  /** A change of one segment that may look at the document before it. */
  private interface Each {
    Edit of(Document document, String id) throws InputException;
  }

  List<Command> all() {
    return List.of(
        command(
            "split",
            "Split\u2026",
            'S',
            Keys.menu(KeyEvent.VK_K),
            "Makes two segments of one",
            this::split),
        command(
            "move",
            "Move branch\u2026",
            'M',
            Keys.menu(KeyEvent.VK_M),
            "Lets the picked branch grow from another place",
            this::move),
        command(
            "mirror",
            "Mirror\u2026",
            'i',
            Keys.menu(KeyEvent.VK_R),
            "Adds the mirror image of the picked branch",
            this::mirror),
        command(
            "duplicate",
            "Duplicate\u2026",
            'D',
            Keys.menuShift(KeyEvent.VK_D),
            "Adds a copy of the picked branch elsewhere",
            this::duplicate),
        command(
            "delete",
            "Delete",
            'e',
            Keys.plain(KeyEvent.VK_DELETE),
            "Takes the picked segments out with all that grows on them",
            this::delete));
  }

  private Command command(
      String id, String name, char letter, javax.swing.KeyStroke key, String tip, Runnable run) {
    return new Command(
        "tree." + id,
        name,
        letter,
        Optional.of(key),
        tip,
        run,
        () -> !workspace.selection().segments().isEmpty());
  }

  /** The picked segments that do not hang on other picked ones. */
  private List<String> bases() {
    Skeleton skeleton = shape.skeleton();
    List<String> bases = new ArrayList<>();
    for (String id : workspace.selection().segments()) {
      int at = skeleton.parent(skeleton.indexOf(id));
      while (at != Skeleton.NONE && !workspace.selection().has(skeleton.segment(at).id())) {
        at = skeleton.parent(at);
      }
      if (at == Skeleton.NONE) {
        bases.add(id);
      }
    }
    return bases;
  }

  private static String named(List<String> ids) {
    int most = 3;
    return ids.size() > most
        ? ids.size() + " segments"
        : ids.stream().collect(Collectors.joining(", "));
  }

  /** Makes a change of each, picks what is new, and gives why it was refused, if it was. */
  private String make(String name, List<String> ids, Each each) {
    Set<String> before = idsNow();
    Edit edit =
        new Edit(
            name,
            document -> {
              Document changed = document;
              for (String id : ids) {
                changed = each.of(changed, id).of(changed);
              }
              return changed;
            });
    if (!workspace.edit(edit)) {
      return workspace.notice().map(Notice::words).orElse("");
    }
    List<String> fresh = new ArrayList<>(idsNow());
    fresh.removeAll(before);
    if (!fresh.isEmpty()) {
      workspace.select(new Selection(fresh));
    }
    return "";
  }

  private Set<String> idsNow() {
    Set<String> ids = new java.util.LinkedHashSet<>();
    workspace.document().tree().segments().forEach(segment -> ids.add(segment.id()));
    return ids;
  }

  private void split() {
    List<String> ids = List.copyOf(workspace.selection().segments());
    QuantityField along = fraction("short.along", "Where, from 0 (start) to 1 (end)");
    along.setValue(0.5);
    String title = "Split " + named(ids);
    new ShortForm(
            over,
            new ShortForm.Face(title, "Everything on it stays at its place on the wood.", "Split"),
            List.of(along),
            () -> make(title, ids, (document, id) -> split(document, id, along)))
        .show();
  }

  private static Edit split(Document document, String id, QuantityField along)
      throws InputException {
    Skeleton skeleton = new Skeleton(document.tree());
    String outer =
        NextId.segment(
            document, id, skeleton.segment(skeleton.indexOf(id)).kind(), Joint.CONTINUES);
    return SegmentEdits.split(id, along.value().orElse(0.5), outer);
  }

  private QuantityField fraction(String name, String label) {
    return new QuantityField(
        new QuantityField.Asked(name, label, Measure.number(""), 0, 1), workspace.units());
  }

  private QuantityField angle(String name, String label) {
    return new QuantityField(
        new QuantityField.Asked(name, label, Measure.ANGLE, -FULL_TURN, FULL_TURN),
        workspace.units());
  }

  private TextEntry parent(String id) {
    TextEntry parent = new TextEntry("short.parent", "Grows on", this::known);
    Skeleton skeleton = shape.skeleton();
    int on = skeleton.parent(skeleton.indexOf(id));
    parent.setValue(on == Skeleton.NONE ? "" : skeleton.segment(on).id());
    return parent;
  }

  private void known(String text) throws InputException {
    if (!shape.skeleton().has(text.strip())) {
      throw new Typed("Grows on", text)
          .refusal("unknown-segment", "no segment is called so", "Type a name of the table");
    }
  }

  private void move() {
    List<String> ids = bases();
    String first = ids.get(0);
    TextEntry parent = parent(first);
    QuantityField along = fraction("short.along", "At, from 0 (start) to 1 (end)");
    Skeleton skeleton = shape.skeleton();
    along.setValue(skeleton.segment(skeleton.indexOf(first)).along());
    String title = "Move " + named(ids);
    new ShortForm(
            over,
            new ShortForm.Face(
                title, "It keeps its direction, and what grows on it comes along.", "Move"),
            List.of(parent, along),
            () ->
                make(
                    title,
                    ids,
                    (document, id) ->
                        BranchEdits.move(id, parent.text().strip(), along.value().orElse(1))))
        .show();
  }

  private double front() {
    return workspace.plan().map(plan -> plan.frontAzimuth().orElse(0)).orElse(0.0);
  }

  private void mirror() {
    List<String> ids = bases();
    QuantityField azimuth = angle("short.azimuth", "The mirror runs toward azimuth");
    azimuth.setValue(front());
    String title = "Mirror " + named(ids);
    new ShortForm(
            over,
            new ShortForm.Face(
                title,
                "An upright mirror stands where the branch starts. Toward the front it changes left"
                    + " and right, a quarter turn from it front and back.",
                "Mirror"),
            List.of(azimuth),
            () ->
                make(
                    title,
                    ids,
                    (document, id) -> BranchEdits.mirror(id, azimuth.value().orElse(0))))
        .show();
  }

  private void duplicate() {
    List<String> ids = bases();
    String first = ids.get(0);
    TextEntry parent = parent(first);
    QuantityField along = fraction("short.along", "At, from 0 (start) to 1 (end)");
    Skeleton skeleton = shape.skeleton();
    along.setValue(skeleton.segment(skeleton.indexOf(first)).along());
    QuantityField turn = angle("short.turn", "Turned clockwise, seen from above, by");
    turn.setValue(Math.toRadians(120));
    String title = "Duplicate " + named(ids);
    new ShortForm(
            over,
            new ShortForm.Face(title, "Calipers come along; wounds and plans do not.", "Duplicate"),
            List.of(parent, along, turn),
            () ->
                make(
                    title,
                    ids,
                    (document, id) ->
                        BranchEdits.duplicate(
                            id,
                            new BranchEdits.BranchPlace(
                                parent.text().strip(), along.value().orElse(1)),
                            turn.value().orElse(0))))
        .show();
  }

  private void delete() {
    List<String> ids = workspace.selection().segments();
    Set<String> before = new HashSet<>(idsNow());
    Optional<String> below = below(bases().get(0));
    try {
      if (workspace.edit(BranchEdits.delete(workspace.document(), ids))) {
        before.removeAll(idsNow());
        below.ifPresent(id -> workspace.select(Selection.of(id)));
        workspace.say(
            new Notice(
                Notice.Kind.DONE,
                "Deleted " + named(List.copyOf(before)) + ". Undo brings them back"));
      }
    } catch (InputException e) {
      workspace.say(
          new Notice(
              Notice.Kind.FAULT,
              e.problems().stream().map(Problem::line).collect(Collectors.joining("\n"))));
    }
  }

  private Optional<String> below(String id) {
    Skeleton skeleton = shape.skeleton();
    int on = skeleton.parent(skeleton.indexOf(id));
    return on == Skeleton.NONE ? Optional.empty() : Optional.of(skeleton.segment(on).id());
  }
}
