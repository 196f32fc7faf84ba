// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch;

import boughwright.modeller.history.History;
import boughwright.modeller.plan.Document;
import boughwright.modeller.units.DisplayUnits;
import boughwright.viewer.window.WindowRobot;
import boughwright.viewer.window.canvas.TreeCanvas;
import boughwright.viewer.window.look.Commands;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Keys;
import boughwright.viewer.window.work.Jobs;
import boughwright.viewer.window.work.Workspace;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.event.KeyEvent;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JPanel;

/** A window with a tree and the panel of measuring, as the program puts them beside each other. */
final class SketchFrame {
  static final int WIDTH = 1280;
  static final int HEIGHT = 860;

  final Workspace workspace;
  final TreeCanvas canvas;
  final MeasurePanel panel;
  final Commands commands = new Commands();
  final JFrame frame = new JFrame("sketch");
  private final Jobs jobs;

  private SketchFrame(Document document, Dimension size) {
    workspace = new Workspace(History.unsaved(document), Optional.empty(), DisplayUnits.USUAL);
    jobs = new Jobs(workspace::say);
    canvas = new TreeCanvas(workspace);
    panel = new MeasurePanel(workspace, canvas, jobs);
    commands.addAll(panel.commands());
    JPanel whole = new JPanel(new BorderLayout());
    JPanel side =
        new JPanel(new BorderLayout()) {
          private static final long serialVersionUID = 1L;

          @Override
          public Dimension getPreferredSize() {
            boolean wide = Boolean.TRUE.equals(panel.component().getClientProperty(Controls.WIDE));
            return new Dimension(wide ? whole.getWidth() * 6 / 10 : 420, 0);
          }
        };
    side.add(panel.component());
    whole.add(canvas.component());
    whole.add(side, BorderLayout.EAST);
    JLabel status = new JLabel(" ");
    status.setName("status");
    whole.add(status, BorderLayout.SOUTH);
    workspace.listen(
        topic -> workspace.notice().ifPresent(notice -> status.setText(notice.words())));
    frame.setContentPane(whole);
    commands.bind(frame.getRootPane());
    bindUndo(frame.getRootPane());
    frame.setSize(size);
    frame.setVisible(true);
  }

  private void bindUndo(JComponent root) {
    root.registerKeyboardAction(
        event -> workspace.undo(),
        Keys.menu(KeyEvent.VK_Z),
        JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT);
  }

  static SketchFrame open(Document document) {
    return open(document, new Dimension(WIDTH, HEIGHT));
  }

  static SketchFrame open(Document document, Dimension size) {
    WindowRobot.requireDisplay();
    SketchFrame opened = WindowRobot.onEvents(() -> new SketchFrame(document, size));
    new WindowRobot().waitFor("the window has the focus", opened.frame::isFocused);
    return opened;
  }

  /** What the mouse draws on. */
  Component view() {
    return WindowRobot.all(frame).stream()
        .filter(part -> "canvas.view".equals(part.getName()))
        .findFirst()
        .orElseThrow();
  }

  void close() {
    WindowRobot.doOnEvents(
        () -> {
          frame.dispose();
          jobs.close();
          canvas.close();
        });
  }
}
