// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.pull;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Hold;
import boughwright.physics.reach.AnchorPlace;
import boughwright.physics.reach.Pulled;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Measure;
import boughwright.viewer.window.look.QuantityField;
import boughwright.viewer.window.work.Topic;
import boughwright.viewer.window.work.Workspace;
import java.util.List;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JComponent;

/** Exact values of what is pulled, to be read and typed. */
final class ExactFields {
  private static final double FAR = 20;
  private static final double LEAST = 1e-4;
  private static final double PER_METRE = 10_000;
  private static final double STRONGEST = 1e4;
  private static final String BEST = "Whichever does best";

  private final Pulling pulling;
  private final QuantityField right;
  private final QuantityField back;
  private final QuantityField up;
  private final QuantityField drawn;
  private final QuantityField length;
  private final QuantityField tension;
  private final JComboBox<String> anchor = new JComboBox<>();
  private final JComponent section;
  private List<AnchorPlace> listed = List.of();
  private boolean following;

  ExactFields(Workspace workspace, Pulling pulling) {
    this.pulling = pulling;
    right = field(workspace, "pull.target-right", "To the right", -FAR, FAR);
    back = field(workspace, "pull.target-back", "Back", -FAR, FAR);
    up = field(workspace, "pull.target-up", "Up", -FAR, FAR);
    drawn = field(workspace, "pull.drawn", "Drawn in by", LEAST, FAR);
    length = field(workspace, "pull.length", "Length, pad to anchor", LEAST, FAR);
    tension =
        new QuantityField(
            new QuantityField.Asked(
                "pull.tension-typed", "Held at a pull of", Measure.FORCE, LEAST, STRONGEST),
            workspace.units());
    Controls.named(anchor, "pull.anchor", "Tied to");
    anchor.putClientProperty("JComponent.minimumHeight", Controls.TARGET);
    anchor.setPrototypeDisplayValue("branch with a name, 50 % along it");
    anchor.addActionListener(event -> choose());
    for (QuantityField one : List.of(right, back, up)) {
      one.onCommit(value -> target());
    }
    drawn.onCommit(value -> pulling.hold(new Hold.Shortening(value)));
    length.onCommit(value -> pulling.hold(new Hold.Length(value)));
    tension.onCommit(value -> pulling.hold(new Hold.Tension(value)));
    section =
        Controls.section(
            "Exactly",
            Controls.note("The place is wanted at"),
            Controls.row(right, back, up),
            Controls.note("Tied to"),
            anchor,
            Controls.row(drawn, length),
            tension);
    workspace.listen(
        topic -> {
          if (topic == Topic.UNITS) {
            List.of(right, back, up, drawn, length, tension)
                .forEach(one -> one.use(workspace.units()));
          }
        });
    follow();
  }

  private static QuantityField field(
      Workspace workspace, String name, String label, double least, double most) {
    return new QuantityField(
        new QuantityField.Asked(name, label, Measure.LENGTH, least, most), workspace.units());
  }

  JComponent component() {
    return section;
  }

  private void target() {
    if (right.value().isPresent() && back.value().isPresent() && up.value().isPresent()) {
      pulling.settle(
          new Point3(
              right.value().getAsDouble(), back.value().getAsDouble(), up.value().getAsDouble()));
    }
  }

  private void choose() {
    int at = anchor.getSelectedIndex();
    if (!following && at >= 0) {
      pulling.fix(at == 0 ? Optional.empty() : Optional.of(listed.get(at - 1)));
    }
  }

  /** Shows what is pulled now. */
  void follow() {
    following = true;
    if (anchor.getItemCount() == 0 || !listed.equals(pulling.anchors())) {
      listed = pulling.anchors();
      anchor.removeAllItems();
      anchor.addItem(BEST);
      listed.forEach(one -> anchor.addItem(PullWords.anchor(one)));
    }
    anchor.setSelectedIndex(pulling.fixed().map(one -> 1 + listed.indexOf(one)).orElse(0));
    Optional<Draft> draft = pulling.draft();
    Optional<Pulled.Line> line = draft.flatMap(Draft::drawn);
    section.setVisible(pulling.spot().isPresent());
    if (draft.isPresent() && !isTyping()) {
      right.setValue(tidy(draft.get().target().x()));
      back.setValue(tidy(draft.get().target().y()));
      up.setValue(tidy(draft.get().target().z()));
    }
    boolean isLine = pulling.way() == Follower.Way.LINE;
    anchor.setEnabled(isLine && draft.isPresent());
    for (QuantityField one : List.of(drawn, length, tension)) {
      one.setEnabled(isLine && line.isPresent());
    }
    if (line.isPresent() && !isTyping()) {
      drawn.setValue(tidy(line.get().at().shortening()));
      length.setValue(tidy(line.get().at().length()));
      tension.setValue(Math.rint(line.get().at().tension() * 100) / 100);
    }
    following = false;
  }

  /** To a tenth of a millimetre, as a hand can set it. */
  private static double tidy(double metres) {
    return Math.rint(metres * PER_METRE) / PER_METRE;
  }

  private boolean isTyping() {
    return List.of(right, back, up, drawn, length, tension).stream()
        .anyMatch(QuantityField::isFaulty);
  }
}
