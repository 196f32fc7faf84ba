// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.modeller.geometry.Point3;
import boughwright.viewer.scene.Box;
import boughwright.viewer.scene.Camera;
import boughwright.viewer.scene.Framing;
import boughwright.viewer.scene.StagesView;
import boughwright.viewer.scene.ViewAngle;
import boughwright.viewer.window.look.Theme;
import java.util.List;
import javax.swing.Timer;

/** From where the tree is seen, in user pixels of the canvas; it moves smoothly where asked to. */
final class Viewpoint {
  private static final double TURN_PER_PIXEL = Math.toRadians(0.4);
  private static final double SMALLEST_SCALE = 20;

  /** A canvas that is lower has no legend, and what the legend takes of others [pixels]. */
  private static final int LOWEST_WITH_LEGEND = 260;

  private static final int FOOT = 100;
  private static final double LARGEST_SCALE = 200_000;

  /** How deep is drawn, over the size of the tree [1]. */
  private static final double DEPTH = 4;

  private static final int GLIDE_MS = 220;
  private static final int STEP_MS = 15;

  private final Runnable changed;
  private final Timer timer = new Timer(STEP_MS, event -> step());
  private boolean smooth = true;
  private boolean whole;
  private Camera camera;
  private Camera from;
  private Camera to;
  private long began;

  /**
   * @param changed told after every change
   */
  Viewpoint(Runnable changed) {
    this.changed = changed;
    camera = new Camera(ViewAngle.level(0), new Point3(0, 0, 0.2), 1000, 1, 1, DEPTH);
  }

  Camera camera() {
    return camera;
  }

  /** Whether changes of view glide or come at once. */
  void setSmooth(boolean on) {
    smooth = on;
  }

  boolean isSmooth() {
    return smooth;
  }

  boolean isGliding() {
    return timer.isRunning();
  }

  void resize(int width, int height) {
    if (width != camera.width() || height != camera.height()) {
      end();
      double factor =
          camera.height() > 1
              ? Math.min((double) width / camera.width(), (double) height / camera.height())
              : 1;
      set(Framing.scaled(camera.sized(width, height), within(camera.pixelsPerMetre() * factor)));
    }
  }

  /** Makes room for all of a scene along the line of sight. */
  void seeAllOf(Box box) {
    double depth = DEPTH * Math.max(0.05, box.diagonal()) + camera.target().distance(box.centre());
    camera =
        new Camera(
            camera.angle(),
            camera.target(),
            camera.pixelsPerMetre(),
            camera.width(),
            camera.height(),
            depth,
            camera.eye());
  }

  void turn(double right, double down) {
    turnBy(right * TURN_PER_PIXEL, down * TURN_PER_PIXEL);
  }

  void turnBy(double azimuth, double elevation) {
    whole = false;
    end();
    set(camera.from(camera.angle().turned(azimuth, elevation)));
  }

  /** Looks from another side at once; what is in the middle stays there, as large as it is. */
  void face(ViewAngle angle) {
    if (!camera.angle().equals(angle)) {
      end();
      set(camera.from(angle));
    }
  }

  void move(double right, double down) {
    whole = false;
    end();
    set(Framing.moved(camera, right, down));
  }

  void zoom(double factor, double x, double y) {
    whole = false;
    end();
    double scale = within(camera.pixelsPerMetre() * factor);
    set(Framing.zoomed(camera, scale / camera.pixelsPerMetre(), x, y));
  }

  private static double within(double scale) {
    return Math.min(LARGEST_SCALE, Math.max(SMALLEST_SCALE, scale));
  }

  /** Room for words and for the legend at the foot; less of it where the canvas is small. */
  private static Framing.Margins margins(Camera camera) {
    double side = Math.min(48, 0.07 * camera.width());
    double top = Math.min(56, 0.09 * camera.height());
    boolean isLow = camera.height() < Theme.px(LOWEST_WITH_LEGEND);
    double foot = isLow ? 0.16 * camera.height() : Theme.px(FOOT);
    return new Framing.Margins(side, top, side, foot);
  }

  /** Whether the view still holds the limbs it was fitted to last. */
  boolean isWhole() {
    return whole;
  }

  /** Looks from another side at some limbs as a whole. */
  void lookAt(ViewAngle angle, List<StagesView.Outline> limbs) {
    whole = true;
    glide(fitted(camera.from(angle), limbs));
  }

  /** Looks at some limbs as a whole at once, without gliding there. */
  void setAt(ViewAngle angle, List<StagesView.Outline> limbs) {
    whole = true;
    end();
    set(fitted(camera.from(angle), limbs));
  }

  private static Camera fitted(Camera camera, List<StagesView.Outline> limbs) {
    Camera fit = Framing.fit(camera, limbs, margins(camera));
    return Framing.scaled(fit, within(fit.pixelsPerMetre()));
  }

  /** Keeps what is seen when the canvas gets another size. */
  void keep() {
    whole = false;
  }

  boolean isFlat() {
    return camera.isFlat();
  }

  void setFlat(boolean flat) {
    end();
    double eye = Framing.eye(camera.pixelsPerMetre(), camera.height());
    set(camera.withEye(flat ? Double.POSITIVE_INFINITY : eye));
  }

  private void glide(Camera goal) {
    if (!smooth) {
      end();
      set(goal);
      return;
    }
    from = camera;
    to = goal;
    began = System.nanoTime();
    timer.start();
  }

  private void step() {
    double part = (System.nanoTime() - began) / 1e6 / GLIDE_MS;
    if (part >= 1) {
      end();
      set(to);
    } else {
      set(Framing.between(from, to, part * part * (3 - 2 * part)));
    }
  }

  private void end() {
    timer.stop();
  }

  private void set(Camera next) {
    camera = next;
    changed.run();
  }
}
