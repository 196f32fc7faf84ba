// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.plan.Document;
import boughwright.viewer.gl.Graphics;
import boughwright.viewer.gl.Raster;
import boughwright.viewer.gl.SceneRenderer;
import boughwright.viewer.scene.Camera;
import boughwright.viewer.scene.Scene;
import boughwright.viewer.scene.ViewAngle;
import boughwright.viewer.window.canvas.FullyLabelled;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Names, calipers and heights, all of them at once, from all sides. */
class LabelsTest {
  private static final int WIDTH = 900;
  private static final int HEIGHT = 700;
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

  private static ViewAngle angle(String side, double front) {
    return side.equals("top")
        ? ViewAngle.above(front)
        : ViewAngle.level(front + List.of("front", "left", "back", "right").indexOf(side) * 1.5708);
  }

  @ParameterizedTest
  @CsvSource({
    "hedge-hornbeam, front, 20",
    "hedge-hornbeam, left, 10",
    "hedge-hornbeam, back, 10",
    "hedge-hornbeam, right, 10",
    "hedge-hornbeam, top, 5",
    "larch, front, 10",
    "larch, left, 5",
    "larch, back, 10",
    "larch, right, 5",
    "larch, top, 3"
  })
  void labels_neverStandOnEachOther_norLeaveThePicture(String tree, String side, int least)
      throws Exception {
    Document document = TreeFiles.read(Path.of("..", "examples", tree + ".tree.json")).document();
    FullyLabelled labelled = new FullyLabelled(document);
    Scene scene = labelled.scene();
    Camera camera =
        labelled.whole(
            new Camera(angle(side, scene.front()), scene.bounds().centre(), 900, WIDTH, HEIGHT, 5));
    BufferedImage sheet = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_ARGB_PRE);
    List<PlacedLabel> placed = placed(sheet, scene, camera);

    assertThat(placed).hasSizeGreaterThanOrEqualTo(least);
    for (int n = 0; n < placed.size(); n++) {
      Rectangle2D one = box(placed.get(n));
      assertThat(new Rectangle2D.Double(0, 0, WIDTH, HEIGHT).contains(one)).isTrue();
      assertThat(inked(sheet, one)).as(placed.get(n).label().words().toString()).isTrue();
      for (PlacedLabel other : placed.subList(n + 1, placed.size())) {
        assertThat(one.intersects(box(other)))
            .as("%s on %s", placed.get(n).label().words(), other.label().words())
            .isFalse();
      }
    }
    BufferedImage words = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_ARGB_PRE);
    assertThat(placed(words, scene.withNotesOnly(), camera)).isNotEmpty();
    assertThat(edgeIsClear(words)).as("no letter is cut off by the edge").isTrue();
  }

  private static List<PlacedLabel> placed(BufferedImage sheet, Scene scene, Camera camera) {
    Raster raster = renderer.draw(scene, camera, 1);
    try (Page page = new Page(sheet, 1, UnaryOperator.identity())) {
      ViewFrame frame = new ViewFrame(new Rect(0, 0, WIDTH, HEIGHT), camera, "", "", 0);
      return new MarkPainter(page, scene, frame).paint(raster, new Told(1), List.of());
    }
  }

  private static Rectangle2D box(PlacedLabel label) {
    Rect box = label.box();
    return new Rectangle2D.Double(box.x(), box.y(), box.width(), box.height());
  }

  private static boolean inked(BufferedImage sheet, Rectangle2D box) {
    for (int y = (int) box.getMinY() + 1; y < box.getMaxY() - 1; y++) {
      for (int x = (int) box.getMinX() + 1; x < box.getMaxX() - 1; x++) {
        if (sheet.getRGB(x, y) >>> 24 > 128) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean edgeIsClear(BufferedImage sheet) {
    int ink = 0;
    for (int x = 0; x < WIDTH; x++) {
      ink += (sheet.getRGB(x, 0) >>> 24) + (sheet.getRGB(x, HEIGHT - 1) >>> 24);
    }
    for (int y = 0; y < HEIGHT; y++) {
      ink += (sheet.getRGB(0, y) >>> 24) + (sheet.getRGB(WIDTH - 1, y) >>> 24);
    }
    return ink == 0;
  }
}
