// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.modeller.units.DisplayUnits;
import boughwright.viewer.gl.Quality;
import boughwright.viewer.gl.SceneRenderer;
import boughwright.viewer.picture.SceneWords;
import boughwright.viewer.scene.Camera;
import boughwright.viewer.scene.Shown;
import boughwright.viewer.scene.StagesView;
import boughwright.viewer.window.look.Shade;
import boughwright.viewer.window.look.Theme;
import boughwright.viewer.window.look.Tone;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.lang.reflect.InvocationTargetException;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import javax.swing.SwingUtilities;

/** The paper that pictures of a canvas are put together on, as it was dressed at one moment. */
final class CanvasPaper {
  private final Layers layers;
  private final Looks looks;
  private final DisplayUnits units;
  private final double deviceScale;
  private final double textScale = Theme.textSize().percent() / 100.0;
  private final boolean dark = Theme.tone() == Tone.DARK;
  private final Color paper = Theme.colour(Shade.PAPER);
  private final Color ink = Theme.colour(Shade.INK);
  private final Font font = Theme.strong();

  /** What lies behind and over the tree; painted on the event thread. */
  interface Layers {
    void behind(Graphics2D pen, Camera camera, boolean others);

    void over(Graphics2D pen, Camera camera, boolean others);
  }

  CanvasPaper(Layers layers, Looks looks, DisplayUnits units, double deviceScale) {
    this.layers = layers;
    this.looks = looks;
    this.units = units;
    this.deviceScale = deviceScale;
  }

  double deviceScale() {
    return deviceScale;
  }

  SceneRenderer.Ground ground() {
    return new SceneRenderer.Ground(Quality.STILL, dark);
  }

  SceneWords.Wanted wanted(double factor) {
    return new SceneWords.Wanted(Math.max(0.5, factor * textScale), dark, looks.written(), units);
  }

  /** Nothing is written over the wood. */
  SceneWords.Wanted wordless() {
    return new SceneWords.Wanted(deviceScale, dark, Set.of(), units);
  }

  /** All limbs of a pose and of the tree as measured. */
  List<StagesView.Outline> limbs(Shown shown) {
    return Stream.of(shown.tree().measured(), shown.pose())
        .distinct()
        .flatMap(pose -> shown.tree().capsules(pose).frame().stream())
        .toList();
  }

  /**
   * Puts a picture together.
   *
   * @param factor pixels for each user pixel of the canvas
   * @param seen the camera of the canvas, whose layers are painted too; null for none of them
   */
  BufferedImage compose(LivePicture picture, double factor, Camera seen) {
    BufferedImage image =
        new BufferedImage(
            picture.wood().getWidth(), picture.wood().getHeight(), BufferedImage.TYPE_INT_RGB);
    onEventThread(() -> paint(image, picture, new Fit(factor, seen)));
    return image;
  }

  /** How the canvas lies on a picture. */
  private record Fit(double factor, Camera seen) {}

  private void paint(BufferedImage image, LivePicture picture, Fit fit) {
    Graphics2D pen = image.createGraphics();
    smooth(pen);
    pen.setColor(paper);
    pen.fillRect(0, 0, image.getWidth(), image.getHeight());
    Camera whole = picture.frame().raster().camera();
    boolean others = fit.seen() != null;
    Graphics2D user = (Graphics2D) pen.create();
    Camera camera = whole;
    if (others) {
      user.translate(
          (image.getWidth() - fit.seen().width() * fit.factor()) / 2,
          (image.getHeight() - fit.seen().height() * fit.factor()) / 2);
      user.scale(fit.factor(), fit.factor());
      camera = fit.seen();
    }
    layers.behind(user, camera, others);
    pen.drawImage(picture.wood(), 0, 0, null);
    picture.words().ifPresent(words -> pen.drawImage(words, 0, 0, null));
    layers.over(user, camera, others);
    user.dispose();
    pen.dispose();
  }

  private static void smooth(Graphics2D pen) {
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
  }

  /** Writes what a picture shows at its head. */
  void caption(BufferedImage image, String words) {
    Graphics2D pen = image.createGraphics();
    smooth(pen);
    float size = Math.max(14f, image.getWidth() / 32f);
    pen.setFont(font.deriveFont(size));
    pen.setColor(ink);
    pen.drawString(words, size, 1.8f * size);
    pen.dispose();
  }

  private static void onEventThread(Runnable work) {
    if (SwingUtilities.isEventDispatchThread()) {
      work.run();
      return;
    }
    try {
      SwingUtilities.invokeAndWait(work);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (InvocationTargetException e) {
      throw new IllegalStateException(e.getCause());
    }
  }
}
