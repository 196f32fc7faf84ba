// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.bench;

import boughwright.physics.trial.TrialResult;
import boughwright.viewer.gl.NoGraphicsException;
import boughwright.viewer.gl.Quality;
import boughwright.viewer.gl.SceneRenderer;
import boughwright.viewer.scene.Camera;
import boughwright.viewer.scene.Capsules;
import boughwright.viewer.scene.Framing;
import boughwright.viewer.scene.LiveScene;
import boughwright.viewer.scene.LiveTree;
import boughwright.viewer.scene.Pose;
import boughwright.viewer.scene.Scene;
import boughwright.viewer.scene.Shown;
import boughwright.viewer.scene.StrainScale;
import boughwright.viewer.scene.ViewAngle;
import boughwright.viewer.scene.Visibility;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntConsumer;

/** Measures pictures of 1280 x 800 pixels as the canvas draws them, read-back and all. */
public final class CanvasBench {
  private static final int WIDTH = 1280;
  private static final int HEIGHT = 800;
  private static final int WARM_UPS = 15;
  private static final int RUNS = 60;

  private final StringBuilder page = new StringBuilder();
  private final SceneRenderer renderer;

  private CanvasBench(SceneRenderer renderer) {
    this.renderer = renderer;
  }

  /** The argument is the file to write. */
  public static void main(String[] args) throws IOException, NoGraphicsException {
    try (SceneRenderer renderer = SceneRenderer.open()) {
      CanvasBench bench = new CanvasBench(renderer);
      bench.line("%s, %d processors", renderer.driver(), Runtime.getRuntime().availableProcessors());
      bench.line("");
      bench.frames();
      bench.previews();
      bench.picks();
      Files.writeString(Path.of(args[0]), bench.page);
    }
  }

  private void line(String format, Object... parts) {
    String line = String.format(Locale.ROOT, format, parts);
    System.out.println(line);
    page.append(line).append('\n');
  }

  private static Camera camera(LiveTree tree) {
    Camera camera =
        new Camera(ViewAngle.level(0.3), tree.base(), 1000, WIDTH, HEIGHT, 4);
    return Framing.fit(
        camera, tree.capsules(tree.measured()).outlines(), new Framing.Margins(48, 56, 48, 100));
  }

  private static Shown shown(LiveTree tree, Pose pose, boolean ghost, Quality quality) {
    return new Shown(
        tree,
        Optional.empty(),
        Optional.empty(),
        pose,
        ghost ? List.of(new Shown.Ghost(tree.measured(), Optional.empty())) : List.of(),
        Visibility.ALL,
        new Shown.Options(
            Optional.of(new StrainScale(0.02)), quality == Quality.STILL, List.of()));
  }

  private void frames() {
    line("| segments | picture | without ghost | with a ghost of every limb |");
    line("|---|---|---|---|");
    for (int count : new int[] {300, 2000}) {
      BigTree big = new BigTree(count);
      LiveTree tree = new LiveTree(big.tree, Optional.empty());
      // The whole tree leans a little, so that every limb has a ghost.
      TrialResult leaning = big.leaning();
      for (Quality quality : Quality.values()) {
        String plain = frame(tree, tree.measured(), false, quality);
        String ghost = frame(tree, tree.bent(leaning), true, quality);
        line("| %d | %s | %s | %s |", count, words(quality), plain, ghost);
      }
    }
    line("");
  }

  private static String words(Quality quality) {
    return quality == Quality.MOVING ? "moving" : "still";
  }

  private String frame(LiveTree tree, Pose pose, boolean ghost, Quality quality) {
    Scene scene = new LiveScene().make(shown(tree, pose, ghost, quality));
    Camera camera = camera(tree);
    SceneRenderer.Ground ground = new SceneRenderer.Ground(quality, false);
    return times(
        n -> renderer.draw(scene, camera.from(camera.angle().turned(0.01 * n, 0)), 1, ground));
  }

  /** From a new result of a pull to its picture, one branch of ten segments moving. */
  private void previews() {
    line("| segments | new pose to picture |");
    line("|---|---|");
    for (int count : new int[] {300, 2000}) {
      BigTree big = new BigTree(count);
      LiveTree tree = new LiveTree(big.tree, Optional.empty());
      Camera camera = camera(tree);
      LiveScene scenes = new LiveScene();
      List<TrialResult> pulls = new ArrayList<>();
      for (int n = 0; n < WARM_UPS + RUNS; n++) {
        pulls.add(big.bent(0.02 * n));
      }
      SceneRenderer.Ground ground = new SceneRenderer.Ground(Quality.MOVING, false);
      String time =
          times(
              n -> {
                Pose pose = tree.bent(pulls.get(n));
                Scene scene = scenes.make(shown(tree, pose, true, Quality.MOVING));
                renderer.draw(scene, camera, 1, ground);
              });
      line("| %d | %s |", count, time);
    }
    line("");
  }

  private void picks() {
    line("| segments | wood under a pixel |");
    line("|---|---|");
    for (int count : new int[] {300, 2000}) {
      LiveTree tree = new LiveTree(new BigTree(count).tree, Optional.empty());
      Camera camera = camera(tree);
      Capsules wood = tree.capsules(tree.measured());
      int[] struck = new int[1];
      String time =
          times(
              n -> {
                for (int k = 0; k < 100; k++) {
                  struck[0] +=
                      wood.nearest(camera.sight(640 + 3 * k, 100 + 6 * k), i -> true).isPresent()
                          ? 1
                          : 0;
                }
              });
      line("| %d | a hundredth of %s (%d struck) |", count, time, struck[0]);
    }
  }

  /** Median and quartiles of many runs. */
  private static String times(IntConsumer run) {
    for (int n = 0; n < WARM_UPS; n++) {
      run.accept(n);
    }
    double[] millis = new double[RUNS];
    for (int n = 0; n < RUNS; n++) {
      long from = System.nanoTime();
      run.accept(WARM_UPS + n);
      millis[n] = (System.nanoTime() - from) / 1e6;
    }
    Arrays.sort(millis);
    return String.format(
        Locale.ROOT,
        "%.1f ms (%.1f to %.1f)",
        millis[RUNS / 2],
        millis[RUNS / 4],
        millis[3 * RUNS / 4]);
  }
}
