// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.plan.Document;
import boughwright.viewer.gl.Graphics;
import boughwright.viewer.gl.Raster;
import boughwright.viewer.gl.SceneRenderer;
import boughwright.viewer.scene.Camera;
import boughwright.viewer.scene.InventedTrees;
import boughwright.viewer.scene.Scene;
import boughwright.viewer.scene.ViewAngle;
import java.awt.Color;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class LabelPlacerTest {
  private static final int SIZE = 600;
  private static final Rect VIEW = new Rect(0, 0, SIZE, SIZE);
  private static Occupancy wood;

  @BeforeAll
  static void drawATree() {
    Document document = InventedTrees.hedgeDocument();
    Scene scene = Scene.of(document, Optional.empty(), Optional.empty());
    Camera camera = new Camera(ViewAngle.level(0), scene.bounds().centre(), 1200, SIZE, SIZE, 3);
    try (SceneRenderer renderer = Graphics.open()) {
      Raster raster = renderer.draw(scene, camera, 1);
      wood = new Occupancy(raster);
    }
  }

  private static Label label(double x, double y, String... words) {
    return new Label(List.of(new double[] {x, y}), 8, List.of(words), Color.BLACK);
  }

  private static double[] size(Label label) {
    return new double[] {9.0 * label.words().get(0).length(), 20.0 * label.words().size()};
  }

  @Test
  void crowdedLabels_neverOverlapAndStayInside() {
    LabelPlacer placer = new LabelPlacer(VIEW, wood, 1);
    Rect kept = new Rect(0, 500, SIZE, 4);
    placer.keepFree(kept);
    Random random = new Random(7);
    List<PlacedLabel> placed = new ArrayList<>();
    int missing = 0;
    for (int n = 0; n < 150; n++) {
      Label label =
          label(
              200 + 200 * random.nextDouble(),
              200 + 200 * random.nextDouble(),
              "label " + n,
              "more");
      Optional<PlacedLabel> found = placer.place(label, LabelPlacerTest::size);
      found.ifPresent(placed::add);
      missing += found.isEmpty() ? 1 : 0;
    }
    assertThat(placed.size() + missing).isEqualTo(150);
    assertThat(placed).hasSizeGreaterThan(60);
    for (int i = 0; i < placed.size(); i++) {
      assertThat(VIEW.contains(placed.get(i).box())).isTrue();
      assertThat(placed.get(i).box().overlaps(kept)).isFalse();
      for (int j = 0; j < i; j++) {
        assertThat(placed.get(i).box().overlaps(placed.get(j).box())).as("%d, %d", i, j).isFalse();
      }
    }
  }

  @Test
  void label_withRoomBesideTheWood_standsOnPaper() {
    LabelPlacer placer = new LabelPlacer(VIEW, wood, 1);
    PlacedLabel placed =
        placer.place(label(300, 400, "on the trunk"), LabelPlacerTest::size).orElseThrow();
    assertThat(wood.share(placed.box())).isZero();
  }

  @Test
  void label_keepsOffALineToAvoid() {
    LabelPlacer placer = new LabelPlacer(VIEW, wood, 1);
    Line2D line = new Line2D.Double(50, 0, 50, 600);
    placer.avoid(line);
    Rect box = placer.place(label(40, 60, "beside"), LabelPlacerTest::size).orElseThrow().box();
    assertThat(line.intersects(box.x(), box.y(), box.width(), box.height())).isFalse();
  }

  @Test
  void labelTooHighForItsRoom_keepsItsFirstLine() {
    LabelPlacer placer = new LabelPlacer(new Rect(0, 0, 300, 30), wood, 1);
    PlacedLabel placed =
        placer.place(label(20, 15, "first", "second"), LabelPlacerTest::size).orElseThrow();
    assertThat(placed.label().words()).containsExactly("first");
  }

  /** Words keep off the soil line, but what hangs above it may be named below it. */
  @Test
  void rectangleFreeOfWords_isCrossedByLeadersOnly() {
    LabelPlacer placer = new LabelPlacer(new Rect(0, 0, 400, 60), wood, 1);
    Rect soil = new Rect(0, 20, 400, 4);
    placer.keepFreeOfWords(soil);
    PlacedLabel placed =
        placer.place(label(40, 10, "below", "the soil"), LabelPlacerTest::size).orElseThrow();
    assertThat(placed.box().overlaps(soil)).isFalse();
  }

  @Test
  void quietLabel_isLeftOut_whereOnlyAPoorPlaceIsLeft() {
    Label loud = label(300, 400, "on the trunk");
    Label quiet = new Label(loud.places(), 8, loud.words(), Color.BLACK, true);
    Rect trunk = new Rect(290, 390, 60, 40);
    double[] size = {20, 10};
    assertThat(wood.share(trunk)).isGreaterThan(0.95);
    assertThat(placer(trunk).place(quiet, l -> size)).isEmpty();
    assertThat(placer(trunk).place(loud, l -> size)).isPresent();
  }

  private static LabelPlacer placer(Rect room) {
    return new LabelPlacer(room, wood, 1);
  }
}
