// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Prose;
import boughwright.viewer.window.look.Shade;
import boughwright.viewer.window.look.Theme;
import boughwright.viewer.window.work.Jobs;
import boughwright.viewer.window.work.Notice;
import java.awt.Graphics;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import net.miginfocom.swing.MigLayout;

/** The foot of a window: what was said last, and the work that is going on. */
final class StatusLine extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final int PERMILLE = 1000;
  private static final int MOST_KEPT = 500;
  private static final int BAR = 100;

  /** Two lines of text, so that the tree does not move when a second one comes. */
  private static final int HIGH = 42;

  /** On a narrower window what is being worked out is told by the bar alone. */
  private static final int LEAST_WIDTH = 640;

  private static final int WORDS = 200;
  private static final int LEAST_WORDS = 120;

  private final Prose said = Controls.prose("");
  private final JButton history = Controls.button("Notices");
  private final Prose work = Controls.remark("");
  private final JProgressBar bar = new JProgressBar(0, PERMILLE);
  private final JButton stop = Controls.button("Stop");
  private final transient Jobs jobs;
  private final transient List<Notice> notices = new ArrayList<>();

  StatusLine(Jobs jobs, Runnable openHistory) {
    super(
        new MigLayout(
            "insets 6 16 6 16",
            "[grow,fill,30%:pref]12[min:pref]",
            "[" + Theme.length(HIGH) + ":pref,center]"));
    this.jobs = jobs;
    setName("status");
    said.setName("status.notice");
    work.setName("status.work");
    Controls.named(history, "status.history", "All notices");
    history.setMnemonic('O');
    history.setToolTipText("Everything that was said since this window was opened");
    history.addActionListener(event -> openHistory.run());
    Controls.named(bar, "status.progress", "Progress");
    Controls.named(stop, "status.stop", "Stop the work that is going on");
    stop.setMnemonic('S');
    stop.addActionListener(event -> stopNewest());
    JPanel right = new JPanel(new MigLayout("insets 0, gapx 12, hidemode 3", "", "[center]"));
    right.setOpaque(false);
    right.add(work, "w " + Theme.length(LEAST_WORDS) + ":" + Theme.length(WORDS) + ":, growx");
    right.add(bar, "w " + Theme.length(BAR / 2) + ":" + Theme.length(BAR) + ":");
    String high = "wmin pref, hmin " + Theme.length(Controls.TARGET);
    right.add(stop, high);
    right.add(history, high);
    add(said, "wmin 0, growx, pushx");
    add(right);
    addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent event) {
            showWork();
          }
        });
    jobs.listen(this::showWork);
    showWork();
  }

  private void stopNewest() {
    List<Jobs.State> running = jobs.running();
    if (!running.isEmpty()) {
      running.get(running.size() - 1).job().cancel();
    }
  }

  /** Says something. */
  void say(Notice notice) {
    notices.add(notice);
    if (notices.size() > MOST_KEPT) {
      notices.remove(0);
    }
    String[] lines = notice.words().split("\n");
    String more = lines.length > 1 ? "  (and " + (lines.length - 1) + " more)" : "";
    said.say(lead(notice.kind()) + lines[0] + more, shade(notice.kind()));
    said.setToolTipText(lines.length > 1 ? notice.words().replace("\n", "  ") : null);
  }

  static String lead(Notice.Kind kind) {
    return switch (kind) {
      case DONE -> "";
      case CAUTION -> "Caution: ";
      case FAULT -> "Not done: ";
    };
  }

  private static Shade shade(Notice.Kind kind) {
    return switch (kind) {
      case DONE -> Shade.INK;
      case CAUTION -> Shade.CAUTION;
      case FAULT -> Shade.FAULT;
    };
  }

  /** All that was said, the oldest first. */
  List<Notice> notices() {
    return List.copyOf(notices);
  }

  private void showWork() {
    List<Jobs.State> running = jobs.running();
    boolean any = !running.isEmpty();
    work.setVisible(any && getWidth() >= Theme.px(LEAST_WIDTH));
    bar.setVisible(any);
    stop.setVisible(any);
    if (any) {
      Jobs.State state = running.get(running.size() - 1);
      String others = running.size() > 1 ? "  (" + running.size() + " at once)" : "";
      bar.setToolTipText(state.now().isEmpty() ? state.name() : state.now());
      work.say((state.now().isEmpty() ? state.name() : state.now()) + others, Shade.QUIET);
      bar.setIndeterminate(state.part() < 0);
      bar.setValue((int) Math.round(Math.max(0, state.part()) * PERMILLE));
    }
  }

  @Override
  public void updateUI() {
    super.updateUI();
    setBorder(BorderFactory.createEmptyBorder(1, 0, 0, 0));
  }

  @Override
  protected void paintComponent(Graphics pen) {
    super.paintComponent(pen);
    pen.setColor(Theme.colour(Shade.RULE));
    pen.fillRect(0, 0, getWidth(), 1);
  }
}
