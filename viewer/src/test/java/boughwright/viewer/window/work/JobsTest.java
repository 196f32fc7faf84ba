// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.work;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Place;
import boughwright.modeller.problem.Problem;
import java.awt.EventQueue;
import java.lang.reflect.InvocationTargetException;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Work off the event thread. */
class JobsTest {
  private static final long PATIENCE = 20;

  private final BlockingQueue<Notice> notices = new LinkedBlockingQueue<>();
  private final BlockingQueue<String> results = new LinkedBlockingQueue<>();
  private final Jobs jobs = new Jobs(notices::add);

  @AfterEach
  void stop() throws Exception {
    EventQueue.invokeAndWait(jobs::close);
  }

  private Background.Job start(Background.Work<String> work)
      throws InterruptedException, InvocationTargetException {
    AtomicReference<Background.Job> job = new AtomicReference<>();
    EventQueue.invokeAndWait(() -> job.set(jobs.start("Trying plan a", work, results::add)));
    return job.get();
  }

  @Test
  void aResult_isHandedOverOnTheEventThread() throws Exception {
    AtomicReference<List<Boolean>> where = new AtomicReference<>();
    CountDownLatch handed = new CountDownLatch(1);
    EventQueue.invokeAndWait(
        () ->
            jobs.start(
                "Looking",
                progress -> EventQueue.isDispatchThread(),
                inWork -> {
                  where.set(List.of(inWork, EventQueue.isDispatchThread()));
                  handed.countDown();
                }));
    assertThat(handed.await(PATIENCE, TimeUnit.SECONDS)).isTrue();
    assertThat(where.get()).containsExactly(false, true);
  }

  @Test
  void twoWorks_goOnAtOnce() throws Exception {
    CountDownLatch both = new CountDownLatch(2);
    Background.Work<String> meet =
        progress -> {
          both.countDown();
          return both.await(PATIENCE, TimeUnit.SECONDS) ? "met" : "alone";
        };
    start(meet);
    start(meet);
    assertThat(results.poll(PATIENCE, TimeUnit.SECONDS)).isEqualTo("met");
    assertThat(results.poll(PATIENCE, TimeUnit.SECONDS)).isEqualTo("met");
  }

  @Test
  void aRefusal_isToldInItsOwnLine() throws Exception {
    Problem problem = Problem.fault(Place.of("plan a"), "k", "it does not hold", "Pull less");
    start(
        progress -> {
          throw new InputException(problem);
        });
    Notice said = notices.poll(PATIENCE, TimeUnit.SECONDS);
    assertThat(said)
        .isEqualTo(
            new Notice(Notice.Kind.FAULT, "Trying plan a: plan a: it does not hold. Pull less"));
  }

  @Test
  void aDefect_isToldAsADefectInOneLine() throws Exception {
    start(
        progress -> {
          throw new IllegalStateException("odd\nnumber");
        });
    Notice said = notices.poll(PATIENCE, TimeUnit.SECONDS);
    assertThat(said.words())
        .contains("defect of Boughwright")
        .contains("odd")
        .contains("JobsTest")
        .doesNotContain("\n");
  }

  @Test
  void cancelledWork_endsAndHandsNothingOver() throws Exception {
    CountDownLatch begun = new CountDownLatch(1);
    CountDownLatch ended = new CountDownLatch(1);
    Background.Job job =
        start(
            progress -> {
              begun.countDown();
              try {
                while (true) {
                  progress.part(0.5);
                }
              } catch (CancellationException e) {
                ended.countDown();
                throw e;
              }
            });
    assertThat(begun.await(PATIENCE, TimeUnit.SECONDS)).isTrue();
    EventQueue.invokeAndWait(job::cancel);
    assertThat(ended.await(PATIENCE, TimeUnit.SECONDS)).isTrue();
    EventQueue.invokeAndWait(() -> {});
    assertThat(jobs.running()).isEmpty();
    assertThat(results).isEmpty();
    assertThat(notices).isEmpty();
  }

  @Test
  void runningWork_tellsWhatGoesOnAndHowFar() throws Exception {
    CountDownLatch told = new CountDownLatch(1);
    CountDownLatch leave = new CountDownLatch(1);
    start(
        progress -> {
          progress.now("Drawing risk");
          progress.part(0.25);
          told.countDown();
          leave.await();
          return "";
        });
    assertThat(told.await(PATIENCE, TimeUnit.SECONDS)).isTrue();
    AtomicReference<List<Jobs.State>> states = new AtomicReference<>();
    EventQueue.invokeAndWait(() -> states.set(jobs.running()));
    leave.countDown();
    assertThat(states.get())
        .singleElement()
        .satisfies(
            state -> {
              assertThat(state.name()).isEqualTo("Trying plan a");
              assertThat(state.now()).isEqualTo("Drawing risk");
              assertThat(state.part()).isEqualTo(0.25);
            });
  }

  @Test
  void workStartedAfterClosing_isNotDone() throws Exception {
    EventQueue.invokeAndWait(jobs::close);
    Background.Job job = start(progress -> "done");

    assertThat(job.isRunning()).isFalse();
    EventQueue.invokeAndWait(() -> assertThat(jobs.running()).isEmpty());
    assertThat(results).isEmpty();
    assertThat(notices).isEmpty();
  }
}
