// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.work;

import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Problem;
import java.awt.EventQueue;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/**
 * Long work on threads of its own, several at once. What goes wrong is said as a notice, never
 * lost. Starting, cancelling and listening belong to the event thread.
 */
public final class Jobs implements Background, AutoCloseable {
  private final ExecutorService threads =
      Executors.newCachedThreadPool(
          run -> {
            Thread thread = new Thread(run, "work");
            thread.setDaemon(true);
            return thread;
          });
  private final List<Running<?>> running = new ArrayList<>();
  private final List<Running<?>> waiting = new ArrayList<>();
  private final List<Runnable> listeners = new ArrayList<>();
  private final Consumer<Notice> notices;
  private boolean held;

  /**
   * @param notices gets, on the event thread, what went wrong
   */
  public Jobs(Consumer<Notice> notices) {
    this.notices = Objects.requireNonNull(notices, "notices");
  }

  /**
   * Work that is going on, as it is told.
   *
   * @param name what it is
   * @param now what is going on in it; may be empty
   * @param part the part that is done, 0 to 1; negative while that is not known [1]
   * @param job stops it
   */
  public record State(String name, String now, double part, Job job) {}

  @Override
  public <T> Job start(String name, Work<T> work, Consumer<T> done) {
    Running<T> job = new Running<>(name, work, done);
    if (threads.isShutdown()) {
      // the window is gone; a clock of its may still tick once
      job.drop();
      return job;
    }
    running.add(job);
    changed();
    if (held) {
      waiting.add(job);
    } else {
      job.future = threads.submit(job::run);
    }
    return job;
  }

  /** Lets work that is started wait, until {@link #release}, so that other things come first. */
  public void hold() {
    held = true;
  }

  /** Begins the work that waits. */
  public void release() {
    held = false;
    waiting.stream()
        .filter(Running::isRunning)
        .forEach(job -> job.future = threads.submit(job::run));
    waiting.clear();
  }

  /** What is going on, the oldest first. */
  public List<State> running() {
    return running.stream().map(Running::state).toList();
  }

  /** Asks to be told, on the event thread, when work starts, ends or gets on. */
  public void listen(Runnable listener) {
    listeners.add(listener);
  }

  private void changed() {
    List.copyOf(listeners).forEach(Runnable::run);
  }

  /** Stops all work; what is started from now on is not done. */
  @Override
  public void close() {
    // No interrupts: they would reach the event queue, which may have ended with the last window.
    List.copyOf(running).forEach(Running::drop);
    threads.shutdown();
  }

  private void failed(String name, Throwable e) {
    notices.accept(new Notice(Notice.Kind.FAULT, name + ": " + words(e)));
  }

  /** What went wrong, in a line; a defect is called one. */
  static String words(Throwable e) {
    if (e instanceof InputException refused) {
      return refused.problems().stream().map(Problem::line).collect(Collectors.joining("\n"));
    }
    if (e instanceof OutOfMemoryError) {
      return "this needs more memory than Java was given. Start it with more, or ask for less";
    }
    return Defect.words(e);
  }

  /** One piece of work. */
  private final class Running<T> implements Job, Progress {
    private final String name;
    private final Work<T> work;
    private final Consumer<T> done;
    private volatile boolean stopped;
    private volatile String now = "";
    private volatile double part = -1;
    private volatile boolean told;
    private boolean ended;
    private Future<?> future;

    Running(String name, Work<T> work, Consumer<T> done) {
      this.name = Objects.requireNonNull(name, "name");
      this.work = Objects.requireNonNull(work, "work");
      this.done = Objects.requireNonNull(done, "done");
    }

    State state() {
      return new State(name, now, part, this);
    }

    void run() {
      try {
        T result = work.run(this);
        EventQueue.invokeLater(() -> end(() -> done.accept(result)));
      } catch (CancellationException e) {
        EventQueue.invokeLater(() -> end(() -> {}));
      } catch (Throwable e) {
        EventQueue.invokeLater(() -> end(() -> failed(name, e)));
      }
    }

    private void end(Runnable then) {
      if (!ended) {
        ended = true;
        running.remove(this);
        changed();
        handOver(then);
      }
    }

    private void handOver(Runnable then) {
      try {
        then.run();
      } catch (RuntimeException e) {
        failed(name, e);
      }
    }

    @Override
    public void now(String what) {
      now = what;
      tell();
    }

    @Override
    public void part(double newPart) {
      if (stopped) {
        throw new CancellationException(name);
      }
      part = newPart;
      tell();
    }

    @Override
    public boolean isStopped() {
      return stopped;
    }

    /** Tells at most once for each turn of the event thread. */
    private void tell() {
      if (!told) {
        told = true;
        EventQueue.invokeLater(
            () -> {
              told = false;
              changed();
            });
      }
    }

    @Override
    public void cancel() {
      drop();
      if (future != null) {
        future.cancel(true);
      }
    }

    /** Stops it when it tells of itself next. */
    private void drop() {
      stopped = true;
      end(() -> {});
    }

    @Override
    public boolean isRunning() {
      return !ended;
    }
  }
}
