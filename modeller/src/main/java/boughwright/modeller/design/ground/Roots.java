// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.ground;

import boughwright.modeller.design.shape.Frustum;
import boughwright.modeller.design.shape.Limb;
import boughwright.modeller.design.shape.WoodLeft;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Skeleton;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds the roots of a tree. */
final class Roots {
  /**
   * A root that goes so many trunk radii down before it is out of the trunk's line is a tap root
   * [1]. Our choice: as deep as a collar may be.
   */
  private static final double TAP = 2;

  private final WoodLeft wood;
  private final Skeleton skeleton;
  private final Map<Integer, Frustum> left = new HashMap<>();

  private Roots(WoodLeft wood) {
    this.wood = wood;
    skeleton = wood.skeleton();
    wood.pieces().forEach(piece -> left.put(piece.segment(), piece));
  }

  /** All roots that leave the trunk, in file order; a root that ends inside it is none. */
  static List<Root> of(WoodLeft wood) {
    Roots roots = new Roots(wood);
    List<Root> out = new ArrayList<>();
    for (Limb limb : wood.limbs()) {
      int parent = skeletonParent(wood, limb);
      if (limb.kind(wood.skeleton()) == Kind.ROOT
          && parent != Skeleton.NONE
          && wood.skeleton().segment(parent).kind() != Kind.ROOT) {
        roots.root(limb, parent).ifPresent(out::add);
      }
    }
    return List.copyOf(out);
  }

  private static int skeletonParent(WoodLeft wood, Limb limb) {
    return wood.skeleton().parent(limb.first());
  }

  private Optional<Root> root(Limb limb, int parent) {
    Leaving leaving = new Leaving(left.get(parent));
    List<RootPiece> pieces = new ArrayList<>();
    Map<Integer, Integer> places = new HashMap<>();
    for (int i : limb.segments()) {
      Frustum whole = left.get(i);
      double from = 0;
      if (pieces.isEmpty()) {
        from = leaving.fraction(whole.start(), whole.end());
        if (!(from < 1)) {
          continue;
        }
      }
      places.put(i, pieces.size());
      pieces.add(piece(whole, from, pieces.size() - 1, 1));
    }
    if (pieces.isEmpty()) {
      return Optional.empty();
    }
    int main = pieces.size();
    addSide(limb, places, pieces);
    String id = skeleton.segment(limb.first()).id();
    boolean tap = isTap(pieces.get(0).wood().start(), left.get(parent), limb);
    return Optional.of(new Root(limb.first(), id, pieces, main, tap));
  }

  private boolean isTap(Point3 leaves, Frustum trunk, Limb limb) {
    Point3 starts = skeleton.start(limb.first());
    double down = -leaves.minus(starts).dot(trunk.direction().vector());
    return down > TAP * trunk.startRadius();
  }

  private RootPiece piece(Frustum whole, double from, int on, double along) {
    double to = wood.cutting().left(whole.segment());
    double startRadius = skeleton.caliper(whole.segment(), from * to) / 2;
    Frustum outside =
        new Frustum(
            whole.segment(),
            whole.start().toward(whole.end(), from),
            whole.end(),
            startRadius,
            whole.endRadius());
    return new RootPiece(skeleton.segment(whole.segment()).id(), outside, from * to, to, on, along);
  }

  private void addSide(Limb limb, Map<Integer, Integer> places, List<RootPiece> pieces) {
    for (Limb side : wood.limbsOn(limb)) {
      if (side.kind(skeleton) != Kind.ROOT) {
        continue;
      }
      int parent = skeleton.parent(side.first());
      Integer on = places.get(parent);
      if (on == null) {
        continue;
      }
      RootPiece carrier = pieces.get(on);
      double at = skeleton.segment(side.first()).along();
      double along = Math.max(0, (at - carrier.from()) / (carrier.to() - carrier.from()));
      for (int i : side.segments()) {
        places.put(i, pieces.size());
        pieces.add(piece(left.get(i), 0, on, along));
        on = pieces.size() - 1;
        along = 1;
      }
      addSide(side, places, pieces);
    }
  }
}
