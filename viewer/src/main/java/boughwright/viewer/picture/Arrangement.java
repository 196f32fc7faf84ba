// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.modeller.geometry.Point3;
import boughwright.viewer.scene.Camera;
import boughwright.viewer.scene.Scene;
import boughwright.viewer.scene.ViewAngle;
import java.util.ArrayList;
import java.util.List;

/** Puts views beside or above each other in one scale; beside, they stand on one soil line. */
final class Arrangement {
  private static final double CAPTION = 40;
  private static final double SIDE_ROOM = 74;
  private static final double HEAD_ROOM = 46;
  private static final double BELOW_ROOTS = 14;
  private static final double SOIL_BAND = 44;
  private static final double GAP = 36;

  /** Smaller scenes are drawn as if they had this size [m]. */
  private static final double LEAST_SIZE = 1e-6;

  private final Page page;
  private final Scene scene;
  private final Rect area;

  /** A view to be arranged: from where, and its caption. */
  record Wanted(ViewAngle angle, String name, String more) {}

  Arrangement(Page page, Scene scene, Rect area) {
    this.page = page;
    this.scene = scene;
    this.area = area;
  }

  /**
   * How one view fits.
   *
   * @param scale the largest in which it does [pixels per metre]
   * @param low how far down it reaches from the root base, negative [m]
   */
  record Fit(double scale, double low) {
    /** What fits two pages alike. */
    Fit and(Fit other) {
      return new Fit(Math.min(scale, other.scale), Math.min(low, other.low));
    }
  }

  /** How one view fits into the area. */
  Fit fit(Wanted wanted) {
    List<Shape> one = List.of(shape(wanted));
    return new Fit(scale(one, area), low(one));
  }

  /** One view as large and as high over the foot of the area as on the pages beside it. */
  ViewFrame arrange(Wanted wanted, Fit alike) {
    Shape shape = shape(wanted);
    Extent own = shape.extent();
    Extent extent = new Extent(own.left(), own.right(), alike.low(), own.high());
    return row(List.of(new Shape(wanted, extent)), area, alike.scale()).get(0);
  }

  private Shape shape(Wanted wanted) {
    return new Shape(wanted, Extent.of(scene, wanted.angle()));
  }

  /** Beside each other or one above the other, whichever shows the tree larger. */
  List<ViewFrame> arrange(List<Wanted> wanted) {
    List<Shape> shapes = wanted.stream().map(this::shape).toList();
    double beside = scale(shapes, area);
    List<Rect> rows = rows(shapes.size());
    double stacked =
        shapes.stream()
            .mapToDouble(shape -> scale(List.of(shape), rows.get(0)))
            .min()
            .orElseThrow();
    if (beside >= stacked) {
      return row(shapes, area, beside);
    }
    List<ViewFrame> frames = new ArrayList<>();
    for (int n = 0; n < shapes.size(); n++) {
      frames.addAll(row(List.of(shapes.get(n)), rows.get(n), stacked));
    }
    return frames;
  }

  /** A view and how far the scene reaches in it. */
  private record Shape(Wanted wanted, Extent extent) {}

  private List<Rect> rows(int count) {
    double height = (area.height() - page.u(GAP) * (count - 1)) / count;
    List<Rect> rows = new ArrayList<>();
    for (int n = 0; n < count; n++) {
      double top = area.y() + n * (height + page.u(GAP));
      rows.add(new Rect(area.x(), top, area.width(), height));
    }
    return rows;
  }

  /** The largest scale in which views fit beside each other [pixels per metre]. */
  private double scale(List<Shape> shapes, Rect room) {
    double width = shapes.stream().mapToDouble(shape -> shape.extent().width()).sum();
    double free =
        room.width() - page.u(GAP) * (shapes.size() - 1) - 2 * page.u(SIDE_ROOM) * shapes.size();
    double tall = room.height() - page.u(CAPTION) - page.u(HEAD_ROOM) - page.u(BELOW_ROOTS);
    return Math.min(
        free / Math.max(width, LEAST_SIZE),
        tall / Math.max(high(shapes) - low(shapes), LEAST_SIZE));
  }

  private static double high(List<Shape> shapes) {
    return shapes.stream().mapToDouble(shape -> shape.extent().high()).max().orElseThrow();
  }

  private static double low(List<Shape> shapes) {
    return shapes.stream().mapToDouble(shape -> shape.extent().low()).min().orElseThrow();
  }

  private List<ViewFrame> row(List<Shape> shapes, Rect room, double scale) {
    double width = shapes.stream().mapToDouble(shape -> shape.extent().width()).sum();
    double spare = room.width() - page.u(GAP) * (shapes.size() - 1) - width * scale;
    double bottom = room.bottom() - page.u(CAPTION);
    double below = Math.max(page.u(BELOW_ROOTS) - low(shapes) * scale, page.u(SOIL_BAND));
    Ground ground = new Ground(scale, Math.rint(bottom - below), room.bottom() - page.u(12));
    List<ViewFrame> frames = new ArrayList<>();
    double x = room.x();
    for (Shape shape : shapes) {
      double own = shape.extent().width() * scale + spare / shapes.size();
      Rect rect =
          new Rect(Math.rint(x), Math.rint(room.y()), Math.rint(own), Math.rint(bottom - room.y()));
      frames.add(frame(shape, rect, ground));
      x += own + page.u(GAP);
    }
    return frames;
  }

  /**
   * What the views of a row share.
   *
   * @param scale scale [pixels per metre]
   * @param soil height of the soil at the root base on the page [pixels]
   * @param caption baseline of the captions on the page [pixels]
   */
  private record Ground(double scale, double soil, double caption) {}

  private ViewFrame frame(Shape shape, Rect rect, Ground ground) {
    Wanted wanted = shape.wanted();
    Extent extent = shape.extent();
    double middle = (extent.left() + extent.right()) / 2;
    double above = (ground.soil() - rect.y() - rect.height() / 2) / ground.scale();
    Point3 target =
        scene
            .base()
            .plus(wanted.angle().right().times(middle))
            .plus(wanted.angle().up().times(above));
    Camera camera =
        new Camera(
            wanted.angle(),
            target,
            ground.scale(),
            (int) rect.width(),
            (int) rect.height(),
            2 * scene.bounds().diagonal() + Math.abs(above));
    return new ViewFrame(rect, camera, wanted.name(), wanted.more(), ground.caption());
  }
}
