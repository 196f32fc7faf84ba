// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.gl;

import static org.lwjgl.opengl.GL33C.*;

import boughwright.viewer.scene.Camera;
import boughwright.viewer.scene.Scene;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * Draws scenes into images in memory. Belongs to the thread that opened it, which also closes it.
 */
public final class SceneRenderer implements AutoCloseable {
  private static final int LARGEST_TILE = 2048;
  private static final double HATCH = 7;

  private final Thread owner = Thread.currentThread();
  private final GraphicsContext context;
  private final Painter painter;
  private final GpuScene gpu = new GpuScene();
  private final Map<Quality, Target> targets = new EnumMap<>(Quality.class);
  private boolean closed;

  private SceneRenderer(GraphicsContext context) {
    this.context = context;
    this.painter = new Painter();
  }

  /**
   * Opens a renderer on this thread, with or without a display.
   *
   * @throws NoGraphicsException if this machine has no OpenGL 3.3; its message says what to do
   */
  public static SceneRenderer open() throws NoGraphicsException {
    GraphicsContext context = ContextChain.open();
    try {
      return new SceneRenderer(context);
    } catch (RuntimeException e) {
      context.close();
      throw new NoGraphicsException(
          "OpenGL is there but refuses to draw ("
              + e.getMessage()
              + "). Update the graphics driver",
          e);
    }
  }

  /** What draws: the driver's own words for itself. */
  public String driver() {
    enter();
    return glGetString(GL_RENDERER) + ", OpenGL " + glGetString(GL_VERSION);
  }

  /**
   * Draws a scene as a camera sees it.
   *
   * @param unit how wide the finest pen is; hatching is drawn in proportion [pixels]
   */
  public Raster draw(Scene scene, Camera camera, double unit) {
    enter();
    if (!camera.isFlat()) {
      return draw(scene, camera, unit, new Ground(Quality.STILL, false));
    }
    gpu.show(scene);
    int[] pixels = new int[camera.width() * camera.height()];
    float[] depths = new float[pixels.length];
    for (int top = 0; top < camera.height(); top += LARGEST_TILE) {
      for (int left = 0; left < camera.width(); left += LARGEST_TILE) {
        drawTile(camera, new Tile(left, top, unit), pixels, depths);
      }
    }
    return new Raster(camera, pixels, depths);
  }

  /**
   * Draws a scene into an image that is kept for the next one of that size; as a whole, so that the
   * largest size depends on the machine.
   *
   * @param unit how wide the finest pen is [pixels]
   */
  public Raster draw(Scene scene, Camera camera, double unit, Ground ground) {
    return drawUnless(() -> false, scene, new View(camera, unit, ground)).orElseThrow();
  }

  /**
   * From where, how finely and how well a scene is drawn.
   *
   * @param unit how wide the finest pen is [pixels]
   */
  record View(Camera camera, double unit, Ground ground) {}

  /**
   * The same, unless it is given up on the way: a good picture takes long without a graphics card.
   *
   * @param stop asked again and again whether to give up
   */
  Optional<Raster> drawUnless(BooleanSupplier stop, Scene scene, View view) {
    enter();
    Camera camera = view.camera();
    Ground ground = view.ground();
    gpu.show(scene);
    boolean still = ground.quality() == Quality.STILL;
    Target target = target(camera, ground.quality());
    Painter.Manner manner =
        new Painter.Manner(
            (float) (HATCH * view.unit()), -camera.height(), ground.quality(), ground.dark());
    if (!painter.paintUnless(stop, gpu, camera, new Painter.Onto(target, manner))) {
      return Optional.empty();
    }
    int[] pixels = target.read();
    return Optional.of(new Raster(camera, pixels, still ? target.readDepth() : new float[0]));
  }

  /**
   * How well a picture is drawn, and for what.
   *
   * @param quality how much time it may take
   * @param dark whether it will lie on a dark ground
   */
  public record Ground(Quality quality, boolean dark) {}

  private Target target(Camera camera, Quality quality) {
    Target kept = targets.get(quality);
    if (kept != null && kept.isSized(camera.width(), camera.height())) {
      return kept;
    }
    if (kept != null) {
      targets.remove(quality).close();
    }
    int samples = quality == Quality.STILL ? Target.SAMPLES : 1;
    Target target = new Target(camera.width(), camera.height(), samples);
    targets.put(quality, target);
    return target;
  }

  /** Left upper corner of a tile, and the width of the finest pen [pixels]. */
  private record Tile(int left, int top, double unit) {}

  private void drawTile(Camera camera, Tile tile, int[] pixels, float[] depths) {
    int width = Math.min(LARGEST_TILE, camera.width() - tile.left());
    int height = Math.min(LARGEST_TILE, camera.height() - tile.top());
    Camera part = camera.part(tile.left(), tile.top(), width, height);
    try (Target target = new Target(width, height)) {
      float distance = (float) (HATCH * tile.unit());
      int shift = tile.left() - tile.top() - height;
      painter.paint(gpu, part, target, new Painter.Manner(distance, shift, Quality.STILL, false));
      int[] colours = target.read();
      float[] near = target.readDepth();
      for (int y = 0; y < height; y++) {
        int to = (tile.top() + y) * camera.width() + tile.left();
        System.arraycopy(colours, y * width, pixels, to, width);
        System.arraycopy(near, y * width, depths, to, width);
      }
    }
  }

  private void enter() {
    if (Thread.currentThread() != owner) {
      throw new IllegalStateException("this renderer belongs to thread " + owner.getName());
    }
    if (closed) {
      throw new IllegalStateException("this renderer is closed");
    }
    context.makeCurrent();
  }

  /** Frees everything; a second time does nothing. */
  @Override
  public void close() {
    if (closed) {
      return;
    }
    enter();
    gpu.close();
    targets.values().forEach(Target::close);
    painter.close();
    context.close();
    closed = true;
  }
}
