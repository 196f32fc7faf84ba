// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.bench;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
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
import boughwright.viewer.window.canvas.FirstPicture;
import boughwright.viewer.window.canvas.HandBench;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntConsumer;

/** Measures pictures of 1280 x 800 pixels as the canvas draws them, read-back and all. */
public final class CanvasBench {
  private static final int WIDTH = 1280;
  private static final int HEIGHT = 800;
  private static final int[] COUNTS = {300, 2000};

  private static final int WARM_UPS = 12;
  private static final int RUNS = 60;

  private final StringBuilder page = new StringBuilder();
  private final SceneRenderer renderer;

  private CanvasBench(SceneRenderer renderer) {
    this.renderer = renderer;
  }

  /** The argument is the file to write. */
  public static void main(String[] args)
      throws IOException, NoGraphicsException, InterruptedException {
    try (SceneRenderer renderer = SceneRenderer.open()) {
      CanvasBench bench = new CanvasBench(renderer);
      bench.line("%s, %d processors", renderer.driver(), Runtime.getRuntime().availableProcessors());
      bench.line("");
      bench.frames();
      bench.previews();
      bench.picks();
      bench.starts();
      bench.hand();
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
        camera, tree.capsules(tree.measured()).frame(), new Framing.Margins(48, 56, 48, 100));
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
    for (int count : COUNTS) {
      BigTree big = new BigTree(count);
      LiveTree tree = new LiveTree(big.tree, Optional.empty());
      // The whole tree leans a little, so that every limb has a ghost.
      TrialResult leaning = big.leaning();
      for (Quality quality : Quality.values()) {
        Times plain = frame(tree, tree.measured(), false, quality);
        Times ghost = frame(tree, tree.bent(leaning), true, quality);
        line("| %d | %s | %s | %s |", count, words(quality), plain, ghost);
      }
    }
    line("");
  }

  private static String words(Quality quality) {
    return quality == Quality.MOVING ? "moving" : "still";
  }

  private Times frame(LiveTree tree, Pose pose, boolean ghost, Quality quality) {
    Scene scene = new LiveScene().make(shown(tree, pose, ghost, quality));
    Camera camera = camera(tree);
    SceneRenderer.Ground ground = new SceneRenderer.Ground(quality, false);
    return times(
        n -> renderer.draw(scene, camera.from(camera.angle().turned(0.01 * n, 0)), 1, ground));
  }

  /** From a new result of a pull to its picture, one branch of ten segments moving. */
  private void previews() {
    line("| segments | new pose to scene | scene to picture | both |");
    line("|---|---|---|---|");
    for (int count : COUNTS) {
      BigTree big = new BigTree(count);
      LiveTree tree = new LiveTree(big.tree, Optional.empty());
      Camera camera = camera(tree);
      LiveScene scenes = new LiveScene();
      List<TrialResult> pulls = new ArrayList<>();
      for (int n = 0; n < WARM_UPS + RUNS; n++) {
        pulls.add(big.bent(0.02 * n));
      }
      SceneRenderer.Ground ground = new SceneRenderer.Ground(Quality.MOVING, false);
      Scene[] last = new Scene[1];
      Times making = new Times();
      Times drawing = new Times();
      Times both = new Times();
      long from = System.nanoTime();
      for (int n = 0; n < pulls.size() && !both.isEnough(from); n++) {
        long began = System.nanoTime();
        Pose pose = tree.bent(pulls.get(n));
        last[0] = scenes.make(shown(tree, pose, true, Quality.MOVING));
        long made = System.nanoTime();
        renderer.draw(last[0], camera, 1, ground);
        long drawn = System.nanoTime();
        if (n >= WARM_UPS) {
          making.add(made - began);
          drawing.add(drawn - made);
          both.add(drawn - began);
        }
      }
      line("| %d | %s | %s | %s |", count, making, drawing, both);
    }
    line("");
  }

  /** What is under a pixel, against looking at a ball at each of many places on every segment. */
  private void picks() {
    line("| segments | first after a change | wood under a pixel | the same by brute force | agree |");
    line("|---|---|---|---|---|");
    for (int count : COUNTS) {
      LiveTree tree = new LiveTree(new BigTree(count).tree, Optional.empty());
      Camera camera = camera(tree);
      Times first = times(n -> tree.capsules(tree.measured()).nearest(sight(camera, n), i -> true));
      Capsules wood = tree.capsules(tree.measured());
      Times quick = times(n -> wood.nearest(sight(camera, n), i -> true));
      Balls balls = new Balls(wood, count);
      Times slow = times(n -> balls.nearest(sight(camera, n)));
      int same = 0;
      int struck = 0;
      for (int n = 0; n < 400; n++) {
        int segment =
            wood.nearest(sight(camera, n), i -> true).map(Capsules.Struck::segment).orElse(-1);
        same += segment == balls.nearest(sight(camera, n)) ? 1 : 0;
        struck += segment >= 0 ? 1 : 0;
      }
      line("| %d | %s | %s | %s | %d of 400, %d struck |", count, first, quick, slow, same, struck);
    }
    line("");
  }

  /** Whole processes, each a cold start, counted from the start of the Java machine. */
  private void starts() throws IOException, InterruptedException {
    line("| start with the hornbeam | the window shows | the first picture of the tree |");
    line("|---|---|---|");
    Times window = new Times();
    Times picture = new Times();
    for (int n = 0; n < Times.FEWEST_RUNS; n++) {
      ProcessBuilder start =
          new ProcessBuilder(
              Path.of(System.getProperty("java.home"), "bin", "java").toString(),
              "-cp",
              System.getProperty("java.class.path"),
              FirstPicture.class.getName(),
              "view",
              "../examples/hedge-hornbeam.tree.json");
      Path home = Files.createTempDirectory("start");
      start.environment().put("BOUGHWRIGHT_HOME", home.toString());
      start.redirectError(ProcessBuilder.Redirect.DISCARD);
      Process process = start.start();
      String told = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      process.waitFor();
      String[] millis = told.strip().split(" ");
      window.add(1_000_000 * Long.parseLong(millis[0]));
      picture.add(1_000_000 * Long.parseLong(millis[1]));
    }
    line("| %d runs | %s | %s |", Times.FEWEST_RUNS, window, picture);
    line("");
  }

  private void hand() throws IOException, InterruptedException {
    line("| the hornbeam by hand | until the measures show | until the picture shows |");
    line("|---|---|---|");
    line("%s", HandBench.rows());
  }

  /** Lines of sight spread over the picture. */
  private static Camera.Sight sight(Camera camera, int n) {
    return camera.sight(200 + 7919L * n % 880, 60 + 104729L * n % 640);
  }

  private static Times times(IntConsumer run) {
    Times times = new Times();
    long from = System.nanoTime();
    for (int n = 0; n < WARM_UPS + RUNS && !times.isEnough(from); n++) {
      long began = System.nanoTime();
      run.accept(n);
      if (n >= WARM_UPS || System.nanoTime() - from > Times.LONG_ENOUGH) {
        times.add(System.nanoTime() - began);
      }
    }
    return times;
  }

  /** Wood as a row of balls on every segment. */
  private static final class Balls {
    private static final int ON_EACH = 60;
    private final List<double[]> balls = new ArrayList<>();

    Balls(Capsules wood, int segments) {
      for (int i = 0; i < segments; i++) {
        for (int n = 0; n <= ON_EACH; n++) {
          double along = (double) n / ON_EACH;
          Point3 at = wood.axis(i, along);
          balls.add(new double[] {i, at.x(), at.y(), at.z(), wood.radius(i, along)});
        }
      }
    }

    int nearest(Camera.Sight sight) {
      double least = Double.POSITIVE_INFINITY;
      int found = -1;
      for (double[] ball : balls) {
        Vector3 to = new Point3(ball[1], ball[2], ball[3]).minus(sight.from());
        double ahead = to.dot(sight.along().vector());
        double aside = to.dot(to) - ahead * ahead;
        if (aside <= ball[4] * ball[4]) {
          double away = ahead - Math.sqrt(ball[4] * ball[4] - aside);
          if (away >= 0 && away < least) {
            least = away;
            found = (int) ball[0];
          }
        }
      }
      return found;
    }
  }
}
