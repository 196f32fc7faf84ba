// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Anchor;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.AnchorKind;
import boughwright.modeller.tree.AnchorPoint;
import boughwright.modeller.tree.Container;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.trial.TreeStand;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Everything that lines can be tied to: never mid-air, never the limb that is bent. */
final class Anchorages {
  /** Places along a segment are about this far apart [m] (a choice). */
  private static final double APART = 0.04;

  /** Places along each side of the rim (a choice). */
  private static final int PER_SIDE = 4;

  private final TreeStand stand;
  private final Skeleton skeleton;
  private final Set<Integer> moved = new HashSet<>();
  private final List<AnchorPlace> found = new ArrayList<>();

  private Anchorages(TreeStand stand, LimbPath path) {
    this.stand = stand;
    skeleton = stand.skeleton();
    moved.addAll(path.segments());
    for (int n = 0; n < skeleton.size(); n++) {
      int i = skeleton.outward(n);
      int parent = skeleton.parent(i);
      boolean root = skeleton.segment(i).kind() == Kind.ROOT;
      if (parent != Skeleton.NONE && moved.contains(parent) && !root) {
        moved.add(i);
      }
    }
  }

  /**
   * The places of some sorts that are there.
   *
   * @param path the wood that is bent; what it carries is left out with it, but for roots
   */
  static List<AnchorPlace> of(TreeStand stand, LimbPath path, Set<AnchorSort> sorts) {
    Anchorages anchorages = new Anchorages(stand, path);
    for (int i = 0; i < anchorages.skeleton.size(); i++) {
      if (!stand.cutting().isGone(i)
          && !anchorages.moved.contains(i)
          && sorts.contains(anchorages.sort(i))
          && isLasting(anchorages.skeleton.segment(i).kind())) {
        anchorages.along(i);
      }
    }
    if (sorts.contains(AnchorSort.POINT)) {
      anchorages.skeleton.tree().setting().anchors().forEach(anchorages::point);
    }
    if (sorts.contains(AnchorSort.RIM)) {
      anchorages.skeleton.tree().setting().container().ifPresent(anchorages::rim);
    }
    return List.copyOf(anchorages.found);
  }

  /** Deadwood breaks without warning, and a sacrifice branch goes. */
  private static boolean isLasting(Kind kind) {
    return kind != Kind.DEADWOOD && kind != Kind.SACRIFICE;
  }

  private AnchorSort sort(int i) {
    Kind kind = skeleton.segment(i).kind();
    if (kind == Kind.ROOT) {
      return AnchorSort.ROOT;
    }
    int at = i;
    while (skeleton.parent(at) != Skeleton.NONE && skeleton.joint(at) == Joint.CONTINUES) {
      at = skeleton.parent(at);
    }
    return kind == Kind.TRUNK || skeleton.parent(at) == Skeleton.NONE
        ? AnchorSort.TRUNK
        : AnchorSort.BRANCH;
  }

  private void along(int i) {
    double left = stand.cutting().left(i);
    double from = skeleton.collar(i) / skeleton.length(i);
    double length = (left - from) * skeleton.length(i);
    int count = (int) Math.max(1, Math.round(length / APART));
    for (int n = 1; n <= count && length > 0; n++) {
      double along = Math.rint(1000 * (from + (left - from) * (n - 0.5) / count)) / 1000;
      Spot spot = new Spot(skeleton.segment(i).id(), Math.min(left, along));
      found.add(
          new AnchorPlace(
              sort(i),
              spot.segment(),
              new Anchor.OnTree(spot),
              skeleton.point(i, spot.along()),
              Optional.empty()));
    }
  }

  private void point(AnchorPoint point) {
    if (isFree(point.at())) {
      found.add(
          new AnchorPlace(
              AnchorSort.POINT,
              point.id(),
              new Anchor.Fixed(point.at()),
              point.at(),
              Optional.of(point.kind())));
    }
  }

  private void rim(Container container) {
    double cos = Math.cos(container.turn());
    double sin = Math.sin(container.turn());
    for (int n = 0; n < 4 * PER_SIDE; n++) {
      double part = 2.0 * (n % PER_SIDE) / PER_SIDE - 1;
      boolean across = n / PER_SIDE % 2 == 0;
      double sign = n / PER_SIDE < 2 ? 1 : -1;
      double u = (across ? sign * part : sign) * container.size().length() / 2;
      double v = (across ? -sign : sign * part) * container.size().width() / 2;
      Point3 at =
          new Point3(
              tidy(container.centreX() + u * cos + v * sin),
              tidy(container.centreY() - u * sin + v * cos),
              tidy(container.rim()));
      if (isFree(at)) {
        found.add(
            new AnchorPlace(
                AnchorSort.RIM, "rim", new Anchor.Fixed(at), at, Optional.of(AnchorKind.RIM)));
      }
    }
  }

  private static double tidy(double metres) {
    return Math.rint(metres * 1000) / 1000;
  }

  private boolean isFree(Point3 at) {
    for (int i = 0; i < skeleton.size(); i++) {
      if (!stand.cutting().isGone(i) && skeleton.encloses(i, at, stand.cutting().left(i))) {
        return false;
      }
    }
    return true;
  }
}
