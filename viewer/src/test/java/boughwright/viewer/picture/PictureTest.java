// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.problem.InputException;
import boughwright.physics.trial.Outcome;
import boughwright.physics.trial.TrialResult;
import boughwright.viewer.gl.Graphics;
import boughwright.viewer.gl.SceneRenderer;
import boughwright.viewer.scene.Bending;
import boughwright.viewer.scene.Camera;
import boughwright.viewer.scene.InventedTrees;
import boughwright.viewer.scene.Mark;
import boughwright.viewer.scene.Scene;
import boughwright.viewer.scene.ViewAngle;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class PictureTest {
  private static final PictureSize SIZE = new PictureSize(1200, 800);
  private static final Document HEDGE = InventedTrees.hedgeDocument();
  private static final Plan PLAN = HEDGE.plans().get(0);
  private static final TrialResult TRIAL = Bending.drawnIn(HEDGE.tree(), PLAN);
  private static final Scene SCENE = Scene.of(HEDGE, Optional.of(PLAN), Optional.of(TRIAL));

  @BeforeAll
  static void graphics() {
    Graphics.require();
  }

  /** A composed page with its views. */
  private record Composed(BufferedImage image, List<ViewFrame> frames) {}

  private static Composed compose(Scene scene) {
    return compose(scene, SIZE);
  }

  private static Composed compose(Scene scene, PictureSize size) {
    ViewAngle front = ViewAngle.level(scene.front());
    ViewAngle side = ViewAngle.level(scene.front() - Math.PI / 2);
    List<Arrangement.Wanted> views =
        List.of(
            new Arrangement.Wanted(front, "Front", ""), new Arrangement.Wanted(side, "Side", ""));
    try (SceneRenderer renderer = Graphics.open();
        Page page = new Page(size)) {
      Heading heading = new Heading("tree", "about", "", "", "");
      List<ViewFrame> frames =
          new Composer(page, scene, heading, List.of("note")).compose(views, renderer);
      return new Composed(page.image(), frames);
    }
  }

  private static int count(BufferedImage image, java.util.function.IntPredicate test) {
    int count = 0;
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        count += test.test(image.getRGB(x, y) & 0xFFFFFF) ? 1 : 0;
      }
    }
    return count;
  }

  private static boolean isSqueezed(int rgb) {
    return (rgb & 255) > (rgb >> 16 & 255) + 25 && (rgb & 255) > (rgb >> 8 & 255) + 12;
  }

  private static boolean isStretched(int rgb) {
    return (rgb >> 16 & 255) > (rgb & 255) + 70;
  }

  @Test
  void bothSidesOfTheBend_showTheirColour() {
    Scene rest = Scene.of(HEDGE, Optional.of(PLAN), Optional.empty());
    int margin = 300;
    BufferedImage bent = viewsOnly(compose(SCENE));
    BufferedImage plain = viewsOnly(compose(rest));
    assertThat(count(bent, PictureTest::isSqueezed))
        .isGreaterThan(count(plain, PictureTest::isSqueezed) + margin);
    assertThat(count(bent, PictureTest::isStretched))
        .isGreaterThan(count(plain, PictureTest::isStretched) + margin);
  }

  private static BufferedImage viewsOnly(Composed composed) {
    Rect first = composed.frames().get(0).area();
    return composed.image().getSubimage(0, (int) first.y(), SIZE.width(), (int) first.height());
  }

  @Test
  void scaleBar_isTrueToWhatTheCameraDraws() {
    Composed composed = compose(SCENE);
    Camera camera = composed.frames().get(0).camera();
    Direction3 right = camera.angle().right();
    Point3 base = SCENE.base();
    double hundredMillimetres =
        camera.project(base).distance(camera.project(base.plus(right.times(0.1))));
    int bar = longestRun(composed.image(), SIZE.height() - 100, SIZE.height() - 40);
    double length = ScaleBar.fitting(camera.pixelsPerMetre(), 260 * SIZE.unit()).length();
    double pixelEdges = 2;
    assertThat((double) bar).isCloseTo(hundredMillimetres * length / 0.1, within(pixelEdges));
  }

  /** The longest level run of dark pixels in the left third of some rows. */
  private static int longestRun(BufferedImage image, int from, int to) {
    int longest = 0;
    for (int y = from; y < to; y++) {
      int run = 0;
      for (int x = 0; x < image.getWidth() / 3; x++) {
        run = (image.getRGB(x, y) >> 8 & 255) < 90 ? run + 1 : 0;
        longest = Math.max(longest, run);
      }
    }
    return longest;
  }

  @Test
  void views_areSquareToEachOther_inOneScale_onOneSoilLine() {
    List<ViewFrame> frames = compose(SCENE).frames();
    Camera a = frames.get(0).camera();
    Camera b = frames.get(1).camera();
    assertThat(a.angle().toViewer().dot(b.angle().toViewer())).isCloseTo(0, within(1e-12));
    assertThat(a.pixelsPerMetre()).isEqualTo(b.pixelsPerMetre());
    double rounding = 1e-2;
    assertThat(frames.get(0).area().y() + a.project(SCENE.base()).y())
        .isCloseTo(frames.get(1).area().y() + b.project(SCENE.base()).y(), within(rounding));
    assertThat(frames.get(0).area().overlaps(frames.get(1).area())).isFalse();
  }

  @Test
  void tallPage_hasItsViewsAboveEachOther() {
    List<ViewFrame> frames = compose(SCENE, new PictureSize(700, 1400)).frames();
    assertThat(frames.get(0).area().bottom()).isLessThan(frames.get(1).area().y());
    assertThat(frames.get(0).camera().pixelsPerMetre())
        .isEqualTo(frames.get(1).camera().pixelsPerMetre());
  }

  @Test
  void everyMarkedPlace_liesInsideItsView() {
    for (ViewFrame frame : compose(SCENE).frames()) {
      for (Mark mark : SCENE.marks()) {
        Camera.Pixel at = frame.camera().project(mark.at());
        assertThat(at.x()).isBetween(0.0, frame.area().width());
        assertThat(at.y()).isBetween(0.0, frame.area().height());
      }
    }
  }

  @Test
  void ghost_showsWhereTheLeaderWas() throws Exception {
    Plan still = InventedTrees.plan(List.of(), List.of(), Optional.empty(), Optional.empty());
    Document document = new Document(HEDGE.tree(), List.of(still), Map.of());
    TrialResult bent = Bending.drawnIn(HEDGE.tree(), still);
    Scene scene = Scene.of(document, Optional.of(still), Optional.of(bent));
    Composed composed = compose(scene);
    ViewFrame front = composed.frames().get(0);
    Camera.Pixel tip = front.camera().project(tip("l4"));
    Color seen =
        new Color(
            composed
                .image()
                .getRGB(
                    (int) (front.area().x() + tip.x()), (int) (front.area().y() + tip.y() + 3)));
    assertThat(seen).isNotEqualTo(Ink.PAPER);
    assertThat(seen.getRed()).as("translucent, not bark").isBetween(170, 240);
  }

  private static Point3 tip(String id) {
    return HEDGE.tree().segments().stream()
        .filter(segment -> segment.id().equals(id))
        .findFirst()
        .orElseThrow()
        .end();
  }

  @Test
  void picture_isTheSameEveryTime() throws Exception {
    BufferedImage a = Picture.beforeAfter(HEDGE, PLAN, TRIAL, SIZE);
    BufferedImage b = Picture.beforeAfter(HEDGE, PLAN, TRIAL, SIZE);
    int[] first = a.getRGB(0, 0, SIZE.width(), SIZE.height(), null, 0, SIZE.width());
    int[] second = b.getRGB(0, 0, SIZE.width(), SIZE.height(), null, 0, SIZE.width());
    assertThat(first).isEqualTo(second);
  }

  @Test
  void outcomeThatDoesNotHold_isToldInThePicture_withoutLegend() throws Exception {
    TrialResult failed = Bending.failed(PLAN, new Outcome(false, false, 0, "at l1"));
    BufferedImage image = Picture.beforeAfter(HEDGE, PLAN, failed, SIZE);
    int trouble = Ink.TROUBLE.getRGB() & 0xFFFFFF;
    assertThat(count(image, rgb -> rgb == trouble)).isGreaterThan(100);
    assertThat(count(image, PictureTest::isSqueezed)).isZero();
  }

  @Test
  void emptyStates_areDrawn() throws Exception {
    Plan bare = InventedTrees.plan(List.of(), List.of(), Optional.empty(), Optional.empty());
    TrialResult nothing = new Bending(HEDGE.tree()).result(bare);
    PictureSize small = new PictureSize(640, 480);
    List<BufferedImage> images = new ArrayList<>();
    images.add(Picture.beforeAfter(HEDGE, bare, nothing, small));
    images.add(Picture.view(subject(Optional.empty()), ViewAngle.level(0), small));
    images.add(Picture.view(subject(Optional.of(bare)), new ViewAngle(2, -0.4), small));
    for (BufferedImage image : images) {
      assertThat(image.getWidth()).isEqualTo(640);
      assertThat(image.getHeight()).isEqualTo(480);
      assertThat(count(image, rgb -> rgb != (Ink.PAPER.getRGB() & 0xFFFFFF))).isGreaterThan(9000);
    }
  }

  private static PrintedPicture.Subject subject(Optional<Plan> plan) {
    return new PrintedPicture.Subject(HEDGE, plan, Optional.empty());
  }

  @Test
  void treeInLeaf_isGreenWhereItWasPaperOrBark() throws Exception {
    PictureSize small = new PictureSize(640, 480);
    PrintedPicture.Subject inLeaf =
        new PrintedPicture.Subject(HEDGE, Optional.empty(), Optional.empty(), true);
    BufferedImage bare = Picture.view(subject(Optional.empty()), ViewAngle.level(0), small);
    BufferedImage leaf = Picture.view(inLeaf, ViewAngle.level(0), small);
    assertThat(count(bare, PictureTest::isGreen)).isZero();
    assertThat(count(leaf, PictureTest::isGreen)).isGreaterThan(1500);
  }

  private static boolean isGreen(int rgb) {
    int red = rgb >> 16 & 0xFF;
    int green = rgb >> 8 & 0xFF;
    int blue = rgb & 0xFF;
    return green > red + 15 && green > blue + 15;
  }

  @Test
  void nameThatCannotBeSet_isRefused() {
    String name = "tree " + new String(Character.toChars(0x10FFFD));
    Document document = new Document(InventedTrees.hedge(name), HEDGE.plans(), Map.of());
    assertThatThrownBy(() -> Picture.beforeAfter(document, PLAN, TRIAL, SIZE))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("no typeface on this machine has")
        .hasMessageNotContaining("\n");
  }
}
