// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.gl;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.viewer.scene.Bending;
import boughwright.viewer.scene.Camera;
import boughwright.viewer.scene.InventedTrees;
import boughwright.viewer.scene.LiveScene;
import boughwright.viewer.scene.LiveTree;
import boughwright.viewer.scene.Scene;
import boughwright.viewer.scene.Shown;
import boughwright.viewer.scene.StrainScale;
import boughwright.viewer.scene.ViewAngle;
import boughwright.viewer.scene.Visibility;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class LiveRendererTest {
  private static final Document HEDGE = InventedTrees.hedgeDocument();
  private static final Plan PLAN = HEDGE.plans().get(0);
  private static final LiveTree TREE = new LiveTree(HEDGE.tree(), Optional.of(PLAN));
  private static final long PATIENCE = 60;

  @BeforeAll
  static void needGraphics() {
    Graphics.require();
  }

  private static LiveRenderer.Request request(double azimuth, Quality quality) {
    var bent = Bending.drawnIn(HEDGE.tree(), PLAN);
    Shown shown =
        new Shown(
            TREE,
            Optional.of(PLAN),
            Optional.of(bent),
            TREE.bent(bent),
            List.of(new Shown.Ghost(TREE.measured(), Optional.empty())),
            Visibility.ALL,
            new Shown.Options(
                Optional.of(new StrainScale(0.02)), quality == Quality.STILL, List.of()));
    Camera camera =
        new Camera(
            ViewAngle.level(azimuth),
            TREE.capsules(TREE.measured()).bounds().centre(),
            700,
            400,
            420,
            2);
    return new LiveRenderer.Request(shown, camera, 1, new SceneRenderer.Ground(quality, false));
  }

  private static LiveRenderer.Frame once(LiveRenderer renderer, LiveRenderer.Request request)
      throws InterruptedException {
    BlockingQueue<LiveRenderer.Frame> drawn = new ArrayBlockingQueue<>(1);
    renderer.drawOnce(request, drawn::add, e -> {});
    LiveRenderer.Frame frame = drawn.poll(PATIENCE, TimeUnit.SECONDS);
    assertThat(frame).isNotNull();
    return frame;
  }

  private static int covered(Raster raster) {
    int covered = 0;
    for (int y = 0; y < raster.height(); y++) {
      for (int x = 0; x < raster.width(); x++) {
        covered += raster.cover(x, y) > 127 ? 1 : 0;
      }
    }
    return covered;
  }

  /**
   * While the first picture is held up, nine more are asked for: only the last of them is drawn.
   */
  @Test
  void manyRequests_whileOneIsDrawn_makeOnePicture() throws InterruptedException {
    CountDownLatch first = new CountDownLatch(1);
    CountDownLatch go = new CountDownLatch(1);
    BlockingQueue<Double> drawn = new ArrayBlockingQueue<>(20);
    AtomicInteger faults = new AtomicInteger();
    try (LiveRenderer renderer =
        new LiveRenderer(
            frame -> {
              drawn.add(frame.request().camera().angle().azimuth());
              first.countDown();
              try {
                go.await(PATIENCE, TimeUnit.SECONDS);
              } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
              }
            },
            e -> faults.incrementAndGet())) {
      renderer.draw(request(0, Quality.MOVING));
      assertThat(first.await(PATIENCE, TimeUnit.SECONDS)).isTrue();
      for (int n = 1; n <= 9; n++) {
        renderer.draw(request(n / 10.0, Quality.MOVING));
      }
      go.countDown();
      assertThat(drawn.poll(PATIENCE, TimeUnit.SECONDS)).isZero();
      assertThat(drawn.poll(PATIENCE, TimeUnit.SECONDS)).isEqualTo(0.9);
      once(renderer, request(0, Quality.MOVING));
      assertThat(drawn).isEmpty();
    }
    assertThat(faults).hasValue(0);
  }

  /** While the first picture is held up, a good one is asked for, then one of something moving. */
  @Test
  void movingPicture_isDrawnBeforeAGoodOne_thatWasAskedForEarlier() throws InterruptedException {
    CountDownLatch first = new CountDownLatch(1);
    CountDownLatch go = new CountDownLatch(1);
    BlockingQueue<Quality> drawn = new ArrayBlockingQueue<>(20);
    try (LiveRenderer renderer =
        new LiveRenderer(
            frame -> {
              drawn.add(frame.request().ground().quality());
              first.countDown();
              try {
                go.await(PATIENCE, TimeUnit.SECONDS);
              } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
              }
            },
            e -> {})) {
      renderer.draw(request(0, Quality.MOVING));
      assertThat(first.await(PATIENCE, TimeUnit.SECONDS)).isTrue();
      drawn.clear();
      renderer.drawOnce(
          request(0.1, Quality.STILL), f -> drawn.add(f.request().ground().quality()), e -> {});
      renderer.draw(request(0.2, Quality.MOVING));
      go.countDown();
      assertThat(drawn.poll(PATIENCE, TimeUnit.SECONDS)).isEqualTo(Quality.MOVING);
      assertThat(drawn.poll(PATIENCE, TimeUnit.SECONDS)).isEqualTo(Quality.STILL);
    }
  }

  @Test
  void goodPicture_isGivenUp_whereSomethingElseIsWaiting_andDrawnWhenAskedAgain()
      throws NoGraphicsException {
    LiveRenderer.Request wanted = request(0.3, Quality.STILL);
    LiveScene scenes = new LiveScene();
    assertThat(scenes.makeUnless(() -> true, wanted.shown())).isEmpty();
    Scene scene = scenes.make(wanted.shown());
    SceneRenderer.View view = new SceneRenderer.View(wanted.camera(), 1, wanted.ground());
    try (SceneRenderer renderer = SceneRenderer.open()) {
      assertThat(renderer.drawUnless(() -> true, scene, view)).isEmpty();
      assertThat(covered(renderer.drawUnless(() -> false, scene, view).orElseThrow())).isPositive();
    }
  }

  @Test
  void movingPicture_showsTheSameTreeAsTheGoodOne_withoutDepth() throws InterruptedException {
    try (LiveRenderer renderer = new LiveRenderer(frame -> {}, e -> {})) {
      Raster quick = once(renderer, request(0.3, Quality.MOVING)).raster();
      Raster good = once(renderer, request(0.3, Quality.STILL)).raster();
      assertThat(quick.knowsDepth()).isFalse();
      assertThat(good.knowsDepth()).isTrue();
      double coarserSkin = 0.04;
      assertThat((double) covered(quick) / covered(good))
          .isBetween(1 - coarserSkin, 1 + coarserSkin);
    }
  }

  @Test
  void perspective_fromFarAway_isTheFlatPicture() throws InterruptedException {
    try (LiveRenderer renderer = new LiveRenderer(frame -> {}, e -> {})) {
      LiveRenderer.Request flat = request(0.3, Quality.STILL);
      LiveRenderer.Request far =
          new LiveRenderer.Request(flat.shown(), flat.camera().withEye(60), 1, flat.ground());
      Raster a = once(renderer, flat).raster();
      Raster b = once(renderer, far).raster();
      int different = 0;
      for (int y = 0; y < a.height(); y++) {
        for (int x = 0; x < a.width(); x++) {
          different += Math.abs(a.cover(x, y) - b.cover(x, y)) > 140 ? 1 : 0;
        }
      }
      double edgesThatMoveByPartOfAPixel = 0.02;
      assertThat((double) different / covered(a)).isLessThan(edgesThatMoveByPartOfAPixel);
    }
  }

  /** What is struck by a line of sight is where the picture is nearest to the viewer. */
  @Test
  void pickedPlaces_areThoseThatArePainted() throws InterruptedException {
    try (LiveRenderer renderer = new LiveRenderer(frame -> {}, e -> {})) {
      LiveRenderer.Frame frame = once(renderer, request(0.8, Quality.STILL));
      Camera camera = frame.request().camera();
      var wood = TREE.capsules(frame.request().shown().pose());
      int struckAndNearest = 0;
      int struck = 0;
      for (int y = 3; y < camera.height(); y += 9) {
        for (int x = 3; x < camera.width(); x += 9) {
          var hit = wood.nearest(camera.sight(x + 0.5, y + 0.5), i -> true);
          if (hit.isPresent()) {
            struck++;
            double fittingsBeforeTheWood = 0.004;
            boolean hidden = frame.raster().hides(hit.get().bark(), fittingsBeforeTheWood);
            struckAndNearest += !hidden && frame.raster().cover(x, y) > 0 ? 1 : 0;
          }
        }
      }
      assertThat(struck).isGreaterThan(80);
      double padsAndLinesCoverSome = 0.93;
      assertThat((double) struckAndNearest / struck).isGreaterThan(padsAndLinesCoverSome);
    }
  }
}
