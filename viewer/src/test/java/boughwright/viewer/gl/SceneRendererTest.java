// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.gl;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.viewer.scene.Bending;
import boughwright.viewer.scene.Camera;
import boughwright.viewer.scene.InventedTrees;
import boughwright.viewer.scene.Palette;
import boughwright.viewer.scene.Scene;
import boughwright.viewer.scene.Shoots;
import boughwright.viewer.scene.ViewAngle;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.lwjgl.opengl.GL33C;

class SceneRendererTest {
  private static final Document HEDGE = InventedTrees.hedgeDocument();
  private static final Plan PLAN = HEDGE.plans().get(0);
  private static SceneRenderer renderer;

  @BeforeAll
  static void open() {
    renderer = Graphics.open();
  }

  @AfterAll
  static void close() {
    if (renderer != null) {
      renderer.close();
    }
  }

  /** An upright pole of 40 mm, 200 mm high. */
  private static Scene pole() {
    Document document =
        new Document(
            new Shoots().base("t1", new double[] {0, 0, 200}, Shoots.taper(40, 40)).tree("pole"),
            List.of(),
            Map.of());
    return Scene.of(document, Optional.empty(), Optional.empty());
  }

  private static Scene bent() {
    return Scene.of(HEDGE, Optional.of(PLAN), Optional.of(Bending.drawnIn(HEDGE.tree(), PLAN)));
  }

  private static Camera camera(double azimuth, int width, int height) {
    Point3 middle = new Point3(0, 0, 0.1);
    return new Camera(ViewAngle.level(azimuth), middle, 2000, width, height, 2);
  }

  @Test
  void pole_isAsWideAndHighAsItsCalipers() {
    Raster raster = renderer.draw(pole(), camera(0, 400, 600), 1);
    int across = 0;
    for (int x = 0; x < 400; x++) {
      across += raster.cover(x, 300);
    }
    double width = 0.040 * 2000;
    double polygonAndHalfAPixel = 1.0;
    assertThat(across / 255.0).isCloseTo(width, within(polygonAndHalfAPixel));
    assertThat(raster.cover(200, 300)).isEqualTo(255);
    assertThat(raster.cover(10, 300)).isZero();
    int above = 0;
    for (int y = 0; y < 300; y++) {
      above += raster.cover(200, y);
    }
    double capHeight = 0.8 * 0.020 * 2000;
    assertThat(above / 255.0).isCloseTo(200 + capHeight, within(polygonAndHalfAPixel));
  }

  /** Without perspective a tree seen from behind has the mirrored outline. */
  @Test
  void outlineFromBehind_isMirrored() {
    Scene scene = Scene.of(HEDGE, Optional.empty(), Optional.empty());
    Camera front = new Camera(ViewAngle.level(0.3), new Point3(0, 0, 0.2), 1200, 801, 701, 3);
    Camera back =
        new Camera(ViewAngle.level(0.3 + Math.PI), new Point3(0, 0, 0.2), 1200, 801, 701, 3);
    Raster a = renderer.draw(scene, front, 1);
    Raster b = renderer.draw(scene, back, 1);
    int covered = 0;
    int different = 0;
    int lit = 0;
    for (int y = 0; y < 701; y++) {
      for (int x = 0; x < 801; x++) {
        covered += a.cover(x, y) > 0 ? 1 : 0;
        different += Math.abs(a.cover(x, y) - b.cover(800 - x, y)) > 140 ? 1 : 0;
        lit += a.pixel(x, y) != b.pixel(800 - x, y) ? 1 : 0;
      }
    }
    double edgePixelsThatFallDifferently = 0.002;
    assertThat((double) different / covered).isLessThan(edgePixelsThatFallDifferently);
    assertThat(lit).as("the other side of the tree is shown").isGreaterThan(covered / 3);
  }

  @Test
  void ghost_isTranslucentAndOfOneLayer() {
    Scene scene = bent();
    Camera camera =
        new Camera(ViewAngle.level(scene.front()), scene.bounds().centre(), 2000, 1200, 1300, 3);
    Raster raster = renderer.draw(scene, camera, 1);
    int solid = 0;
    int translucent = 0;
    for (int y = 0; y < raster.height(); y++) {
      for (int x = 0; x < raster.width(); x++) {
        solid += raster.cover(x, y) == 255 ? 1 : 0;
        int cover = raster.cover(x, y);
        translucent += cover > 60 && cover < 200 && isToned(raster.pixel(x, y)) ? 1 : 0;
      }
    }
    assertThat(solid).isGreaterThan(20_000);
    assertThat(translucent).isGreaterThan(5_000);
  }

  /** Whether a translucent pixel has the hue of the ghost: bluer than red. */
  private static boolean isToned(int pixel) {
    assertThat(Palette.GHOST.blue()).isGreaterThan(Palette.GHOST.red());
    return (pixel & 255) > (pixel >> 16 & 255);
  }

  @Test
  void tiles_meetWithoutASeam() {
    Scene scene = pole();
    int wide = 2600;
    Camera camera = new Camera(ViewAngle.level(0), new Point3(-0.31, 0, 0.1), 1000, wide, 300, 2);
    Raster whole = renderer.draw(scene, camera, 1);
    Raster part = renderer.draw(scene, camera.part(1500, 0, 900, 300), 1);
    int covered = 0;
    for (int y = 0; y < 300; y++) {
      for (int x = 0; x < 900; x++) {
        int difference = Math.abs(whole.cover(1500 + x, y) - part.cover(x, y));
        int oneSampleOfFour = 64;
        assertThat(difference).isLessThanOrEqualTo(oneSampleOfFour);
        covered += part.cover(x, y) > 0 ? 1 : 0;
      }
    }
    assertThat(covered).isGreaterThan(3000);
  }

  @Test
  void points_behindTheWoodAreHidden() {
    Raster raster = renderer.draw(pole(), camera(0, 400, 600), 1);
    assertThat(raster.hides(new Point3(0, 0.1, 0.1), 1e-3)).isTrue();
    assertThat(raster.hides(new Point3(0, -0.1, 0.1), 1e-3)).isFalse();
    assertThat(raster.hides(new Point3(0, -0.020, 0.1), 1e-3)).as("on the bark").isFalse();
    assertThat(raster.hides(new Point3(0.08, 0.1, 0.1), 1e-3)).as("beside").isFalse();
  }

  @Test
  void drawing_isTheSameEveryTime_andLeavesNoError() {
    Scene scene = bent();
    Raster first = renderer.draw(scene, camera(0.4, 300, 300), 1);
    renderer.draw(pole(), camera(0, 100, 100), 1);
    Raster second = renderer.draw(scene, camera(0.4, 300, 300), 1);
    int[] a = new int[300 * 300];
    int[] b = new int[300 * 300];
    first.copyPixels(a);
    second.copyPixels(b);
    assertThat(a).isEqualTo(b);
    assertThat(GL33C.glGetError()).isEqualTo(GL33C.GL_NO_ERROR);
  }

  @Test
  void close_freesWhatWasMade() {
    SceneRenderer other = Graphics.open();
    other.draw(bent(), camera(0, 64, 64), 1);
    long alive = buffersAlive();
    for (int n = 0; n < 10; n++) {
      other.draw(bent(), camera(0, 64, 64), 1);
    }
    assertThat(alive).isPositive();
    assertThat(buffersAlive()).isEqualTo(alive);
    other.close();
    assertThatThrownBy(other::driver).hasMessageContaining("closed");
    assertThat(renderer.driver()).as("the other renderer goes on").contains("OpenGL");
  }

  private static long buffersAlive() {
    return IntStream.range(1, 2000).filter(GL33C::glIsBuffer).count()
        + IntStream.range(1, 2000).filter(GL33C::glIsFramebuffer).count()
        + IntStream.range(1, 2000).filter(GL33C::glIsRenderbuffer).count();
  }

  @Test
  void otherThread_isRefused() throws InterruptedException {
    AtomicReference<Throwable> thrown = new AtomicReference<>();
    Thread thread =
        new Thread(
            () -> {
              try {
                renderer.draw(pole(), camera(0, 10, 10), 1);
              } catch (IllegalStateException e) {
                thrown.set(e);
              }
            });
    thread.start();
    thread.join();
    assertThat(thrown.get()).hasMessageContaining("belongs to thread");
    assertThatThrownBy(() -> camera(0, 0, 10)).hasMessageContaining("camera of 0");
  }
}
