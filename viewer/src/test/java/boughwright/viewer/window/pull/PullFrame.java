// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.pull;

import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.history.History;
import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.units.DisplayUnits;
import boughwright.viewer.scene.Camera;
import boughwright.viewer.window.WindowRobot;
import boughwright.viewer.window.canvas.TreeCanvas;
import boughwright.viewer.window.look.Reading;
import boughwright.viewer.window.look.TextSize;
import boughwright.viewer.window.look.Theme;
import boughwright.viewer.window.look.Tone;
import boughwright.viewer.window.work.Jobs;
import boughwright.viewer.window.work.Trials;
import boughwright.viewer.window.work.Workspace;
import java.awt.BorderLayout;
import java.awt.Point;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JTabbedPane;

/** A window with the tree, the panel beside it, and nothing else. */
final class PullFrame implements AutoCloseable {
  static final Path HORNBEAM = Path.of("../examples/hedge-hornbeam.tree.json");

  final WindowRobot robot = new WindowRobot();
  final Workspace workspace;
  final TreeCanvas canvas;
  final PullPanel panel;
  final ComparePanel compare;
  final JFrame frame;
  private final Jobs jobs;

  private PullFrame(Document document, Tone tone) {
    Theme.apply(tone, TextSize.USUAL);
    workspace = new Workspace(History.opened(document), Optional.empty(), DisplayUnits.USUAL);
    jobs = new Jobs(workspace::say);
    canvas = new TreeCanvas(workspace);
    Trials trials = new Trials(workspace, jobs);
    panel = new PullPanel(workspace, canvas, jobs, trials);
    compare = new ComparePanel(workspace, canvas, trials);
    frame = new JFrame("test");
    frame.setName("test");
    // without a window manager nobody tells how thick decorations are
    frame.setUndecorated(true);
    JTabbedPane tabs = new JTabbedPane();
    tabs.setName("tabs");
    tabs.addTab(panel.name(), panel.component());
    tabs.addTab(compare.name(), compare.component());
    tabs.addChangeListener(
        event -> {
          if (tabs.getSelectedIndex() == 0) {
            compare.hidden();
            panel.shown();
          } else {
            panel.hidden();
            compare.shown();
          }
        });
    tabs.setPreferredSize(new java.awt.Dimension(Theme.px(440), 100));
    frame.add(canvas.component(), BorderLayout.CENTER);
    frame.add(tabs, BorderLayout.EAST);
    frame.setSize(1400, 1000);
    frame.setVisible(true);
    panel.shown();
  }

  static PullFrame of(Path file) {
    return of(file, Tone.LIGHT);
  }

  static PullFrame of(Path file, Tone tone) {
    WindowRobot.requireDisplay();
    try {
      Document document = TreeFiles.read(file).document();
      return WindowRobot.onEvents(() -> new PullFrame(document, tone));
    } catch (InputException e) {
      throw new AssertionError(e);
    }
  }

  /** Where a point of the tree appears on the canvas, once the wood there is drawn. */
  Point pixel(Point3 point) {
    robot.waitFor("the wood is drawn", () -> canvas.hit(at(point).x(), at(point).y()).isPresent());
    return WindowRobot.onEvents(
        () -> new Point((int) Math.round(at(point).x()), (int) Math.round(at(point).y())));
  }

  private Camera.Pixel at(Point3 point) {
    return canvas.project(point);
  }

  /** Scrolls to a control. */
  void reach(String name) {
    JComponent part = robot.find(name, JComponent.class);
    // a text field would only scroll its own text
    WindowRobot.doOnEvents(
        () -> ((JComponent) part.getParent()).scrollRectToVisible(part.getBounds()));
    robot.settle();
  }

  /** Waits for what takes a busy machine minutes: thousands of draws and whole courses. */
  void patiently(String what, Callable<Boolean> holds) {
    AssertionError last = null;
    for (int n = 0; n < 6; n++) {
      try {
        robot.waitFor(what, holds);
        return;
      } catch (AssertionError e) {
        last = e;
      }
    }
    throw last;
  }

  /** What a reading shows. */
  String reading(String name) {
    return robot.find(name, Reading.class).words();
  }

  @Override
  public void close() {
    WindowRobot.doOnEvents(
        () -> {
          panel.close();
          canvas.close();
          jobs.close();
          frame.dispose();
        });
  }
}
