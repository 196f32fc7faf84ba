// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.shape;

import boughwright.modeller.plan.Cutting;
import boughwright.modeller.tree.Skeleton;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The wood that the cuts leave, as tapered pieces and as limbs. Immutable.
 *
 * <p>A limb is a chain of segments that continue each other from end to start.
 */
public final class WoodLeft {
  private final Cutting cutting;
  private final List<Frustum> pieces;
  private final List<Limb> limbs;
  private final int[] limbOf;

  /** Looks at what cuts leave. */
  public WoodLeft(Cutting cutting) {
    this.cutting = cutting;
    Skeleton skeleton = cutting.skeleton();
    pieces =
        IntStream.range(0, skeleton.size())
            .filter(i -> !cutting.isGone(i))
            .mapToObj(this::piece)
            .toList();
    limbOf = new int[skeleton.size()];
    limbs = List.copyOf(Limb.all(cutting, limbOf));
  }

  /** The whole tree, uncut. */
  public WoodLeft(Skeleton skeleton) {
    this(new Cutting(skeleton, List.of()));
  }

  private Frustum piece(int i) {
    Skeleton skeleton = skeleton();
    double left = cutting.left(i);
    return new Frustum(
        i,
        skeleton.start(i),
        skeleton.point(i, left),
        skeleton.caliper(i, 0) / 2,
        skeleton.caliper(i, left) / 2);
  }

  public Skeleton skeleton() {
    return cutting.skeleton();
  }

  public Cutting cutting() {
    return cutting;
  }

  /** One piece for each segment of which something is left, in file order. */
  public List<Frustum> pieces() {
    return pieces;
  }

  /** The faces of its cuts. */
  public List<CutFace> faces() {
    return CutFace.all(cutting);
  }

  /** All limbs of which something is left, each after the limb it sits on. */
  public List<Limb> limbs() {
    return limbs;
  }

  /**
   * The limb of a segment.
   *
   * @throws IllegalArgumentException if nothing is left of it
   */
  public Limb limbOf(int segment) {
    if (cutting.isGone(segment)) {
      throw new IllegalArgumentException("nothing is left of segment " + segment);
    }
    return limbs.get(limbOf[segment]);
  }

  /** The limbs that start on a limb, in file order. */
  public List<Limb> limbsOn(Limb limb) {
    List<Limb> out = new ArrayList<>();
    for (Limb other : limbs) {
      int parent = skeleton().parent(other.first());
      if (parent != Skeleton.NONE && limbs.get(limbOf[parent]).equals(limb)) {
        out.add(other);
      }
    }
    return out;
  }
}
