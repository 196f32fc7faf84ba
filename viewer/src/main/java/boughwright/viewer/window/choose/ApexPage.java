// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.choose;

import boughwright.modeller.edit.PlanEdits;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.PlanDraft;
import boughwright.modeller.plan.Schedule;
import boughwright.modeller.problem.VisibleText;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.units.DisplayUnits;
import boughwright.physics.apex.ApexOption;
import boughwright.physics.apex.ApexRequest;
import boughwright.physics.apex.ApexSearch;
import boughwright.physics.apex.Apexes;
import boughwright.physics.reach.ReachRequest;
import boughwright.physics.stage.Trying;
import boughwright.physics.trial.TrialSpecies;
import boughwright.viewer.window.canvas.Canvas;
import boughwright.viewer.window.canvas.Preview;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Prose;
import boughwright.viewer.window.look.Shade;
import boughwright.viewer.window.work.Background;
import boughwright.viewer.window.work.Workspace;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.Timer;

/** Which leader becomes the top: each one bent over the root base in the background, and ranked. */
final class ApexPage {
  /** So often it is looked whether the search was stopped at the foot of the window [ms]. */
  private static final int WATCH_MS = 200;

  private static final String SHOW = "Show its pose";
  private static final String BACK = "Show the plan again";

  private final Workspace workspace;
  private final Canvas canvas;
  private final Background background;
  private final ApexWords words;
  private final JButton find = Controls.button("Try every leader");
  private final Prose note = Controls.prose("");
  private final JPanel list = Controls.stack();
  private final JPanel column = Controls.column();
  private final Timer watch = new Timer(WATCH_MS, event -> watch());
  private final Map<Integer, JButton> poses = new TreeMap<>();
  private Optional<Background.Job> job = Optional.empty();
  private Optional<Apexes> found = Optional.empty();
  private Optional<Asked> asked = Optional.empty();
  private Optional<Listed> listed = Optional.empty();
  private Optional<Integer> posed = Optional.empty();
  private boolean inView;

  /** For which tree leaders were tried, and from which plan; the bends of that do not count. */
  private record Asked(Tree tree, Optional<Plan> plan) {
    static Asked of(Workspace workspace) {
      return new Asked(workspace.document().tree(), workspace.plan().map(Asked::unbent));
    }

    private static Plan unbent(Plan plan) {
      return plan.withProposals(List.of()).withSchedule(Schedule.UNSAID);
    }

    /** Whether tree and plan are still so, whichever plan is worked on now. */
    boolean holds(Document document) {
      return tree.equals(document.tree())
          && plan.map(one -> document.plan(one.id()).map(Asked::unbent).equals(plan)).orElse(true);
    }

    ApexRequest request() {
      Trying usual = Trying.usual(LocalDate.now());
      Trying quick =
          new Trying(
              usual.draws().map(all -> new Trying.Draws(ApexRequest.USUAL_DRAWS, all.seed())),
              usual.said(),
              Optional.empty());
      return new ApexRequest(
          tree,
          plan.orElseGet(() -> new PlanDraft("").build()),
          TrialSpecies.of(tree),
          ReachRequest.Wishes.USUAL,
          quick,
          ApexRequest.USUAL_MOST);
    }
  }

  /** What the cards tell, in which units. */
  private record Listed(Apexes apexes, DisplayUnits units) {}

  ApexPage(Workspace workspace, Canvas canvas, Background background) {
    this.workspace = workspace;
    this.canvas = canvas;
    this.background = background;
    words = new ApexWords(workspace);
    Controls.named(find, "choose.apex-find", "Try every leader as the top");
    find.setMnemonic('y');
    find.addActionListener(event -> findOrStop());
    note.setName("choose.apex-note");
    list.setName("choose.apexes");
    column.setName("choose.apex-panel");
    column.add(Controls.section("What becomes the top", find, note, list));
  }

  JComponent component() {
    return column;
  }

  void inView(boolean on) {
    if (inView && !on) {
      pose(Optional.empty());
    }
    inView = on;
    follow();
  }

  private boolean isLooking() {
    return job.filter(Background.Job::isRunning).isPresent();
  }

  /** The document, the plan that is worked on or the units have changed. */
  void follow() {
    if (asked.filter(one -> !one.holds(workspace.document())).isPresent()) {
      job.ifPresent(Background.Job::cancel);
      found = Optional.empty();
      asked = Optional.empty();
    }
    // the canvas has gone back to the plan
    posed = Optional.empty();
    if (inView) {
      fill();
    }
  }

  private void watch() {
    if (!isLooking()) {
      watch.stop();
      fill();
    }
  }

  private void findOrStop() {
    if (isLooking()) {
      job.ifPresent(Background.Job::cancel);
      fill();
      return;
    }
    pose(Optional.empty());
    Asked now = Asked.of(workspace);
    ApexRequest request = now.request();
    asked = Optional.of(now);
    found = Optional.empty();
    job =
        Optional.of(
            background.start(
                "Trying leaders as the top",
                progress -> searched(request, progress),
                apexes -> {
                  found = Optional.of(apexes);
                  fill();
                }));
    watch.start();
    fill();
  }

  private static Apexes searched(ApexRequest request, Background.Progress progress) {
    Trying.Watch heard =
        new Trying.Watch() {
          @Override
          public void now(String what) {
            progress.now(what);
          }

          @Override
          public void part(double done) {
            progress.part(done);
          }
        };
    return ApexSearch.of(request, heard, progress::isStopped);
  }

  private void fill() {
    find.setText(isLooking() ? "Stop" : "Try every leader");
    note.say(told(), Shade.QUIET);
    note.setVisible(!note.getText().isEmpty());
    Optional<Listed> now = found.map(apexes -> new Listed(apexes, workspace.units()));
    // a button that was used keeps the keyboard
    if (!now.equals(listed)) {
      listed = now;
      list();
    }
    showPosed();
  }

  private void list() {
    list.removeAll();
    poses.clear();
    List<ApexOption> options = found.map(Apexes::options).orElse(List.of());
    for (int n = 0; n < options.size(); n++) {
      list.add(card(n + 1, options.get(n)), "wmin 0, growx, gaptop " + Controls.APART);
    }
    found
        .flatMap(Apexes::chop)
        .ifPresent(
            chop ->
                list.add(
                    Controls.section(
                        "Or chop it and grow a new leader",
                        Controls.prose(words.chop(chop, found.get().chopIsBest()))),
                    "wmin 0, growx, gaptop " + Controls.APART));
    list.revalidate();
    list.repaint();
  }

  private String told() {
    if (isLooking()) {
      return "Each leader is bent over the root base. Go on meanwhile.";
    }
    if (found.isEmpty()) {
      return "Each leader is bent over the root base, in line with the trunk, and weighed by what it"
          + " risks and leaves. That takes a while.";
    }
    String from =
        asked
            .flatMap(Asked::plan)
            .filter(one -> !workspace.plan().map(Plan::id).equals(Optional.of(one.id())))
            .map(one -> " Tried from plan " + VisibleText.of(one.id()) + ".")
            .orElse("");
    return words.opening(found.get()) + from;
  }

  private JComponent card(int number, ApexOption option) {
    String leader = leader(option);
    JPanel card =
        Controls.section(
            number + ":  " + leader + (option.best() ? ", worth comparing" : ""),
            Controls.prose(words.option(option)));
    JButton keep = Controls.button("Make a plan of it");
    Controls.named(keep, "choose.apex-keep-" + number, "Make a plan of leader " + leader);
    keep.addActionListener(event -> keep(option.plan()));
    if (held(option).isPresent()) {
      JButton show = Controls.button(SHOW);
      Controls.named(show, "choose.apex-show-" + number, SHOW + ", of leader " + leader);
      show.addActionListener(
          event ->
              pose(posed.equals(Optional.of(number)) ? Optional.empty() : Optional.of(number)));
      poses.put(number, show);
      card.add(Controls.row(show, keep), "wmin 0, growx");
    } else {
      card.add(keep, "wmin 0, growx");
    }
    return card;
  }

  /** Shows the pose of a leader by its number; empty for that of the plan again. */
  private void pose(Optional<Integer> number) {
    canvas.preview(
        number.flatMap(one -> found.flatMap(all -> preview(all.options().get(one - 1)))));
    posed = number;
    showPosed();
  }

  private static Optional<Preview> preview(ApexOption option) {
    return held(option)
        .map(
            bent ->
                new Preview(
                    option.plan(),
                    bent.trial(),
                    Optional.of("leader " + leader(option) + " as the top")));
  }

  private static Optional<ApexOption.Bent> held(ApexOption option) {
    return option.bent().filter(one -> one.trial().outcome().holds());
  }

  private static String leader(ApexOption option) {
    return VisibleText.of(option.leader().tip().segment());
  }

  private void showPosed() {
    poses.forEach(
        (number, button) -> button.setText(posed.equals(Optional.of(number)) ? BACK : SHOW));
  }

  /** Adds the plan of a leader under a name of its own, and works on it. */
  private void keep(Plan plan) {
    String id = PlanEdits.nextId(workspace.document());
    if (workspace.edit(PlanEdits.add(plan.under(id)))) {
      workspace.choosePlan(id);
    }
  }
}
