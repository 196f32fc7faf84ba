// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.work;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.edit.BendEdits;
import boughwright.modeller.edit.ProposalEdits;
import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.history.History;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.Hold;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.units.DisplayUnits;
import boughwright.physics.trial.Trial;
import boughwright.physics.trial.TrialRequest;
import boughwright.physics.trial.TrialSpecies;
import boughwright.viewer.window.OnScreen;
import boughwright.viewer.window.WindowRobot;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Answers that come late, in the wrong order, or not at all. */
@OnScreen
class TrialsTest {
  private static final Path HORNBEAM = Path.of("../examples/hedge-hornbeam.tree.json");
  private static final LocalDate DAY = LocalDate.of(2026, 3, 5);

  private final Waiting background = new Waiting();
  private Workspace workspace;
  private Trials trials;

  /** Work that waits until a test lets it run. */
  private static final class Waiting implements Background {
    final List<Piece<?>> pieces = new ArrayList<>();

    @Override
    public <T> Job start(String name, Work<T> work, Consumer<T> done) {
      Piece<T> piece = new Piece<>(work, done);
      pieces.add(piece);
      return piece;
    }

    /** Runs a piece, and hands over even what was stopped meanwhile. */
    void run(int n) {
      pieces.get(n).run();
    }
  }

  private static final class Piece<T> implements Background.Job, Background.Progress {
    private final Background.Work<T> work;
    private final Consumer<T> done;
    private boolean running = true;
    private boolean cancelled;

    Piece(Background.Work<T> work, Consumer<T> done) {
      this.work = work;
      this.done = done;
    }

    void run() {
      try {
        T result = work.run(this);
        running = false;
        done.accept(result);
      } catch (Exception e) {
        throw new AssertionError(e);
      }
    }

    @Override
    public void cancel() {
      running = false;
      cancelled = true;
    }

    @Override
    public boolean isRunning() {
      return running;
    }

    @Override
    public boolean isStopped() {
      return cancelled;
    }

    @Override
    public void now(String what) {
      // nobody looks
    }

    @Override
    public void part(double part) {
      // nobody looks
    }
  }

  @BeforeEach
  void open() throws InputException {
    Document document = TreeFiles.read(HORNBEAM).document();
    WindowRobot.doOnEvents(
        () -> {
          workspace = new Workspace(History.opened(document), Optional.empty(), DisplayUnits.USUAL);
          trials = new Trials(workspace, background, () -> DAY);
        });
  }

  private void drawIn(double tension) {
    Proposal first = workspace.plan().orElseThrow().proposals().get(0);
    GuyLine line = first.guyLines().get(0);
    GuyLine other = line.with(line.at(), line.anchor(), new Hold.Tension(tension));
    ProposalEdits.Where where =
        new ProposalEdits.Where(workspace.plan().orElseThrow().id(), first.id());
    assertThat(workspace.edit(BendEdits.changeLine(where, line.id(), other))).isTrue();
  }

  @Test
  void planOpened_poseIsThatOfATrial() {
    WindowRobot.doOnEvents(
        () -> {
          background.run(0);
          Document document = workspace.document();
          assertThat(workspace.answer().orElseThrow().trial())
              .isEqualTo(
                  Trial.run(
                      TrialRequest.of(
                          document.tree(),
                          workspace.plan().orElseThrow(),
                          TrialSpecies.of(document.tree()))));
          assertThat(trials.isOfPlanBefore()).isFalse();
        });
  }

  @Test
  void answerOfAnEarlierPlan_isNeverTaken() {
    WindowRobot.doOnEvents(
        () -> {
          drawIn(3);
          assertThat(background.pieces.get(0).cancelled).isTrue();
          background.run(0);
          assertThat(workspace.answer()).isEmpty();
          assertThat(trials.shown()).isEmpty();
        });
  }

  @Test
  void planChanged_keepsTheLastGoodAndSaysItIsOfThePlanBefore() {
    WindowRobot.doOnEvents(
        () -> {
          background.run(0);
          Answer before = workspace.answer().orElseThrow();
          drawIn(3);
          assertThat(workspace.answer()).isEmpty();
          assertThat(trials.shown()).contains(before);
          assertThat(trials.isOfPlanBefore()).isTrue();
          background.run(1);
          assertThat(trials.isOfPlanBefore()).isFalse();
          assertThat(trials.shown().orElseThrow().plan()).isEqualTo(workspace.plan().orElseThrow());
        });
  }

  @Test
  void undone_isKnownAtOnceWhereItWasWorkedOut() {
    WindowRobot.doOnEvents(
        () -> {
          trials.want(workspace.plan().orElseThrow());
          background.run(1);
          Answer full = workspace.answer().orElseThrow();
          assertThat(full.trial().risk()).isPresent();
          assertThat(full.course()).isPresent();
          drawIn(3);
          workspace.undo();
          assertThat(workspace.answer()).contains(full);
        });
  }
}
