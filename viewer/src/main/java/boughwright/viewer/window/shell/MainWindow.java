// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import boughwright.modeller.units.DisplayUnits;
import boughwright.viewer.window.look.Command;
import boughwright.viewer.window.look.Commands;
import boughwright.viewer.window.look.ModePanel;
import boughwright.viewer.window.look.Shade;
import boughwright.viewer.window.look.Theme;
import boughwright.viewer.window.shell.kept.Settings;
import boughwright.viewer.window.work.Jobs;
import boughwright.viewer.window.work.Topic;
import boughwright.viewer.window.work.Workspace;
import java.awt.BorderLayout;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.JFrame;
import javax.swing.JPanel;

/** One window with one tree in it. Belongs to the event thread. */
public final class MainWindow extends JFrame {
  private static final long serialVersionUID = 1L;

  /** The least size everything has room in [user pixels]. */
  private static final Dimension LEAST = new Dimension(1024, 640);

  private final transient Desk desk;
  private final transient Workspace workspace;
  private final transient Jobs jobs;
  private final transient PartsMaker.Parts parts;
  private final transient FileWork files;
  private final transient Commands commands = new Commands();
  private final transient ModeTabs tabs;
  private final transient Keeping keeping;
  private final StatusLine status;
  private Rectangle usual = new Rectangle();

  MainWindow(Desk desk, Opened first, DisplayUnits units) {
    this.desk = desk;
    workspace = new Workspace(first.history(), first.file(), units);
    workspace.photos().hold(first.photos());
    jobs = new Jobs(workspace::say);
    jobs.hold();
    parts = desk.maker().make(workspace, jobs);
    files = new FileWork(this, workspace, first.print(), desk::used);
    keeping = new Keeping(desk.recovery(), workspace, first.recovery());
    tabs = new ModeTabs(parts.panels());
    status = new StatusLine(jobs, () -> commands.run("help.notices"));
    setName("main");
    setMinimumSize(LEAST);
    lay();
    Areas areas = new Areas(areas());
    new WindowCommands(this, desk, areas).addTo(commands);
    parts.panels().stream().map(ModePanel::commands).forEach(commands::addAll);
    WindowMenus menus = new WindowMenus(this, desk);
    setJMenuBar(menus.bar());
    Mnemonics letters = new Mnemonics(menus.bar(), tabs.row(), status, parts.canvas().component());
    parts.panels().forEach(panel -> letters.settle(panel.component()));
    commands.bind(getRootPane());
    getRootPane().setTransferHandler(new FileDrop(this));
    workspace.listen(this::heard);
    setDefaultCloseOperation(DO_NOTHING_ON_CLOSE);
    addWindowListener(new Leaving());
    tabs.choose(0);
    parts.whenDrawn().accept(jobs::release);
    showTitle();
    files.welcome(first);
  }

  private void lay() {
    JPanel middle = new JPanel(new BorderLayout());
    middle.add(parts.canvas().component(), BorderLayout.CENTER);
    middle.add(tabs.side(), BorderLayout.EAST);
    JPanel whole = new JPanel(new BorderLayout());
    whole.add(tabs.row(), BorderLayout.NORTH);
    whole.add(middle, BorderLayout.CENTER);
    whole.add(status, BorderLayout.SOUTH);
    whole.setBackground(Theme.colour(Shade.PANEL));
    setContentPane(whole);
  }

  private List<Container> areas() {
    return List.of(tabs.row(), parts.canvas().component(), tabs.side(), status);
  }

  private void heard(Topic topic) {
    switch (topic) {
      case FILE, OPENED, DOCUMENT -> showTitle();
      case NOTICE -> workspace.notice().ifPresent(status::say);
      default -> {
        // the rest is for the panels
      }
    }
    commands.refresh();
  }

  private void showTitle() {
    setTitle(
        workspace.document().tree().name()
            + " \u2014 "
            + workspace.file().map(Path::getFileName).map(Path::toString).orElse("in no file yet")
            + (workspace.history().isSaved() ? "" : " \u2014 not saved"));
  }

  /** What is open in it. */
  public Workspace workspace() {
    return workspace;
  }

  /** What can be done in it. */
  public Commands commands() {
    return commands;
  }

  /** What it is filled with. */
  public PartsMaker.Parts parts() {
    return parts;
  }

  Jobs jobs() {
    return jobs;
  }

  FileWork files() {
    return files;
  }

  Keeping keeping() {
    return keeping;
  }

  StatusLine status() {
    return status;
  }

  /** Brings a mode into view, counted from 0. */
  public void choose(int mode) {
    tabs.choose(mode);
  }

  int mode() {
    return tabs.chosen();
  }

  /** Commands of the modes, in their order. */
  List<List<Command>> modeCommands() {
    return parts.panels().stream().map(ModePanel::commands).toList();
  }

  /** Places it: beside the window before, else where the last one stood on this screen. */
  void place(Optional<MainWindow> before) {
    String screen = Placement.screen(getGraphicsConfiguration());
    before.ifPresentOrElse(
        other -> Placement.placeBeside(this, other),
        () -> Placement.place(this, Optional.ofNullable(desk.settings().places().get(screen))));
    usual = getBounds();
    addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent event) {
            remember();
          }

          @Override
          public void componentMoved(ComponentEvent event) {
            remember();
          }
        });
  }

  private void remember() {
    if (getExtendedState() == NORMAL) {
      usual = getBounds();
    }
  }

  /** Settings that know where it stands. */
  Settings placed(Settings known) {
    return known.withPlace(Placement.screen(getGraphicsConfiguration()), Placement.of(this, usual));
  }

  /** Lets go of everything; what was not saved must have been asked about before. */
  void leave() {
    keeping.forget();
    dispose();
    jobs.close();
    parts.close().run();
  }

  /** Asks before the window goes. */
  private final class Leaving extends WindowAdapter {
    @Override
    public void windowClosing(WindowEvent event) {
      desk.close(MainWindow.this);
    }

    @Override
    public void windowActivated(WindowEvent event) {
      commands.refresh();
    }
  }
}
