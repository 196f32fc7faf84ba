// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Document;
import boughwright.viewer.window.WindowRobot;
import boughwright.viewer.window.canvas.TreeCanvas;
import boughwright.viewer.window.shell.MainWindow;
import boughwright.viewer.window.shell.OwnDesk;
import boughwright.viewer.window.work.Workspace;
import java.awt.Component;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;

/** The program's window on a tree, with Measure open. */
final class SketchFrame {
  static final int WIDTH = 1280;
  static final int HEIGHT = 860;

  final OwnDesk desk;
  final Workspace workspace;
  final TreeCanvas canvas;
  final MeasurePanel panel;
  final MainWindow frame;

  private SketchFrame(Path home) {
    desk = new OwnDesk(home);
    workspace = desk.workspace();
    canvas = desk.canvas();
    panel = (MeasurePanel) desk.panel(1);
    frame = desk.window();
  }

  /**
   * @param home folder of its settings
   */
  static SketchFrame open(Path home, Document document) {
    SketchFrame opened = new SketchFrame(home);
    opened.desk.resize(WIDTH, HEIGHT);
    WindowRobot.doOnEvents(() -> opened.canvas.setSmooth(false));
    opened.desk.open(document);
    opened.desk.robot().keys(KeyEvent.VK_ALT, KeyEvent.VK_2);
    opened.desk.robot().find("measure.page.segments");
    return opened;
  }

  /** What the mouse draws on. */
  Component view() {
    return desk.view();
  }

  /** Waits until the view glides no more: the tree is seen twice at the same place. */
  void stands() {
    Object[] before = {null};
    desk.robot()
        .waitFor(
            "the view stands still",
            () -> {
              List<Object> now =
                  List.of(
                      canvas.project(Point3.ORIGIN),
                      canvas.project(new Point3(0.1, 0, 0.1)),
                      view().getSize());
              boolean same = now.equals(before[0]);
              before[0] = now;
              return same;
            });
  }

  /** Where a point is seen [user pixels of the view]. */
  Point pixel(Point3 at) {
    return WindowRobot.onEvents(
        () -> {
          var seen = canvas.project(at);
          return new Point((int) Math.round(seen.x()), (int) Math.round(seen.y()));
        });
  }

  /** Drags from where one point is seen to where another is. */
  void drag(Point3 from, Point3 to) {
    stands();
    desk.robot().drag(view(), pixel(from), pixel(to));
  }

  void close() {
    desk.close();
  }
}
