// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.ground;

import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.design.shape.Frustum;
import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Looks at the root base of one tree at any planting angle. */
final class RootBaseMaker {
  private final double trunk;
  private final Point3 foot;
  private final List<Root> roots;
  private final List<Level> now;
  private final Optional<RootPlane> plane;
  private final double gap;

  /** For a trunk base of a diameter [m] and a middle [tree frame], and all roots of the tree. */
  RootBaseMaker(double trunk, Point3 foot, List<Root> all) {
    this.trunk = trunk;
    this.foot = foot;
    roots = all.stream().filter(root -> !root.tap()).toList();
    Stand measured = new Stand(Rotation.NONE, foot);
    now = roots.stream().map(root -> measured.level(root.pieces().get(0).wood())).toList();
    plane = RootPlane.of(roots);
    gap = widestGap();
  }

  private double widestGap() {
    double[] azimuths =
        roots.stream()
            .map(root -> root.start().minus(foot))
            .mapToDouble(out -> Math.atan2(out.x(), out.y()))
            .sorted()
            .toArray();
    double widest = 0;
    for (int n = 0; n < azimuths.length; n++) {
      double next = n + 1 < azimuths.length ? azimuths[n + 1] : azimuths[0] + 2 * Math.PI;
      widest = Math.max(widest, next - azimuths[n]);
    }
    return widest;
  }

  Optional<RootPlane> plane() {
    return plane;
  }

  /** How many roots count. */
  int count() {
    return roots.size();
  }

  /** The root base at a pose; empty without roots. */
  Optional<RootBase> at(FrontPose pose) {
    if (roots.isEmpty()) {
      return Optional.empty();
    }
    Rotation toViewer = pose.toViewer();
    Stand stand = new Stand(toViewer, foot);
    List<RootLevel> levels = new ArrayList<>();
    for (int n = 0; n < roots.size(); n++) {
      levels.add(level(roots.get(n), now.get(n), stand));
    }
    Optional<Double> off = plane.map(p -> toViewer.turn(p.normal()).angleTo(Direction3.UP));
    RootBase.Extent extent = new RootBase.Extent(spread(levels), spreadSeen(levels), gap);
    return Optional.of(new RootBase(trunk, levels, plane, off, extent));
  }

  private static RootLevel level(Root root, Level now, Stand stand) {
    List<Point3> line = new ArrayList<>();
    line.add(stand.at(root.start()));
    for (RootPiece piece : root.pieces().subList(0, root.main())) {
      line.add(stand.at(piece.wood().end()));
    }
    Level then = stand.level(root.pieces().get(0).wood());
    return new RootLevel(root, now, then, line, showsTo(root, line, stand));
  }

  private static Point3 showsTo(Root root, List<Point3> line, Stand stand) {
    for (int n = 0; n < root.main(); n++) {
      Frustum wood = root.pieces().get(n).wood();
      double lift = stand.lift(wood);
      double first = line.get(n).z() + lift * wood.startRadius();
      double last = line.get(n + 1).z() + lift * wood.endRadius();
      if (first < 0) {
        return line.get(n);
      }
      if (last < 0) {
        return line.get(n).toward(line.get(n + 1), first / (first - last));
      }
    }
    return line.get(line.size() - 1);
  }

  private double spread(List<RootLevel> levels) {
    double widest = trunk;
    for (RootLevel one : levels) {
      widest = Math.max(widest, trunk / 2 + level(one.showsTo()));
      for (RootLevel other : levels) {
        widest = Math.max(widest, level(one.showsTo(), other.showsTo()));
      }
    }
    return widest;
  }

  private static double level(Point3 point) {
    return Math.hypot(point.x(), point.y());
  }

  private static double level(Point3 one, Point3 other) {
    return Math.hypot(one.x() - other.x(), one.y() - other.y());
  }

  private double spreadSeen(List<RootLevel> levels) {
    double left = -trunk / 2;
    double right = trunk / 2;
    for (RootLevel level : levels) {
      left = Math.min(left, level.showsTo().x());
      right = Math.max(right, level.showsTo().x());
    }
    return right - left;
  }
}
