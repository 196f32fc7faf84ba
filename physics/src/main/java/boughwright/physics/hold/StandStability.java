// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.hold;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.tree.Container;
import java.util.List;

/**
 * Whether pulls lift a container or tip it over an edge of its floor. Its weight, with soil and
 * tree, is taken to act through its middle (assumption).
 */
public final class StandStability {
  /** Standard gravity [m/s2]. */
  private static final double GRAVITY = 9.80665;

  private static final String[] SIDES = {"one end", "the other end", "one side", "the other side"};

  private final Container container;
  private final List<Pull> pulls;

  /**
   * A force on what stands in the container.
   *
   * @param at where [m, tree frame]
   * @param force the force [N]
   */
  public record Pull(Point3 at, Vector3 force) {}

  /**
   * How a container would give way.
   *
   * @param how {@code lifts}, or over which edge it tips; empty when no pull lifts or tips it
   * @param mass mass that just holds it, 0 or more [kg]
   */
  public record Need(String how, double mass) {}

  /** For a container and all pulls on what stands in it that come from outside. */
  public StandStability(Container container, List<Pull> pulls) {
    this.container = container;
    this.pulls = List.copyOf(pulls);
  }

  /** Force upward of all pulls together; less than 0 if they press down [N]. */
  public double lift() {
    return pulls.stream().mapToDouble(pull -> pull.force().z()).sum();
  }

  /**
   * The greatest mass that any way of giving way needs. Its own pressing down, where pulls point
   * down, is in the moments.
   */
  public Need need() {
    Need most = new Need("", 0);
    if (lift() > 0) {
      most = new Need("lifts", lift() / GRAVITY);
    }
    double[] half = {
      container.size().length() / 2,
      container.size().length() / 2,
      container.size().width() / 2,
      container.size().width() / 2
    };
    for (int side = 0; side < SIDES.length; side++) {
      double mass = overturning(side, half[side]) / (GRAVITY * half[side]);
      if (mass > most.mass()) {
        most = new Need("tips over " + SIDES[side], mass);
      }
    }
    return most;
  }

  /** Moment of the pulls about an edge of the floor, positive when it tips outward [N m]. */
  double overturning(int side, double half) {
    Vector3 out = outward(side);
    Point3 edge =
        new Point3(container.centreX(), container.centreY(), container.rim())
            .plus(out.times(half))
            .plus(new Vector3(0, 0, -container.size().depth()));
    Vector3 axis = new Vector3(0, 0, 1).cross(out);
    return pulls.stream()
        .mapToDouble(pull -> pull.at().minus(edge).cross(pull.force()).dot(axis))
        .sum();
  }

  /** Level direction from the middle to a side: both ends, then both long sides. */
  private Vector3 outward(int side) {
    double cos = Math.cos(container.turn());
    double sin = Math.sin(container.turn());
    Vector3 along = new Vector3(cos, -sin, 0);
    Vector3 across = new Vector3(sin, cos, 0);
    return switch (side) {
      case 0 -> along;
      case 1 -> along.times(-1);
      case 2 -> across;
      default -> across.times(-1);
    };
  }

  /** True if a point is over the floor of the container, or as near to it as some margin [m]. */
  public static boolean isOver(Container container, Point3 point, double margin) {
    double cos = Math.cos(container.turn());
    double sin = Math.sin(container.turn());
    double x = point.x() - container.centreX();
    double y = point.y() - container.centreY();
    return Math.abs(x * cos - y * sin) <= container.size().length() / 2 + margin
        && Math.abs(x * sin + y * cos) <= container.size().width() / 2 + margin;
  }
}
