// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.viewer.command.Boughwright;
import boughwright.viewer.window.Parts;
import java.awt.Window;
import java.lang.management.ManagementFactory;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.Timer;

/** Starts the program and prints how long its window and its first picture of the tree took [ms]. */
public final class FirstPicture {
  private static final int LOOK_EACH_MS = 2;

  private static long window = -1;

  private FirstPicture() {}

  /** The arguments are those of the program. */
  public static void main(String[] args) {
    new Timer(LOOK_EACH_MS, event -> look()).start();
    Boughwright.main(args);
  }

  private static void look() {
    Optional<CanvasView> view = view();
    if (view.isPresent() && window < 0) {
      window = sinceStart();
    }
    if (view.flatMap(CanvasView::picture).isPresent()) {
      System.out.println(window + " " + sinceStart());
      System.out.flush();
      Runtime.getRuntime().halt(0);
    }
  }

  private static long sinceStart() {
    return System.currentTimeMillis() - ManagementFactory.getRuntimeMXBean().getStartTime();
  }

  private static Optional<CanvasView> view() {
    return Stream.of(Window.getWindows())
        .filter(Window::isShowing)
        .flatMap(one -> Parts.all(one).stream())
        .filter(CanvasView.class::isInstance)
        .map(CanvasView.class::cast)
        .filter(CanvasView::isShowing)
        .findFirst();
  }
}
