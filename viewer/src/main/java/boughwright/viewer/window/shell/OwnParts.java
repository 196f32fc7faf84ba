// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import boughwright.viewer.window.canvas.LookPanel;
import boughwright.viewer.window.canvas.TreeCanvas;
import boughwright.viewer.window.pull.PullPanel;
import boughwright.viewer.window.sketch.MeasurePanel;
import boughwright.viewer.window.work.Background;
import boughwright.viewer.window.work.Workspace;
import java.util.List;

/** Fills a window with the tree and the modes of work on it. */
final class OwnParts implements PartsMaker {
  @Override
  public Parts make(Workspace workspace, Background background) {
    TreeCanvas canvas = new TreeCanvas(workspace);
    return new Parts(
        canvas,
        List.of(
            new LookPanel(canvas),
            new MeasurePanel(workspace, canvas, background),
            new PullPanel(workspace, canvas, background)),
        canvas::whenDrawn,
        canvas::close);
  }
}
