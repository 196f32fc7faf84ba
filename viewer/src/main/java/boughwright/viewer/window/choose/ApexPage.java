// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.choose;

import boughwright.modeller.edit.PlanEdits;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.problem.VisibleText;
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
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.Timer;

/** Which leader becomes the top: each one bent over the root base in the background, and ranked. */
final class ApexPage {
  /** So often it is looked whether the search was stopped at the foot of the window [ms]. */
  private static final int WATCH_MS = 200;

  private final Workspace workspace;
  private final Canvas canvas;
  private final Background background;
  private final ApexWords words;
  private final JButton find = Controls.button("Try every leader");
  private final Prose note = Controls.prose("");
  private final JPanel list = Controls.stack();
  private final JPanel column = Controls.column();
  private final Timer watch = new Timer(WATCH_MS, event -> watch());
  private Optional<Background.Job> job = Optional.empty();
  private Optional<Apexes> found = Optional.empty();
  private Optional<ApexRequest> asked = Optional.empty();
  private boolean inView;

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
    boolean leaves = inView && !on;
    inView = on;
    if (leaves) {
      canvas.preview(Optional.empty());
    }
    follow();
  }

  private boolean isLooking() {
    return job.filter(Background.Job::isRunning).isPresent();
  }

  private ApexRequest request() {
    Trying usual = Trying.usual(LocalDate.now());
    Trying quick =
        new Trying(
            usual.draws().map(all -> new Trying.Draws(ApexRequest.USUAL_DRAWS, all.seed())),
            usual.said(),
            Optional.empty());
    return new ApexRequest(
        workspace.document().tree(),
        workspace.plan().orElseGet(() -> PlanEdits.empty("")),
        TrialSpecies.of(workspace.document().tree()),
        ReachRequest.Wishes.USUAL,
        quick,
        ApexRequest.USUAL_MOST);
  }

  /** What was found counts for the tree and the plan it was found for. */
  void follow() {
    boolean other =
        asked
            .filter(
                one ->
                    !one.tree().equals(workspace.document().tree())
                        || !one.plan()
                            .equals(workspace.plan().orElseGet(() -> PlanEdits.empty(""))))
            .isPresent();
    if (other) {
      job.ifPresent(Background.Job::cancel);
      found = Optional.empty();
      asked = Optional.empty();
    }
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
    ApexRequest request = request();
    asked = Optional.of(request);
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
    list.removeAll();
    List<ApexOption> options = found.map(Apexes::options).orElse(List.of());
    for (int n = 0; n < options.size(); n++) {
      list.add(card(n + 1, options.get(n)), "wmin 0, growx, gaptop " + Controls.NEAR);
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
    return words.opening(found.get());
  }

  private JComponent card(int number, ApexOption option) {
    String leader = VisibleText.of(option.leader().tip().segment());
    JPanel card =
        Controls.section(
            number + ":  " + leader + (option.best() ? ", worth comparing" : ""),
            Controls.prose(words.option(option)));
    JButton keep = Controls.button("Make a plan of it");
    Controls.named(keep, "choose.apex-keep-" + number, "Make a plan of leader " + leader);
    keep.addActionListener(event -> keep(option.plan()));
    Optional<ApexOption.Bent> bent = option.bent().filter(one -> one.trial().outcome().holds());
    if (bent.isPresent()) {
      JButton show = Controls.button("Show its pose");
      Controls.named(show, "choose.apex-show-" + number, "Show the pose of leader " + leader);
      show.addActionListener(
          event -> canvas.preview(Optional.of(new Preview(option.plan(), bent.get().trial()))));
      card.add(Controls.row(show, keep), "wmin 0, growx");
    } else {
      card.add(keep, "wmin 0, growx");
    }
    return card;
  }

  /** Adds the plan of a leader under a name of its own, and works on it. */
  private void keep(Plan plan) {
    String id = PlanEdits.nextId(workspace.document());
    Plan named =
        new Plan(
            id,
            plan.frontAzimuth(),
            plan.planting(),
            plan.cuts(),
            plan.apex(),
            plan.proposals(),
            plan.selfWeight(),
            plan.stance(),
            plan.clamp(),
            plan.extras());
    if (workspace.edit(PlanEdits.add(named))) {
      workspace.choosePlan(id);
    }
  }
}
