// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.work;

import boughwright.modeller.plan.Plan;
import boughwright.modeller.tree.Tree;
import boughwright.physics.stage.Trying;
import boughwright.physics.trial.Trial;
import boughwright.physics.trial.TrialRequest;
import boughwright.physics.trial.TrialResult;
import boughwright.physics.trial.TrialSpecies;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.SwingUtilities;
import javax.swing.Timer;

/**
 * Tries the plan that is worked on whenever it changes: its pose at once, its risk after a short
 * pause, then its course; and any other plan when asked. Belongs to the event thread. Numbers are
 * those of the command line for the same plan on the same day.
 */
public final class Trials {
  /** A pause in changing after which the risk is worth drawing [ms] (a choice). */
  private static final int PAUSE = 350;

  /** Plans whose answers are kept, for undo and for comparing (a choice). */
  private static final int KEPT = 24;

  private final Workspace workspace;
  private final Background background;
  private final Supplier<LocalDate> today;
  private final List<Runnable> listeners = new ArrayList<>();
  private final Map<Asked, Trying.Tried> known =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Asked, Trying.Tried> eldest) {
          return size() > KEPT;
        }
      };
  private final Map<Asked, Background.Job> running = new HashMap<>();
  private final Timer pause = new Timer(PAUSE, event -> judge());
  private Optional<Asked> current = Optional.empty();
  private Optional<Background.Job> quick = Optional.empty();
  private Optional<Answer> shown = Optional.empty();

  /** A plan on a tree, tried on a day. */
  private record Asked(Tree tree, Plan plan, LocalDate on) {
    TrialRequest request() {
      return TrialRequest.of(tree, plan, TrialSpecies.of(tree));
    }

    String name() {
      return "plan " + plan.id();
    }
  }

  /** Trials on the day it is when they are made. */
  public Trials(Workspace workspace, Background background) {
    this(workspace, background, LocalDate::now);
  }

  /**
   * Trials on chosen days.
   *
   * @param today the day of a bend that is tried now
   */
  public Trials(Workspace workspace, Background background, Supplier<LocalDate> today) {
    this.workspace = Objects.requireNonNull(workspace, "workspace");
    this.background = Objects.requireNonNull(background, "background");
    this.today = Objects.requireNonNull(today, "today");
    pause.setRepeats(false);
    workspace.listen(
        topic -> {
          if (topic == Topic.DOCUMENT || topic == Topic.PLAN) {
            changed();
          }
        });
    changed();
  }

  /** Asks to be told, on the event thread, when something became known or is known no more. */
  public void listen(Runnable listener) {
    listeners.add(listener);
  }

  private void tell() {
    List.copyOf(listeners).forEach(Runnable::run);
  }

  /**
   * What is known: of the plan as it is, or, while nothing is, of the last that held a pose; see
   * {@link #isOfPlanBefore}. Empty where the document has no plan, or nothing is known yet.
   */
  public Optional<Answer> shown() {
    return workspace.answer().or(() -> workspace.plan().isPresent() ? shown : Optional.empty());
  }

  /** Whether what is shown is not of the plan as it is. */
  public boolean isOfPlanBefore() {
    return workspace.answer().isEmpty() && shown().isPresent();
  }

  /** Whether something of the plan that is worked on is still to come. */
  public boolean isWorking() {
    return quick.filter(Background.Job::isRunning).isPresent()
        || pause.isRunning()
        || current.map(running::get).filter(Background.Job::isRunning).isPresent();
  }

  /** Everything that is told of a plan of the tree as it is, once it is known. */
  public Optional<Trying.Tried> of(Plan plan) {
    return Optional.ofNullable(known.get(asked(plan)));
  }

  /** Whether a plan is being tried in full. */
  public boolean isTrying(Plan plan) {
    return Optional.ofNullable(running.get(asked(plan)))
        .filter(Background.Job::isRunning)
        .isPresent();
  }

  /** Tries a plan of the tree as it is in full, in the background, unless that is known. */
  public void want(Plan plan) {
    want(asked(plan));
  }

  /** Stops trying a plan, unless it is the one that is worked on. */
  public void drop(Plan plan) {
    Asked asked = asked(plan);
    if (!current.equals(Optional.of(asked))) {
      stop(asked);
    }
  }

  private Asked asked(Plan plan) {
    return new Asked(workspace.document().tree(), plan, today.get());
  }

  private void changed() {
    Optional<Asked> next = workspace.plan().map(this::asked);
    if (next.equals(current)) {
      return;
    }
    quick.ifPresent(Background.Job::cancel);
    quick = Optional.empty();
    pause.stop();
    current.ifPresent(this::stop);
    current = next;
    if (next.isPresent()) {
      begin(next.get());
    }
    tell();
  }

  private void begin(Asked asked) {
    Trying.Tried before = known.get(asked);
    if (before != null) {
      take(asked, before);
      return;
    }
    quick =
        Optional.of(
            background.start(
                "Trying " + asked.name(),
                progress -> Trial.run(asked.request()),
                trial -> take(asked, trial)));
    pause.restart();
  }

  private void judge() {
    current.ifPresent(this::want);
  }

  private void want(Asked asked) {
    if (known.containsKey(asked)
        || Optional.ofNullable(running.get(asked)).filter(Background.Job::isRunning).isPresent()) {
      return;
    }
    Trying trying = Trying.usual(asked.on());
    Background.Job job =
        background.start(
            "Working out " + asked.name(),
            progress -> {
              TrialRequest request = asked.request();
              Trying.Watch watch = watch(progress);
              TrialResult judged = trying.judged(request, asked.name(), watch);
              SwingUtilities.invokeLater(() -> take(asked, judged));
              progress.part(1);
              return trying.rest(request, judged, asked.name(), watch);
            },
            tried -> {
              running.remove(asked);
              known.put(asked, tried);
              if (current.equals(Optional.of(asked))) {
                take(asked, tried);
              } else {
                tell();
              }
            });
    if (!job.isRunning()) {
      // the window is gone: who hears of it would only ask again
      return;
    }
    running.put(asked, job);
    tell();
  }

  private static Trying.Watch watch(Background.Progress progress) {
    return new Trying.Watch() {
      @Override
      public void now(String what) {
        progress.now(what);
      }

      @Override
      public void part(double done) {
        progress.part(done);
      }
    };
  }

  private void stop(Asked asked) {
    Background.Job job = running.remove(asked);
    if (job != null) {
      job.cancel();
    }
  }

  private void take(Asked asked, TrialResult trial) {
    boolean better =
        workspace
            .answer()
            .filter(have -> have.course().isPresent() || have.trial().risk().isPresent())
            .filter(have -> have.course().isPresent() || trial.risk().isEmpty())
            .isPresent();
    if (current.equals(Optional.of(asked)) && !better) {
      take(new Answer(asked.tree(), asked.plan(), trial, Optional.empty()));
    }
  }

  private void take(Asked asked, Trying.Tried tried) {
    take(new Answer(asked.tree(), asked.plan(), tried.trial(), tried.course()));
  }

  private void take(Answer answer) {
    if (answer.trial().outcome().holds()) {
      shown = Optional.of(answer);
    }
    workspace.take(answer);
    tell();
  }
}
