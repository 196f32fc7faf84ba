// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.tree.Container;
import java.util.ArrayList;
import java.util.List;

/** What the tree stands in, as a clear box with thin edges. */
final class Pot {
  private static final int SIDES = 6;

  private final Point3[] corners = new Point3[8];

  /**
   * @param base the trunk base, on the soil line [m, tree frame]
   */
  Pot(Container container, Point3 base, Stand stand) {
    double right = container.size().length() / 2;
    double back = container.size().width() / 2;
    int[][] signs = {{-1, -1}, {1, -1}, {1, 1}, {-1, 1}};
    double cos = Math.cos(container.turn());
    double sin = Math.sin(container.turn());
    for (int n = 0; n < 8; n++) {
      double x = signs[n % 4][0] * right;
      double y = signs[n % 4][1] * back;
      double z = n < 4 ? container.rim() - container.size().depth() : container.rim();
      corners[n] =
          stand.place(
              new Point3(
                  base.x() + container.centreX() + x * cos + y * sin,
                  base.y() + container.centreY() - x * sin + y * cos,
                  base.z() + z));
    }
  }

  /** Its walls. */
  Mesh walls() {
    return Bar.box(corners, Palette.CONTAINER);
  }

  /**
   * Its edges.
   *
   * @param radius half their thickness [m]
   */
  List<Mesh> edges(double radius) {
    Tube tube = new Tube(radius, SIDES, Palette.CONTAINER);
    List<Mesh> edges = new ArrayList<>();
    for (int n = 0; n < 4; n++) {
      int next = (n + 1) % 4;
      edges.add(tube.along(List.of(corners[n], corners[next])));
      edges.add(tube.along(List.of(corners[n + 4], corners[next + 4])));
      edges.add(tube.along(List.of(corners[n], corners[n + 4])));
    }
    return edges;
  }
}
