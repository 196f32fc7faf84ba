// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.modeller.units.DisplayUnits;
import boughwright.viewer.gl.LiveRenderer;
import boughwright.viewer.gl.NoGraphicsException;
import boughwright.viewer.gl.Quality;
import boughwright.viewer.picture.SceneWords;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.SwingUtilities;
import javax.swing.Timer;

/**
 * Gets pictures of the tree drawn: quick ones while it moves, a good one when it stands still.
 * Belongs to the event thread.
 */
final class Pictures implements AutoCloseable {
  /** What has not moved for so long stands still [ms]. */
  private static final int STILL_MS = 130;

  private final Function<Quality, LiveRenderer.Request> wanted;
  private final Consumer<LivePicture> taker;
  private final Consumer<NoGraphicsException> none;
  private final AtomicReference<LivePicture> arrived = new AtomicReference<>();
  private final Timer still = new Timer(STILL_MS, event -> askStill());
  private final AtomicLong drawn = new AtomicLong();
  private final ExecutorService writer =
      Executors.newSingleThreadExecutor(
          task -> {
            Thread thread = new Thread(task, "boughwright-words");
            thread.setDaemon(true);
            return thread;
          });
  private Optional<LiveRenderer> renderer = Optional.empty();
  private volatile SceneWords.Wanted words =
      new SceneWords.Wanted(1, false, Set.of(), DisplayUnits.USUAL);
  private boolean asked;
  private boolean broken;

  /**
   * @param wanted the picture that is wanted now, in some quality
   * @param taker gets every picture
   * @param none told once when this machine cannot draw
   */
  Pictures(
      Function<Quality, LiveRenderer.Request> wanted,
      Consumer<LivePicture> taker,
      Consumer<NoGraphicsException> none) {
    this.wanted = wanted;
    this.taker = taker;
    this.none = none;
    still.setRepeats(false);
  }

  /** Something moved: a quick picture soon, and a good one when nothing moves any more. */
  void ask() {
    still.restart();
    if (!asked) {
      asked = true;
      SwingUtilities.invokeLater(this::askQuick);
    }
  }

  private void askQuick() {
    asked = false;
    request(Quality.MOVING);
    // On a busy event thread the good picture may have been asked for before this quick one.
    still.restart();
  }

  /** Tells what is written over the pictures that are asked for from now on. */
  void write(SceneWords.Wanted wanted) {
    words = wanted;
  }

  /** A good picture now, where nothing moves. */
  void askStill() {
    request(Quality.STILL);
  }

  /** Whether a better picture than the last one is still to come. */
  boolean isBusy() {
    return asked || still.isRunning();
  }

  private void request(Quality quality) {
    if (!broken) {
      renderer().draw(wanted.apply(quality));
    }
  }

  /** The one that draws; its thread starts with the first picture. */
  LiveRenderer renderer() {
    if (renderer.isEmpty()) {
      renderer = Optional.of(new LiveRenderer(this::arrived, this::broken));
    }
    return renderer.get();
  }

  /** Comes on the renderer's thread. */
  private void arrived(LiveRenderer.Frame frame) {
    long number = drawn.incrementAndGet();
    if (frame.raster().knowsDepth()) {
      SceneWords.Wanted wanted = words;
      writer.execute(() -> write(frame, wanted, number));
    } else {
      hand(LivePicture.of(frame, words));
    }
  }

  /** Finding places for words takes time in which the next picture can be drawn. */
  private void write(LiveRenderer.Frame frame, SceneWords.Wanted wanted, long number) {
    if (drawn.get() == number) {
      LivePicture picture = LivePicture.of(frame, wanted);
      if (drawn.get() == number) {
        hand(picture);
      }
    }
  }

  private void hand(LivePicture picture) {
    if (arrived.getAndSet(picture) == null) {
      SwingUtilities.invokeLater(() -> taker.accept(arrived.getAndSet(null)));
    }
  }

  /** Comes on the renderer's thread. */
  private void broken(NoGraphicsException e) {
    SwingUtilities.invokeLater(
        () -> {
          broken = true;
          none.accept(e);
        });
  }

  @Override
  public void close() {
    still.stop();
    broken = true;
    renderer.ifPresent(LiveRenderer::close);
    renderer = Optional.empty();
    writer.shutdownNow();
  }
}
