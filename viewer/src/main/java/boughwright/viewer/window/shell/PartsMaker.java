// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import boughwright.viewer.window.canvas.Canvas;
import boughwright.viewer.window.canvas.Snapshots;
import boughwright.viewer.window.look.ModePanel;
import boughwright.viewer.window.work.Background;
import boughwright.viewer.window.work.Workspace;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Makes what stands in the middle of a window and beside it. */
@FunctionalInterface
public interface PartsMaker {

  /**
   * What a window is filled with.
   *
   * @param canvas the tree
   * @param panels the modes, in the order of their tabs
   * @param whenDrawn runs something once the tree is on the screen
   * @param snapshots pictures of what is seen at that moment; empty where nothing is drawn
   * @param close lets go of what they hold, such as the graphics
   */
  record Parts(
      Canvas canvas,
      List<ModePanel> panels,
      Consumer<Runnable> whenDrawn,
      Optional<Supplier<Snapshots>> snapshots,
      Runnable close) {
    public Parts {
      Objects.requireNonNull(canvas, "canvas");
      panels = List.copyOf(panels);
      Objects.requireNonNull(whenDrawn, "whenDrawn");
      Objects.requireNonNull(snapshots, "snapshots");
      Objects.requireNonNull(close, "close");
      if (panels.isEmpty()) {
        throw new IllegalArgumentException("a window has modes");
      }
    }
  }

  Parts make(Workspace workspace, Background background);
}
