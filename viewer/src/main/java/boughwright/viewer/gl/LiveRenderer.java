// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.gl;

import boughwright.viewer.scene.Camera;
import boughwright.viewer.scene.LiveScene;
import boughwright.viewer.scene.Scene;
import boughwright.viewer.scene.Shown;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * Draws a tree for the screen on a thread of its own. Of the pictures that are asked for while one
 * is drawn only the last is drawn. A picture of something that moves comes before all others: one
 * that is drawn well is given up for it, and has to be asked for again. Any thread may call.
 */
public final class LiveRenderer implements AutoCloseable {
  /** A picture takes no longer than this to be given up at the end [ms]. */
  private static final long PATIENCE = 5000;

  private final Consumer<Frame> frames;
  private final Consumer<NoGraphicsException> none;
  private final Thread thread = new Thread(this::work, "boughwright-gl");
  private final Deque<Once> others = new ArrayDeque<>();
  private Request waiting;
  private boolean closed;
  private NoGraphicsException fault;

  /**
   * A picture that is asked for.
   *
   * @param shown what is drawn
   * @param camera from where, and how large
   * @param unit how wide the finest pen is [pixels]
   * @param ground how well, and on what
   */
  public record Request(Shown shown, Camera camera, double unit, SceneRenderer.Ground ground) {
    public Request {
      Objects.requireNonNull(shown, "shown");
      Objects.requireNonNull(camera, "camera");
      Objects.requireNonNull(ground, "ground");
    }
  }

  /**
   * A picture.
   *
   * @param request what was asked for
   * @param scene what was drawn
   * @param raster its pixels
   * @param nanoseconds how long it took to make the scene and draw it [ns]
   */
  public record Frame(Request request, Scene scene, Raster raster, long nanoseconds) {}

  /** A picture that is drawn whatever else is asked for, and who gets it. */
  private record Once(
      Request request, Consumer<Frame> done, Consumer<NoGraphicsException> failed) {}

  /**
   * Starts the thread, which opens OpenGL.
   *
   * @param frames gets every picture, on the thread of this renderer
   * @param none told once, on that thread, when this machine cannot draw
   */
  public LiveRenderer(Consumer<Frame> frames, Consumer<NoGraphicsException> none) {
    this.frames = frames;
    this.none = none;
    thread.setDaemon(true);
    thread.start();
  }

  /** Asks for a picture in place of one that still waits. */
  public synchronized void draw(Request request) {
    waiting = request;
    notifyAll();
  }

  /**
   * Asks for a picture that is drawn whatever else is asked for, and goes to one taker only.
   *
   * @param failed told when it cannot be drawn
   */
  public synchronized void drawOnce(
      Request request, Consumer<Frame> done, Consumer<NoGraphicsException> failed) {
    if (fault != null) {
      failed.accept(fault);
      return;
    }
    others.add(new Once(request, done, failed));
    notifyAll();
  }

  private synchronized Once next() throws InterruptedException {
    while (waiting == null && others.isEmpty() && !closed) {
      wait();
    }
    if (closed) {
      return null;
    }
    if (!others.isEmpty() && !isHurried()) {
      return others.remove();
    }
    Once next = new Once(waiting, frames, none);
    waiting = null;
    return next;
  }

  /** Whether something that moves waits to be drawn. */
  private synchronized boolean isHurried() {
    return waiting != null && waiting.ground().quality() == Quality.MOVING;
  }

  private void work() {
    try (SceneRenderer renderer = SceneRenderer.open()) {
      LiveScene scenes = new LiveScene();
      for (Once next = next(); next != null; next = next()) {
        draw(renderer, scenes, next);
      }
    } catch (NoGraphicsException e) {
      fail(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (RuntimeException | OutOfMemoryError e) {
      fail(
          new NoGraphicsException(
              "drawing stopped ("
                  + e
                  + "). Open the window again; if it comes back, update the graphics driver",
              e));
    }
  }

  private void fail(NoGraphicsException e) {
    List<Once> left;
    synchronized (this) {
      fault = e;
      left = List.copyOf(others);
      others.clear();
    }
    none.accept(e);
    left.forEach(once -> once.failed().accept(e));
  }

  private void draw(SceneRenderer renderer, LiveScene scenes, Once one) {
    try {
      Optional<Frame> drawn = frame(renderer, scenes, one.request());
      if (drawn.isPresent()) {
        one.done().accept(drawn.get());
      } else if (one.done() != frames) {
        again(one);
      }
    } catch (RuntimeException | OutOfMemoryError e) {
      one.failed().accept(new NoGraphicsException("this picture cannot be drawn (" + e + ")", e));
      throw e;
    }
  }

  private synchronized void again(Once one) {
    others.addFirst(one);
  }

  private Optional<Frame> frame(SceneRenderer renderer, LiveScene scenes, Request request) {
    boolean good = request.ground().quality() == Quality.STILL;
    BooleanSupplier stop = good ? this::isHurried : () -> false;
    long from = System.nanoTime();
    Optional<Scene> scene = scenes.makeUnless(stop, request.shown());
    if (scene.isEmpty()) {
      return Optional.empty();
    }
    SceneRenderer.View view =
        new SceneRenderer.View(request.camera(), request.unit(), request.ground());
    return renderer
        .drawUnless(stop, scene.get(), view)
        .map(raster -> new Frame(request, scene.get(), raster, System.nanoTime() - from));
  }

  /** Ends the thread and frees everything; waits a little for the picture it is at. */
  @Override
  public void close() {
    synchronized (this) {
      closed = true;
      notifyAll();
    }
    if (Thread.currentThread() == thread) {
      return;
    }
    try {
      thread.join(PATIENCE);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
