// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.history.History;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.units.DisplayUnits;
import boughwright.physics.stage.Course;
import boughwright.physics.trial.TrialResult;
import boughwright.viewer.gl.Graphics;
import boughwright.viewer.scene.Camera;
import boughwright.viewer.scene.InventedCourses;
import boughwright.viewer.window.WindowRobot;
import boughwright.viewer.window.look.TextSize;
import boughwright.viewer.window.look.Theme;
import boughwright.viewer.window.look.Tone;
import boughwright.viewer.window.work.Answer;
import boughwright.viewer.window.work.Workspace;
import java.awt.Component;
import java.awt.Point;
import java.util.Optional;
import javax.swing.JFrame;

/** A window with nothing but a canvas on an invented tree, and a robot to work it. */
final class CanvasWindow implements AutoCloseable {
  static final Plan PLAN = InventedCourses.lined();
  static final Document DOCUMENT = InventedCourses.document(PLAN);

  final WindowRobot robot = new WindowRobot();
  final Workspace work;
  final TreeCanvas canvas;
  private final JFrame frame;

  CanvasWindow() {
    this(Tone.LIGHT);
  }

  CanvasWindow(Tone tone) {
    Graphics.require();
    work =
        WindowRobot.onEvents(
            () -> {
              Theme.apply(tone, TextSize.USUAL);
              return new Workspace(History.opened(DOCUMENT), Optional.empty(), DisplayUnits.USUAL);
            });
    canvas = WindowRobot.onEvents(() -> new TreeCanvas(work));
    frame = WindowRobot.onEvents(this::open);
    settle();
  }

  private JFrame open() {
    canvas.setSmooth(false);
    JFrame made = new JFrame("Canvas");
    made.setUndecorated(true);
    made.add(canvas.component());
    made.setBounds(40, 30, 800, 640);
    made.setVisible(true);
    return made;
  }

  /** Waits until the good picture of what is to be seen is on the screen. */
  void settle() {
    robot.waitFor("a good picture", canvas::isSettled);
  }

  Component view() {
    return robot.find("canvas.view");
  }

  /** Makes the answer known: the bent pose, and that of stages. */
  void answer() {
    Course course = InventedCourses.staged(DOCUMENT, 0, 14, 28);
    answer(InventedCourses.bent(DOCUMENT.tree(), PLAN, 1), Optional.of(course));
  }

  void answer(TrialResult trial, Optional<Course> course) {
    WindowRobot.doOnEvents(() -> work.take(new Answer(DOCUMENT.tree(), PLAN, trial, course)));
    settle();
  }

  /** Where a point of the tree as measured is on the canvas. */
  Point at(Point3 point) {
    Camera.Pixel pixel = WindowRobot.onEvents(() -> canvas.project(point));
    return new Point((int) Math.round(pixel.x()), (int) Math.round(pixel.y()));
  }

  @Override
  public void close() {
    WindowRobot.doOnEvents(
        () -> {
          frame.dispose();
          canvas.close();
        });
  }
}
