// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import boughwright.modeller.edit.BackdropEdits;
import boughwright.modeller.edit.Edit;
import boughwright.modeller.edit.TreeEdits;
import boughwright.modeller.edit.WoundEdits;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.tree.AnchorKind;
import boughwright.modeller.tree.AnchorPoint;
import boughwright.modeller.tree.Backdrop;
import boughwright.modeller.tree.Container;
import boughwright.modeller.tree.Wound;
import boughwright.viewer.window.work.Workspace;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** A tree with one of everything that Measure has fields for. */
final class WorkedTree {
  /** The pages of Measure, by the names of their buttons. */
  static final List<String> PAGES =
      List.of(
          "measure.page.tree",
          "measure.page.segments",
          "measure.page.table",
          "measure.page.wounds",
          "measure.page.photos");

  private WorkedTree() {}

  static void fill(Workspace workspace) {
    String segment = workspace.document().tree().segments().get(0).id();
    for (Edit edit :
        List.of(
            TreeEdits.container(
                Optional.of(
                    new Container(
                        new Container.Size(0.3, 0.2, 0.08),
                        0,
                        0,
                        0,
                        0,
                        OptionalDouble.of(6),
                        true,
                        Map.of()))),
            TreeEdits.addAnchor(
                new AnchorPoint("peg", new Point3(0.1, 0, 0), AnchorKind.PEG, Map.of())),
            WoundEdits.add(
                new Wound("scar", segment, 0.5, 0, 0.01, 0.01, Optional.empty(), Map.of())),
            BackdropEdits.add(
                new Backdrop("front.jpg", 0, OptionalDouble.of(1e-3), 9, 9, 0.5, Map.of())))) {
      if (!workspace.edit(edit)) {
        throw new AssertionError(workspace.notice());
      }
    }
  }
}
