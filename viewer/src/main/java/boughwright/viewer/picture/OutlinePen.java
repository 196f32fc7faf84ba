// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.modeller.geometry.Point3;
import boughwright.viewer.scene.Camera;
import boughwright.viewer.scene.StagesView;
import java.awt.BasicStroke;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;

/** Draws the outline of a limb over a view, dashed. */
final class OutlinePen {
  /** A limb seen shorter than this part of its length would only be a tangle [1]. */
  private static final double END_ON = 0.35;

  private OutlinePen() {}

  static void draw(Page page, ViewFrame frame, StagesView.Outline limb) {
    if (isSeenEndOn(frame, limb)) {
      return;
    }
    List<double[]> left = new ArrayList<>();
    List<double[]> right = new ArrayList<>();
    List<Camera.Pixel> axis = limb.axis().stream().map(frame.camera()::project).toList();
    double[] before = {0, 1};
    for (int n = 0; n < axis.size(); n++) {
      before = across(axis, n, before);
      double r = limb.radii().get(n) * frame.camera().pixelsPerMetre();
      double x = frame.area().x() + axis.get(n).x();
      double y = frame.area().y() + axis.get(n).y();
      left.add(new double[] {x + r * before[0], y + r * before[1]});
      right.add(0, new double[] {x - r * before[0], y - r * before[1]});
    }
    Path2D path = new Path2D.Double();
    path.moveTo(left.get(0)[0], left.get(0)[1]);
    left.forEach(at -> path.lineTo(at[0], at[1]));
    right.forEach(at -> path.lineTo(at[0], at[1]));
    stroke(page, path);
  }

  private static boolean isSeenEndOn(ViewFrame frame, StagesView.Outline limb) {
    Point3 start = limb.axis().get(0);
    Point3 end = limb.axis().get(limb.axis().size() - 1);
    double seen = frame.camera().project(start).distance(frame.camera().project(end));
    return seen < END_ON * start.distance(end) * frame.camera().pixelsPerMetre();
  }

  /** Square to the axis on the page, of length one; as before where it points at the viewer. */
  private static double[] across(List<Camera.Pixel> axis, int n, double[] before) {
    Camera.Pixel from = axis.get(Math.max(0, n - 1));
    Camera.Pixel to = axis.get(Math.min(axis.size() - 1, n + 1));
    double length = from.distance(to);
    return length < 1e-3
        ? before
        : new double[] {-(to.y() - from.y()) / length, (to.x() - from.x()) / length};
  }

  private static void stroke(Page page, Path2D path) {
    float[] dash = {(float) page.u(6), (float) page.u(4)};
    page.pen().setColor(Ink.STAYS);
    page.pen()
        .setStroke(
            new BasicStroke(
                (float) page.u(1.5), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dash, 0));
    page.pen().draw(path);
  }
}
