// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.pull;

import boughwright.modeller.plan.Plan;
import boughwright.modeller.problem.VisibleText;
import boughwright.physics.stage.Trying;
import boughwright.viewer.window.canvas.Canvas;
import boughwright.viewer.window.look.Command;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Fold;
import boughwright.viewer.window.look.ModePanel;
import boughwright.viewer.window.look.Prose;
import boughwright.viewer.window.look.Reading;
import boughwright.viewer.window.look.Shade;
import boughwright.viewer.window.work.Background;
import boughwright.viewer.window.work.Topic;
import boughwright.viewer.window.work.Trials;
import boughwright.viewer.window.work.Workspace;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Plans side by side. */
public final class ComparePanel implements ModePanel {
  /** More columns than this do not fit beside the tree. */
  private static final int MOST = 4;

  private static final int FIRST = 2;

  private final Workspace workspace;
  private final Canvas canvas;
  private final Trials trials;
  private final JPanel choices = new Fold(MOST);
  private final JPanel table = new JPanel();
  private final Prose note = Controls.prose("");
  private final JComponent whole;
  private List<String> chosen = List.of();
  private boolean inView;

  /** What was worked out of trials that are compared. */
  private final Map<Trying.Tried, CompareRow.Subject> subjects = new IdentityHashMap<>();

  /** A panel with trials of its own. */
  public ComparePanel(Workspace workspace, Canvas canvas, Background background) {
    this(workspace, canvas, new Trials(workspace, background));
  }

  /** A panel that shares trials with others. */
  public ComparePanel(Workspace workspace, Canvas canvas, Trials trials) {
    this.workspace = workspace;
    this.canvas = canvas;
    this.trials = trials;
    JPanel column = Controls.column();
    column.setName("compare.panel");
    table.setOpaque(false);
    table.setName("compare.table");
    note.setName("compare.note");
    column.add(Controls.section("Plans to compare", choices, note));
    column.add(table, "gaptop " + Controls.APART + ", wmin 0, growx");
    whole = Controls.scrolling(column);
    trials.listen(this::fill);
    workspace.listen(
        topic -> {
          if (topic == Topic.DOCUMENT || topic == Topic.UNITS || topic == Topic.PLAN) {
            follow();
          }
        });
    follow();
  }

  private void follow() {
    subjects.clear();
    List<String> ids = workspace.document().plans().stream().map(Plan::id).toList();
    List<String> still = new ArrayList<>(chosen);
    still.retainAll(ids);
    for (String id : ids) {
      if (still.size() < FIRST && !still.contains(id)) {
        still.add(id);
      }
    }
    chosen = List.copyOf(still);
    choices.removeAll();
    for (String id : ids) {
      JCheckBox box = Controls.large(new JCheckBox(VisibleText.of(id)));
      Controls.named(box, "compare.plan-" + id, "Compare plan " + id);
      box.setOpaque(false);
      box.setSelected(chosen.contains(id));
      box.setEnabled(box.isSelected() || chosen.size() < MOST);
      box.addActionListener(event -> toggle(id, box.isSelected()));
      box.setToolTipText(VisibleText.of(id));
      choices.add(box);
    }
    fill();
  }

  private void toggle(String id, boolean on) {
    List<String> next = new ArrayList<>(chosen);
    next.remove(id);
    if (on) {
      next.add(id);
    }
    choose(next);
  }

  /** Compares these plans of the document, at most four. */
  public void choose(List<String> ids) {
    chosen = List.copyOf(ids.subList(0, Math.min(MOST, ids.size())));
    follow();
  }

  private List<Plan> plans() {
    return chosen.stream().flatMap(id -> workspace.document().plan(id).stream()).toList();
  }

  /** Whether all that is compared is known. */
  public boolean isComplete() {
    return plans().stream().allMatch(plan -> trials.of(plan).isPresent());
  }

  private void fill() {
    if (!inView) {
      return;
    }
    List<Plan> plans = plans();
    plans.forEach(trials::want);
    table.removeAll();
    note.say(
        plans.size() < FIRST
            ? "Make a second plan to compare it with, for example by duplicating this one."
            : isComplete() ? "" : "What is not known yet is being worked out.",
        Shade.QUIET);
    note.setVisible(!note.getText().isEmpty());
    table.setLayout(
        new MigLayout(
            "wrap " + Math.max(1, plans.size()) + ", fillx, insets 0, gap 0",
            "[grow,fill,sg,0:pref]".repeat(Math.max(1, plans.size()))));
    heads(plans);
    for (CompareRow row : CompareRow.all()) {
      row(row, plans);
    }
    table.revalidate();
    table.repaint();
  }

  private void heads(List<Plan> plans) {
    for (Plan plan : plans) {
      boolean here = workspace.plan().equals(Optional.of(plan));
      JButton show = Controls.button(here ? "Shown now" : "Show it");
      Controls.named(show, "compare.show-" + plan.id(), "Show plan " + plan.id());
      show.setEnabled(!here);
      show.addActionListener(event -> workspace.choosePlan(plan.id()));
      show.setToolTipText(VisibleText.of(plan.id()));
      JPanel head = Controls.section(VisibleText.of(plan.id()), show);
      table.add(head, "wmin 0, growx, aligny bottom, gapright 8, gapbottom 8");
    }
  }

  private void row(CompareRow row, List<Plan> plans) {
    for (int column = 0; column < plans.size(); column++) {
      Reading reading = new Reading("compare." + row.id() + "-" + column, row.title());
      Optional<String> words = words(row, plans.get(column));
      if (words.isPresent()) {
        reading.tell(words.get(), row.what());
      } else {
        reading.clear("not computed yet");
      }
      table.add(reading, "wmin 0, growx, aligny top");
    }
  }

  private Optional<String> words(CompareRow row, Plan plan) {
    Optional<Trying.Tried> tried = trials.of(plan);
    return tried.map(one -> row.of().apply(subject(one)));
  }

  /** What is told of a plan, worked out once for all rows. */
  private CompareRow.Subject subject(Trying.Tried tried) {
    return subjects.computeIfAbsent(
        tried, one -> CompareRow.Subject.of(workspace.document(), one, workspace.units()));
  }

  /** What a row says of a plan by its column, once that is known. */
  String words(String row, int column) {
    CompareRow found =
        CompareRow.all().stream().filter(one -> one.id().equals(row)).findFirst().orElseThrow();
    return words(found, plans().get(column)).orElse("");
  }

  @Override
  public String name() {
    return "Compare";
  }

  @Override
  public char mnemonic() {
    return 'C';
  }

  @Override
  public JComponent component() {
    return whole;
  }

  @Override
  public List<Command> commands() {
    return List.of();
  }

  @Override
  public void shown() {
    inView = true;
    canvas.useNone();
    fill();
  }

  @Override
  public void hidden() {
    inView = false;
    plans().forEach(trials::drop);
  }
}
