// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.ground;

import boughwright.modeller.geometry.Point3;
import java.util.List;
import java.util.Objects;

/**
 * How one root lies to the soil line, as measured and at a planting angle.
 *
 * @param root the root
 * @param now how its start lies as measured
 * @param then how its start lies at the planting angle
 * @param line its middle at the planting angle: where it leaves the trunk, then the end of each
 *     piece of the root itself [m, viewer's frame]
 * @param showsTo where its upper side goes under the soil, or its end if it never does; its start
 *     if it is buried there already [m, viewer's frame]
 */
public record RootLevel(Root root, Level now, Level then, List<Point3> line, Point3 showsTo) {
  public RootLevel {
    Objects.requireNonNull(root, "root");
    Objects.requireNonNull(now, "now");
    Objects.requireNonNull(then, "then");
    line = List.copyOf(line);
    Objects.requireNonNull(showsTo, "showsTo");
  }

  /** How much higher its start lies than as measured [m]. */
  public double rise() {
    return then.axis() - now.axis();
  }

  /** Where it leaves the trunk [m, viewer's frame]. */
  public Point3 start() {
    return line.get(0);
  }

  /** Its end [m, viewer's frame]. */
  public Point3 tip() {
    return line.get(line.size() - 1);
  }

  /** True if its end is above the soil. */
  public boolean endsInAir() {
    return tip().z() > 0;
  }
}
