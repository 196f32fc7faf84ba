// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import boughwright.modeller.problem.InputException;
import boughwright.viewer.window.look.Controls;
import java.awt.EventQueue;
import java.awt.Window;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javax.swing.JButton;
import javax.swing.JProgressBar;

/**
 * Waits for a file while the window goes on painting itself. What is quick is never seen; what
 * takes longer says so in a sheet, and its window can neither be changed nor closed until then.
 */
final class Waiting {
  private static final int WIDTH = 460;

  /** What is done by then needs no sheet [ms]. */
  private static final int QUICK = 150;

  private Waiting() {}

  /**
   * What is waited for.
   *
   * @param over the window that waits
   * @param words what is going on, such as {@code Saving larch.tree.json}
   * @param canStop whether the person may give it up
   */
  record Face(Window over, String words, boolean canStop) {}

  /**
   * Does something on a thread of its own and waits for it.
   *
   * @return what came of it; empty if the person gave it up
   * @throws InputException if it was refused
   */
  static <T> Optional<T> get(Face face, Callable<T> work) throws InputException {
    CompletableFuture<T> result = new CompletableFuture<>();
    Thread thread = new Thread(() -> run(work, result), "file");
    thread.setDaemon(true);
    thread.start();
    try {
      return Optional.of(result.get(QUICK, TimeUnit.MILLISECONDS));
    } catch (TimeoutException e) {
      show(face, result);
      return result.isDone() ? Optional.of(joined(result)) : Optional.empty();
    } catch (ExecutionException e) {
      throw refused(e.getCause());
    } catch (InterruptedException e) {
      throw new IllegalStateException("the wait for a file was interrupted", e);
    }
  }

  private static <T> void run(Callable<T> work, CompletableFuture<T> result) {
    try {
      result.complete(work.call());
    } catch (Throwable e) {
      result.completeExceptionally(e);
    }
  }

  private static <T> T joined(CompletableFuture<T> result) throws InputException {
    try {
      return result.join();
    } catch (CompletionException e) {
      throw refused(e.getCause());
    }
  }

  /** What refuses is handed on; a defect or a lack of memory goes its own way. */
  private static InputException refused(Throwable e) {
    if (e instanceof InputException known) {
      return known;
    }
    if (e instanceof Error error) {
      throw error;
    }
    throw e instanceof RuntimeException known ? known : new IllegalStateException(e);
  }

  private static void show(Face face, CompletableFuture<?> result) {
    Sheet sheet = new Sheet(face.over(), "waiting", face.words(), true);
    JProgressBar bar = new JProgressBar();
    Controls.named(bar, "waiting.progress", face.words());
    bar.setIndeterminate(true);
    sheet.add(bar);
    if (face.canStop()) {
      JButton stop = sheet.closing("Stop", 'S');
      sheet.buttons(List.of(stop));
    } else {
      sheet.stay();
    }
    // This runs on the event thread, so the sheet stands before it can be closed.
    result.whenComplete((done, e) -> EventQueue.invokeLater(sheet::close));
    sheet.show(WIDTH, 0);
  }
}
