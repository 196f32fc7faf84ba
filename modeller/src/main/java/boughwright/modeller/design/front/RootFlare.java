// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import boughwright.modeller.design.front.Parts.Role;
import boughwright.modeller.design.shape.Frustum;
import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The root base: the roots as far as they show above the soil line. Immutable. */
final class RootFlare {
  /** Shape: four per place; the axis of a root from the trunk base, and its radius there [m]. */
  private final double[] places;

  private final double trunkRadius;

  RootFlare(Parts parts, double baseCaliper) {
    trunkRadius = baseCaliper / 2;
    List<double[]> found = new ArrayList<>();
    for (int p = 0; p < parts.count(); p++) {
      if (parts.roles.get(p) == Role.ROOT) {
        Frustum root = parts.pieces.get(p);
        double shown = shown(root);
        if (shown > 0) {
          add(found, root, 0, parts.base);
          add(found, root, shown, parts.base);
        }
      }
    }
    places = found.stream().flatMapToDouble(Arrays::stream).toArray();
  }

  private static void add(List<double[]> found, Frustum root, double along, Point3 base) {
    Vector3 at = root.start().toward(root.end(), along).minus(base);
    double radius = root.startRadius() + along * (root.endRadius() - root.startRadius());
    found.add(new double[] {at.x(), at.y(), at.z(), radius});
  }

  /** How far along a root its upper side stays above the soil line, 0 to 1 [1]. */
  private static double shown(Frustum root) {
    Direction3 axis = root.direction();
    double level = Math.sqrt(Math.max(0, 1 - axis.z() * axis.z()));
    double start = root.start().z() + root.startRadius() * level;
    double end = root.end().z() + root.endRadius() * level;
    if (start <= 0) {
      return 0;
    }
    return end >= 0 ? 1 : start / (start - end);
  }

  boolean isEmpty() {
    return places.length == 0;
  }

  /** Width of trunk base and roots across the line of sight, over the caliper of the base [1]. */
  double width(Direction3 right) {
    double most = trunkRadius;
    double least = -trunkRadius;
    for (int k = 0; k < places.length; k += 4) {
      double x = places[k] * right.x() + places[k + 1] * right.y() + places[k + 2] * right.z();
      most = Math.max(most, x + places[k + 3]);
      least = Math.min(least, x - places[k + 3]);
    }
    return (most - least) / (2 * trunkRadius);
  }
}
