// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.pull;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Anchor;
import boughwright.modeller.units.DisplayUnits;
import boughwright.physics.reach.AnchorPlace;
import boughwright.physics.reach.AnchorSort;
import boughwright.physics.reach.Pulled;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.work.Workspace;
import java.util.List;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JComponent;

/**
 * What the line is tied to: whatever does best, something that is there, or a point of one's own.
 */
final class AnchorFields {
  private static final int BEST = 0;
  private static final int OWN = 1;
  private static final int FIRST = 2;

  private final Workspace workspace;
  private final Pulling pulling;
  private final JComboBox<String> choice = Controls.choice();
  private final PointFields point;
  private List<AnchorPlace> listed = List.of();
  private DisplayUnits units = DisplayUnits.USUAL;
  private boolean following;
  private boolean own;

  AnchorFields(Workspace workspace, Pulling pulling) {
    this.workspace = workspace;
    this.pulling = pulling;
    point = new PointFields("pull.own", workspace, this::typed);
    Controls.named(choice, "pull.anchor", "Tied to");
    choice.setPrototypeDisplayValue("branch with a name, 50 % along it");
    choice.addActionListener(event -> choose());
    fill();
  }

  JComponent[] components() {
    return new JComponent[] {choice, point.component()};
  }

  private void fill() {
    choice.removeAllItems();
    choice.addItem("Whichever does best");
    choice.addItem("A point of my own");
    listed.stream().map(one -> units.inWords(PullWords.anchor(one))).forEach(choice::addItem);
  }

  private void choose() {
    int at = choice.getSelectedIndex();
    if (following || at < 0) {
      return;
    }
    own = at == OWN;
    if (own) {
      drawn().ifPresent(line -> point.show(tidy(line.at().anchor())));
      follow();
    } else {
      pulling.fix(at == BEST ? Optional.empty() : Optional.of(listed.get(at - FIRST)));
    }
  }

  private static Point3 tidy(Point3 at) {
    return new Point3(
        Math.rint(1e3 * at.x()) / 1e3,
        Math.rint(1e3 * at.y()) / 1e3,
        Math.rint(1e3 * at.z()) / 1e3);
  }

  private void typed(Point3 at) {
    pulling.fix(
        Optional.of(
            new AnchorPlace(
                AnchorSort.POINT, "of your own", new Anchor.Fixed(at), at, Optional.empty())));
  }

  private Optional<Pulled.Line> drawn() {
    return pulling.draft().flatMap(Draft::drawn);
  }

  /** Shows what it is tied to now. */
  void follow() {
    following = true;
    if (!listed.equals(pulling.anchors()) || !units.equals(workspace.units())) {
      listed = pulling.anchors();
      units = workspace.units();
      fill();
    }
    Optional<AnchorPlace> fixed = pulling.fixed();
    own =
        pulling.spot().isPresent()
            && (own && fixed.isEmpty() || fixed.filter(one -> !listed.contains(one)).isPresent());
    choice.setSelectedIndex(own ? OWN : fixed.map(one -> FIRST + listed.indexOf(one)).orElse(BEST));
    choice.setEnabled(pulling.way() == Follower.Way.LINE && pulling.draft().isPresent());
    point.component().setVisible(own);
    following = false;
  }
}
