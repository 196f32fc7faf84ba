// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.viewer.bench.Times;
import boughwright.viewer.gl.LiveRenderer;
import boughwright.viewer.window.WindowRobot;
import boughwright.viewer.window.shell.TestDesk;
import java.awt.Component;
import java.awt.event.InputEvent;
import java.awt.event.MouseEvent;
import java.io.IOException;
import java.nio.file.Files;

/** Turns and tilts the hornbeam by hand where its front is chosen, in a window on the screen. */
public final class HandBench {
  private static final int WIDTH = 1280;
  private static final int HEIGHT = 800;
  private static final int CHOOSE = 2;
  private static final int WARM_UPS = 60;
  private static final int RUNS = 120;

  /** The hand goes round a circle so large, in so many steps [user pixels]. */
  private static final int REACH = 60;

  private static final int ROUND = 40;

  private final TestDesk desk;
  private final CanvasView view;

  private HandBench(TestDesk desk) {
    this.desk = desk;
    view = desk.robot.find("canvas.view", CanvasView.class);
  }

  /** Prints the rows of a table. */
  public static void main(String[] args) throws IOException, InterruptedException {
    System.out.print(rows());
    System.exit(0);
  }

  /** The rows of a table: what the hand does, until the measures show, until the picture shows. */
  public static String rows() throws IOException, InterruptedException {
    TestDesk desk = TestDesk.whole(Files.createTempDirectory("hand"));
    WindowRobot.doOnEvents(() -> desk.window.choose(CHOOSE));
    desk.robot.patiently("the plan is tried", () -> !desk.robot.isThere("status.progress"));
    HandBench bench = new HandBench(desk);
    bench.resize();
    String rows = bench.row("turned", false) + bench.row("tilted", true);
    TestDesk.closeAll();
    return rows;
  }

  /** Makes the canvas as large as pictures are in the other tables. */
  private void resize() {
    WindowRobot.doOnEvents(
        () -> {
          var window = desk.window;
          window.setBounds(
              0,
              0,
              window.getWidth() + WIDTH - view.getWidth(),
              window.getHeight() + HEIGHT - view.getHeight());
        });
    desk.robot.waitFor("it has its size", () -> view.getWidth() == WIDTH && view.getHeight() == HEIGHT);
    desk.robot.settle();
  }

  private String row(String what, boolean shift) throws InterruptedException {
    Times told = new Times();
    Times drawn = new Times();
    WindowRobot.doOnEvents(() -> mouse(MouseEvent.MOUSE_PRESSED, 0, shift));
    for (int n = 1; n <= WARM_UPS + RUNS; n++) {
      int step = n;
      LiveRenderer.Request before =
          WindowRobot.onEvents(() -> view.picture().orElseThrow().frame().request());
      long began = System.nanoTime();
      WindowRobot.doOnEvents(() -> mouse(MouseEvent.MOUSE_DRAGGED, step, shift));
      // what the drag lets be painted was queued before this
      WindowRobot.doOnEvents(() -> {});
      long shown = System.nanoTime();
      while (!WindowRobot.onEvents(() -> isNew(before))) {
        Thread.sleep(0, 200_000);
      }
      WindowRobot.doOnEvents(() -> {});
      long seen = System.nanoTime();
      if (n > WARM_UPS) {
        told.add(shown - began);
        drawn.add(seen - began);
      }
    }
    WindowRobot.doOnEvents(() -> mouse(MouseEvent.MOUSE_RELEASED, 0, shift));
    return String.format("| %s | %s | %s |%n", what, told, drawn);
  }

  /** Whether the picture is of what the hand has made of the tree, not a finer one of before. */
  private boolean isNew(LiveRenderer.Request before) {
    LiveRenderer.Request now = view.picture().orElseThrow().frame().request();
    return now.shown().tree() != before.shown().tree()
        || !now.camera().angle().equals(before.camera().angle());
  }

  private void mouse(int what, int step, boolean shift) {
    double round = 2 * Math.PI * step / ROUND;
    int x = (int) Math.round(WIDTH / 2.0 + REACH * Math.sin(round));
    int y = (int) Math.round(HEIGHT / 2.0 + REACH * (1 - Math.cos(round)));
    int keys = InputEvent.BUTTON1_DOWN_MASK | (shift ? InputEvent.SHIFT_DOWN_MASK : 0);
    Component at = view;
    at.dispatchEvent(
        new MouseEvent(
            at, what, System.currentTimeMillis(), keys, x, y, 1, false, MouseEvent.BUTTON1));
  }
}
