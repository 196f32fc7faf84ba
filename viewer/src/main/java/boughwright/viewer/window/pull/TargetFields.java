// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.pull;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.physics.reach.Aim;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.work.Workspace;
import java.util.Optional;
import javax.swing.ButtonGroup;
import javax.swing.JComponent;
import javax.swing.JToggleButton;

/** Where the place is wanted, typed: as a place, or as how far it is to move. */
final class TargetFields {
  private final Pulling pulling;
  private final PointFields point;
  private final JToggleButton move = Controls.toggle("Move it by");
  private final JToggleButton place = Controls.toggle("Bring it to");

  TargetFields(Workspace workspace, Pulling pulling) {
    this.pulling = pulling;
    point = new PointFields("pull.target", workspace, this::typed);
    Controls.named(move, "pull.target-move", "Type how far it is to move");
    Controls.named(place, "pull.target-place", "Type the place it is to come to");
    ButtonGroup group = new ButtonGroup();
    group.add(move);
    group.add(place);
    move.setSelected(true);
    move.addActionListener(event -> follow());
    place.addActionListener(event -> follow());
  }

  JComponent[] components() {
    return new JComponent[] {Controls.row(move, place), point.component()};
  }

  private void typed(Point3 value) {
    pulling
        .start()
        .ifPresent(
            start ->
                pulling.settle(
                    new Aim.At(
                        move.isSelected() ? start.plus(value.minus(Point3.ORIGIN)) : value)));
  }

  /** Shows where it is wanted now; what is being typed stays. */
  void follow() {
    Optional<Point3> start = pulling.start();
    point.setEnabled(start.isPresent());
    if (start.isEmpty() || point.isTyping()) {
      return;
    }
    Point3 wanted = pulling.draft().map(Draft::target).orElse(start.get());
    Vector3 from = move.isSelected() ? start.get().minus(Point3.ORIGIN) : Vector3.ZERO;
    point.show(wanted.plus(from.times(-1)));
  }
}
