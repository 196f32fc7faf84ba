// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import boughwright.viewer.window.canvas.LookPanel;
import boughwright.viewer.window.canvas.TreeCanvas;
import boughwright.viewer.window.choose.ChoosePanel;
import boughwright.viewer.window.pull.ComparePanel;
import boughwright.viewer.window.pull.PullPanel;
import boughwright.viewer.window.sketch.MeasurePanel;
import boughwright.viewer.window.work.Background;
import boughwright.viewer.window.work.Trials;
import boughwright.viewer.window.work.Workspace;
import java.util.List;
import java.util.Optional;

/** Fills a window with the tree and the modes of work on it. */
final class OwnParts implements PartsMaker {
  @Override
  public Parts make(Workspace workspace, Background background) {
    TreeCanvas canvas = new TreeCanvas(workspace);
    Trials trials = new Trials(workspace, background);
    return new Parts(
        canvas,
        List.of(
            new LookPanel(canvas),
            new MeasurePanel(workspace, canvas, background),
            new ChoosePanel(workspace, canvas, background),
            new PullPanel(workspace, canvas, background, trials),
            new ComparePanel(workspace, canvas, trials)),
        canvas::whenDrawn,
        Optional.of(canvas::snapshots),
        canvas::close);
  }
}
