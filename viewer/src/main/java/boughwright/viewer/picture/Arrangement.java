// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.modeller.geometry.Point3;
import boughwright.viewer.scene.Camera;
import boughwright.viewer.scene.Scene;
import boughwright.viewer.scene.ViewAngle;
import java.util.ArrayList;
import java.util.List;

/** Puts views beside each other in one scale, standing on one soil line. */
final class Arrangement {
  private static final double CAPTION = 40;
  private static final double SIDE_ROOM = 74;
  private static final double HEAD_ROOM = 40;
  private static final double BELOW_ROOTS = 14;
  private static final double SOIL_BAND = 44;
  private static final double GAP = 36;

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

  List<ViewFrame> arrange(List<Wanted> wanted) {
    List<Extent> extents = wanted.stream().map(w -> Extent.of(scene, w.angle())).toList();
    double width = extents.stream().mapToDouble(Extent::width).sum();
    double high = extents.stream().mapToDouble(Extent::high).max().orElseThrow();
    double low = extents.stream().mapToDouble(Extent::low).min().orElseThrow();
    double gaps = page.u(GAP) * (wanted.size() - 1);
    double free = area.width() - gaps - 2 * page.u(SIDE_ROOM) * wanted.size();
    double roomBelow = page.u(BELOW_ROOTS);
    double tall = area.height() - page.u(CAPTION) - page.u(HEAD_ROOM) - roomBelow;
    double scale = Math.min(free / Math.max(width, 1e-6), tall / Math.max(high - low, 1e-6));
    double spare = area.width() - gaps - width * scale;
    double bottom = area.bottom() - page.u(CAPTION);
    double soil = Math.rint(bottom - Math.max(roomBelow - low * scale, page.u(SOIL_BAND)));
    List<ViewFrame> frames = new ArrayList<>();
    double x = area.x();
    for (int n = 0; n < wanted.size(); n++) {
      double own = extents.get(n).width() * scale + spare / wanted.size();
      Rect rect =
          new Rect(Math.rint(x), Math.rint(area.y()), Math.rint(own), Math.rint(bottom - area.y()));
      frames.add(frame(wanted.get(n), extents.get(n), rect, new Ground(scale, soil)));
      x += own + page.u(GAP);
    }
    return frames;
  }

  /** Scale of the page [pixels per metre] and height of the soil at the root base [pixels]. */
  private record Ground(double scale, double soil) {}

  private ViewFrame frame(Wanted wanted, Extent extent, Rect rect, Ground ground) {
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
    return new ViewFrame(rect, camera, wanted.name(), wanted.more(), area.bottom() - page.u(12));
  }
}
