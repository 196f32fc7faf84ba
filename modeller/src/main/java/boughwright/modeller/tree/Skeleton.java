// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import java.util.List;

/**
 * A tree with its shape worked out: who sits on whom, where each segment starts, how it joins.
 * Segments are known by their index in file order. Immutable.
 */
public final class Skeleton {
  /** Stands for the parent of the segment that has none. */
  public static final int NONE = -1;

  private final Tree tree;
  private final Layout layout;
  private final double[] collar;

  /** Works out the shape of a tree. */
  public Skeleton(Tree tree) {
    this.tree = tree;
    this.layout = new Layout(tree.segments());
    collar = new double[layout.segments.size()];
    for (int i = 0; i < collar.length; i++) {
      collar[i] = Collar.depth(this, i);
    }
  }

  public Tree tree() {
    return tree;
  }

  public int size() {
    return layout.parent.length;
  }

  /**
   * The index of a segment.
   *
   * @throws IllegalArgumentException if no segment has that id
   */
  public int indexOf(String id) {
    Integer i = layout.index.get(id);
    if (i == null) {
      throw new IllegalArgumentException("no segment \"" + id + "\"");
    }
    return i;
  }

  public boolean has(String id) {
    return layout.index.containsKey(id);
  }

  public Segment segment(int i) {
    return tree.segments().get(i);
  }

  /** The index of the parent, or {@link #NONE}. */
  public int parent(int i) {
    return layout.parent[i];
  }

  /** Indices of the segments that start on this one, in file order. */
  public List<Integer> children(int i) {
    return layout.children.get(i);
  }

  /** The n-th segment counted outward from the base: every parent comes before its children. */
  public int outward(int n) {
    return layout.outward[n];
  }

  public Joint joint(int i) {
    return layout.joint[i];
  }

  /** Start point of the axis [m, tree frame]. */
  public Point3 start(int i) {
    return layout.start[i];
  }

  /** End point of the axis [m, tree frame]. */
  public Point3 end(int i) {
    return segment(i).end();
  }

  /** Length of the axis [m]. */
  public double length(int i) {
    return layout.length(i);
  }

  /** Direction of the axis. */
  public Direction3 direction(int i) {
    return end(i).minus(start(i)).direction();
  }

  /** The point a fraction along the axis [m, tree frame]. */
  public Point3 point(int i, double along) {
    return layout.point(i, along);
  }

  /**
   * Distance along a branch from its parent's axis to its parent's bark, where it starts to bend; 0
   * where the same shoot goes on, or where the tree's unions bend from the axis [m].
   */
  public double collar(int i) {
    return collar[i];
  }

  /**
   * Diameter over bark a fraction along a segment [m]. A branch has its start caliper as far as its
   * collar, where that is read.
   */
  public double caliper(int i, double along) {
    Segment segment = segment(i);
    double from = Math.min(collar[i] / length(i), 0.999);
    double part = Math.max(0, (along - from) / (1 - from));
    return segment.caliperStart() + part * (segment.caliperEnd() - segment.caliperStart());
  }

  /**
   * True if a point is inside the bark of a segment.
   *
   * @param i the segment
   * @param point where [m, tree frame]
   * @param left how much of the segment there is, as a fraction from its start [1]
   */
  public boolean encloses(int i, Point3 point, double left) {
    Nearness near = Nearness.of(layout, i, point);
    return near.inside() && near.along() <= left;
  }

  /**
   * The direction from the axis of a segment at rest to a place round it.
   *
   * <p>Counted clockwise looking from the segment's start to its end, from its upper side; on a
   * segment within 10 degrees of vertical from the side toward azimuth 0.
   *
   * @param round the place round the segment [rad]
   */
  public Direction3 roundDirection(int i, double round) {
    return RoundAngle.direction(direction(i), round);
  }

  /** The point on the bark a fraction along a segment at a place round it [m, tree frame]. */
  public Point3 barkPoint(int i, double along, double round) {
    return point(i, along).plus(roundDirection(i, round).times(caliper(i, along) / 2));
  }
}
