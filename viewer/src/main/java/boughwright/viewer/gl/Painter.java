// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.gl;

import static org.lwjgl.opengl.GL33C.*;

import boughwright.viewer.scene.Body;
import boughwright.viewer.scene.Camera;
import boughwright.viewer.scene.Colour;
import boughwright.viewer.scene.Palette;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.BooleanSupplier;
import org.joml.Matrix3f;
import org.joml.Matrix4f;
import org.joml.Vector3f;

/** The order in which a scene is drawn: shadows, solid wood, then what is translucent. */
final class Painter implements AutoCloseable {
  private static final float FINEST_GRAIN_PER_METRE = 450;
  private static final double GHOST_BEHIND = 0.012;
  private static final float LIFT = 0.45f;
  private static final float GRAIN_PIXELS = 3.5f;
  private static final float LEAVES_PER_METRE = 250;
  private static final float FOLIAGE_FILL = 0.74f;
  private static final float GUESSED_FILL = 0.6f;

  /**
   * How a picture is drawn.
   *
   * @param distance from line to line of the hatching of wood that goes, across the page [pixels]
   * @param shift where this part of a picture lies along the hatching [pixels]
   * @param quality how much time it may take
   * @param dark whether it will lie on a dark ground, where dark lines would not be seen
   */
  record Manner(float distance, int shift, Quality quality, boolean dark) {}

  private final Program wood = new Program("scene.vert", "wood.frag");
  private final Program ghost = new Program("scene.vert", "ghost.frag");
  private final Program leaf = new Program("scene.vert", "leaf.frag");
  private final Program depth = new Program("depth.vert", "depth.frag");
  private final Map<Quality, ShadowMap> shadowMaps = new EnumMap<>(Quality.class);

  Painter() {
    shadowMaps.put(Quality.STILL, new ShadowMap(2048));
    shadowMaps.put(Quality.MOVING, new ShadowMap(1024));
  }

  void paint(GpuScene gpu, Camera camera, Target target, Manner manner) {
    paintUnless(() -> false, gpu, camera, new Onto(target, manner));
  }

  /** What is drawn into, and how. */
  record Onto(Target target, Manner manner) {}

  /**
   * Paints, and says whether it came to the end.
   *
   * @param stop asked between two steps whether to give up
   */
  boolean paintUnless(BooleanSupplier stop, GpuScene gpu, Camera camera, Onto onto) {
    Target target = onto.target();
    Manner manner = onto.manner();
    gpu.giveUpWhen(stop);
    ShadowMap shadows = shadowMaps.get(manner.quality());
    glEnable(GL_DEPTH_TEST);
    glEnable(GL_CULL_FACE);
    glEnable(GL_MULTISAMPLE);
    Vector3f toLight = ShadowMap.toLight(camera.angle());
    Matrix4f light = ShadowMap.lightMatrix(toLight, gpu.bounds());
    drawShadows(shadows, gpu, light);
    target.begin();
    shadows.bind();
    Light lit = new Light(toLight, light, manner);
    drawSolid(gpu, camera, lit);
    if (manner.quality() == Quality.STILL) {
      target.keepDepth();
    }
    double size = gpu.bounds().diagonal();
    drawGhosts(gpu, camera, manner, size);
    drawFoliage(gpu, camera, lit);
    return !gpu.isGivenUp();
  }

  private void drawShadows(ShadowMap shadows, GpuScene gpu, Matrix4f light) {
    shadows.begin();
    depth.use();
    depth.set("viewProjection", light);
    depth.set("behind", 0f);
    glDepthFunc(GL_LESS);
    glDepthMask(true);
    glDisable(GL_BLEND);
    gpu.draw(Body.Role.SOLID);
    gpu.draw(Body.Role.FITTING);
  }

  /** Where the key light stands, what it sees, and how it is drawn. */
  private record Light(Vector3f to, Matrix4f matrix, Manner manner) {}

  private void drawSolid(GpuScene gpu, Camera camera, Light light) {
    wood.use();
    setCamera(wood, camera);
    wood.set("behind", 0f);
    wood.set("toLight", light.to().x, light.to().y, light.to().z);
    wood.set("softness", light.manner().quality() == Quality.STILL ? 2 : 0);
    wood.set("lightMatrix", light.matrix());
    wood.set("shadows", 0);
    setTone(wood, "soil", Palette.SOIL);
    float grain = (float) camera.pixelsPerMetre() / GRAIN_PIXELS;
    wood.set("grainPerMetre", Math.min(FINEST_GRAIN_PER_METRE, grain));
    wood.set("lift", 0f);
    gpu.draw(Body.Role.SOLID);
    wood.set("lift", light.manner().dark() ? LIFT : 0f);
    gpu.draw(Body.Role.FITTING);
  }

  /**
   * Draws translucent wood a little behind where it is, so that a limb that hardly moved is not
   * veiled by where it was; of several poses the earlier ones further behind.
   *
   * <p>First only the depth, so that of the translucent wood only the nearest skin is seen; not
   * while the tree moves, when that is not worth the time.
   */
  private void drawGhosts(GpuScene gpu, Camera camera, Manner manner, double size) {
    float behind = (float) camera.clipShift(GHOST_BEHIND * size);
    if (manner.quality() == Quality.STILL) {
      drawGhostDepths(gpu, camera, behind);
    }
    glDepthFunc(GL_LEQUAL);
    glEnable(GL_BLEND);
    glBlendFunc(GL_ONE, GL_ONE_MINUS_SRC_ALPHA);
    ghost.use();
    setCamera(ghost, camera);
    ghost.set("behind", behind);
    setVeil(Veil.GHOST, 0);
    setTone(ghost, "tone", Palette.GHOST);
    gpu.draw(Body.Role.GHOST);
    setVeil(Veil.STAGE, 0);
    drawStages(gpu, ghost, behind);
    ghost.set("behind", 0f);
    setVeil(Veil.DIMMED, 0);
    gpu.draw(Body.Role.DIMMED);
    ghost.set("behind", behind);
    setVeil(Veil.GHOST, manner.distance());
    ghost.set("hatchShift", (float) manner.shift());
    setTone(ghost, "tone", Palette.REMOVED);
    gpu.draw(Body.Role.REMOVED);
    drawContainer(gpu);
    glDisable(GL_BLEND);
  }

  private void drawGhostDepths(GpuScene gpu, Camera camera, float behind) {
    depth.use();
    depth.set("viewProjection", camera.viewProjection());
    glColorMask(false, false, false, false);
    drawStages(gpu, depth, behind);
    gpu.draw(Body.Role.GHOST);
    gpu.draw(Body.Role.REMOVED);
    depth.set("behind", 0f);
    gpu.draw(Body.Role.DIMMED);
    glColorMask(true, true, true, true);
  }

  /** Draws the poses on the way, then leaves the program at the depth of the measured one. */
  private static void drawStages(GpuScene gpu, Program program, float behind) {
    int stages = gpu.count(Body.Role.STAGE);
    for (int n = 0; n < stages; n++) {
      program.set("behind", stageBehind(behind, n, stages));
      gpu.draw(Body.Role.STAGE, n);
    }
    program.set("behind", behind);
  }

  /** How far behind its place a pose on the way is drawn, in clip space. */
  private static float stageBehind(float behind, int n, int count) {
    return behind * (1 - 0.8f * (n + 1) / (count + 1));
  }

  /** How much of the paper translucent things cover, facing and at their edge; whose tone. */
  private enum Veil {
    GHOST(0.30f, 0.45f, false),
    STAGE(0.34f, 0.50f, true),
    DIMMED(0.16f, 0.40f, true),
    CONTAINER(0.13f, 0, false);

    private final float fill;
    private final float rim;
    private final boolean own;

    Veil(float fill, float rim, boolean own) {
      this.fill = fill;
      this.rim = rim;
      this.own = own;
    }
  }

  private void setVeil(Veil veil, float distance) {
    ghost.set("fill", veil.fill);
    ghost.set("rim", veil.rim);
    ghost.set("own", veil.own ? 1f : 0f);
    ghost.set("hatch", distance);
  }

  /** Draws leaves over all wood, of each line of sight only the nearest pad. */
  private void drawFoliage(GpuScene gpu, Camera camera, Light light) {
    if (gpu.count(Body.Role.FOLIAGE) + gpu.count(Body.Role.GUESSED_FOLIAGE) == 0) {
      return;
    }
    depth.use();
    depth.set("viewProjection", camera.viewProjection());
    depth.set("behind", 0f);
    glColorMask(false, false, false, false);
    gpu.draw(Body.Role.FOLIAGE);
    gpu.draw(Body.Role.GUESSED_FOLIAGE);
    glColorMask(true, true, true, true);
    glEnable(GL_BLEND);
    leaf.use();
    setCamera(leaf, camera);
    leaf.set("behind", 0f);
    leaf.set("toLight", light.to().x, light.to().y, light.to().z);
    leaf.set(
        "leavesPerMetre",
        Math.min(LEAVES_PER_METRE, (float) camera.pixelsPerMetre() / GRAIN_PIXELS));
    leaf.set("fill", FOLIAGE_FILL);
    gpu.draw(Body.Role.FOLIAGE);
    leaf.set("fill", GUESSED_FILL);
    gpu.draw(Body.Role.GUESSED_FOLIAGE);
    glDisable(GL_BLEND);
  }

  /** The walls hide nothing, so they leave no depth. */
  private void drawContainer(GpuScene gpu) {
    glDepthMask(false);
    ghost.set("behind", 0f);
    setVeil(Veil.CONTAINER, 0);
    setTone(ghost, "tone", Palette.CONTAINER);
    gpu.draw(Body.Role.CONTAINER);
    glDepthMask(true);
  }

  private static void setTone(Program program, String name, Colour colour) {
    program.set(name, (float) colour.red(), (float) colour.green(), (float) colour.blue());
  }

  private static void setCamera(Program program, Camera camera) {
    program.set("viewProjection", camera.viewProjection());
    program.set("toView", camera.view().normal(new Matrix3f()));
  }

  @Override
  public void close() {
    wood.close();
    ghost.close();
    leaf.close();
    depth.close();
    shadowMaps.values().forEach(ShadowMap::close);
  }
}
