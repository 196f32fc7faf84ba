// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import boughwright.modeller.file.Recovery;
import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.Problem;
import boughwright.viewer.window.work.Notice;
import boughwright.viewer.window.work.Topic;
import boughwright.viewer.window.work.Workspace;
import java.awt.EventQueue;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import javax.swing.Timer;

/** Keeps what is not saved yet soon after each change, so that a stopped process loses nothing. */
final class Keeping {
  /** Changes that follow one another this fast are kept together [ms]. */
  private static final int SOON = 300;

  private final Path folder;
  private final Workspace workspace;
  private final Timer timer = new Timer(SOON, event -> keep());
  private final ExecutorService disk =
      Executors.newSingleThreadExecutor(
          run -> {
            Thread thread = new Thread(run, "keeping");
            thread.setDaemon(true);
            return thread;
          });
  private Recovery recovery;

  Keeping(Path folder, Workspace workspace, Optional<Recovery> before) {
    this.folder = folder;
    this.workspace = workspace;
    recovery = before.orElseGet(() -> new Recovery(folder));
    timer.setRepeats(false);
    workspace.listen(this::heard);
    look();
  }

  private void heard(Topic topic) {
    switch (topic) {
      case OPENED -> goOnWith(new Recovery(folder));
      case DOCUMENT, FILE -> look();
      default -> {
        // only what is saved is kept
      }
    }
  }

  /** Lets the document before go and keeps the one that is open now. */
  void goOnWith(Recovery next) {
    Recovery before = recovery;
    recovery = next;
    disk.execute(before::forget);
    look();
  }

  private void look() {
    if (workspace.history().isSaved()) {
      timer.stop();
      disk.execute(recovery::forget);
    } else if (!timer.isRunning()) {
      timer.start();
    }
  }

  private void keep() {
    Recovery into = recovery;
    Document document = workspace.document();
    Optional<Path> file = workspace.file();
    Map<String, byte[]> photos = workspace.photos().held(document);
    disk.execute(() -> into.keep(document, file, photos).ifPresent(this::tell));
  }

  private void tell(Problem problem) {
    EventQueue.invokeLater(() -> workspace.say(new Notice(Notice.Kind.CAUTION, problem.line())));
  }

  /** Forgets the document for good: it is saved, or the person gave it up. */
  void forget() {
    timer.stop();
    disk.shutdown();
    try {
      disk.awaitTermination(2, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    recovery.forget();
  }
}
