// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.pull;

import boughwright.modeller.plan.Hold;
import boughwright.physics.reach.Pulled;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Measure;
import boughwright.viewer.window.look.QuantityField;
import boughwright.viewer.window.work.Topic;
import boughwright.viewer.window.work.Workspace;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JComponent;

/** Exact values of what is pulled, to be read and typed. */
final class ExactFields {
  private static final double FAR = 20;
  private static final double LEAST = 1e-4;
  private static final double STRONGEST = 1e4;

  private final Pulling pulling;
  private final TargetFields target;
  private final AnchorFields anchor;
  private final QuantityField drawn;
  private final QuantityField length;
  private final QuantityField tension;
  private final JComponent section;

  ExactFields(Workspace workspace, Pulling pulling) {
    this.pulling = pulling;
    target = new TargetFields(workspace, pulling);
    anchor = new AnchorFields(workspace, pulling);
    drawn = field(workspace, "pull.drawn", "Drawn in by", LEAST, FAR);
    length = field(workspace, "pull.length", "Length, pad to anchor", LEAST, FAR);
    tension =
        new QuantityField(
            new QuantityField.Asked(
                "pull.tension-typed", "Held at a pull of", Measure.FORCE, LEAST, STRONGEST),
            workspace.units());
    drawn.onCommit(value -> pulling.hold(new Hold.Shortening(value)));
    length.onCommit(value -> pulling.hold(new Hold.Length(value)));
    tension.onCommit(value -> pulling.hold(new Hold.Tension(value)));
    section =
        Controls.section(
            "Exactly",
            Stream.of(
                    Stream.of(target.components()),
                    Stream.of(Controls.note("Tied to")),
                    Stream.of(anchor.components()),
                    Stream.of(Controls.row(drawn, length), tension))
                .flatMap(parts -> parts)
                .toArray(JComponent[]::new));
    workspace.listen(
        topic -> {
          if (topic == Topic.UNITS) {
            List.of(drawn, length, tension).forEach(one -> one.use(workspace.units()));
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

  /** Shows what is pulled now. */
  void follow() {
    target.follow();
    anchor.follow();
    Optional<Draft> draft = pulling.draft();
    Optional<Pulled.Line> line = draft.flatMap(Draft::drawn);
    section.setVisible(pulling.spot().isPresent());
    boolean isLine = pulling.way() == Follower.Way.LINE;
    for (QuantityField one : List.of(drawn, length, tension)) {
      one.setEnabled(isLine && line.isPresent());
    }
    if (line.isPresent() && !isTyping()) {
      drawn.setValue(PointFields.tidy(line.get().at().shortening()));
      length.setValue(PointFields.tidy(line.get().at().length()));
      tension.setValue(Math.rint(line.get().at().tension() * 100) / 100);
    }
  }

  private boolean isTyping() {
    return List.of(drawn, length, tension).stream().anyMatch(QuantityField::isBeingTyped);
  }
}
