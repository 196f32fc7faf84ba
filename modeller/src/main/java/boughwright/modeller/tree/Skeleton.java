// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A tree with its shape worked out: who sits on whom, where each segment starts, how it joins.
 * Segments are known by their index in file order. Immutable.
 */
public final class Skeleton {
  /** Stands for the parent of the segment that has none. */
  public static final int NONE = -1;

  private final Tree tree;
  private final Map<String, Integer> index = new HashMap<>();
  private final int[] parent;
  private final int[] outward;
  private final Point3[] start;
  private final Joint[] joint;
  private final List<List<Integer>> children = new ArrayList<>();

  /** Works out the shape of a tree. */
  public Skeleton(Tree tree) {
    this.tree = tree;
    int count = tree.segments().size();
    for (int i = 0; i < count; i++) {
      index.put(tree.segments().get(i).id(), i);
      children.add(new ArrayList<>());
    }
    parent = new int[count];
    outward = new int[count];
    start = new Point3[count];
    joint = new Joint[count];
    int base = NONE;
    for (int i = 0; i < count; i++) {
      parent[i] = tree.segments().get(i).parent().map(index::get).orElse(NONE);
      if (parent[i] == NONE) {
        base = i;
      } else {
        children.get(parent[i]).add(i);
      }
    }
    children.replaceAll(List::copyOf);
    if (base != NONE) {
      walk(base);
    }
  }

  private void walk(int base) {
    Deque<Integer> waiting = new ArrayDeque<>(List.of(base));
    int done = 0;
    while (!waiting.isEmpty()) {
      int i = waiting.remove();
      outward[done++] = i;
      Segment segment = tree.segments().get(i);
      start[i] =
          parent[i] == NONE ? segment.start().orElseThrow() : point(parent[i], segment.along());
      if (parent[i] == NONE) {
        joint[i] = Joint.CONTINUES;
      }
      joinChildren(i);
      waiting.addAll(children.get(i));
    }
  }

  private void joinChildren(int i) {
    boolean first = true;
    for (int c : children.get(i)) {
      Segment child = tree.segments().get(c);
      boolean alike = child.kind() == tree.segments().get(i).kind() && child.along() == 1;
      joint[c] = child.joins().orElse(alike && first ? Joint.CONTINUES : Joint.UNION);
      first &= !alike;
    }
  }

  public Tree tree() {
    return tree;
  }

  public int size() {
    return parent.length;
  }

  /**
   * The index of a segment.
   *
   * @throws IllegalArgumentException if no segment has that id
   */
  public int indexOf(String id) {
    Integer i = index.get(id);
    if (i == null) {
      throw new IllegalArgumentException("no segment \"" + id + "\"");
    }
    return i;
  }

  public boolean has(String id) {
    return index.containsKey(id);
  }

  public Segment segment(int i) {
    return tree.segments().get(i);
  }

  /** The index of the parent, or {@link #NONE}. */
  public int parent(int i) {
    return parent[i];
  }

  /** Indices of the segments that start on this one, in file order. */
  public List<Integer> children(int i) {
    return children.get(i);
  }

  /** The n-th segment counted outward from the base: every parent comes before its children. */
  public int outward(int n) {
    return outward[n];
  }

  public Joint joint(int i) {
    return joint[i];
  }

  /** Start point of the axis [m, tree frame]. */
  public Point3 start(int i) {
    return start[i];
  }

  /** End point of the axis [m, tree frame]. */
  public Point3 end(int i) {
    return segment(i).end();
  }

  /** Length of the axis [m]. */
  public double length(int i) {
    return start(i).distance(end(i));
  }

  /** Direction of the axis. */
  public Direction3 direction(int i) {
    return end(i).minus(start(i)).direction();
  }

  /** The point a fraction along the axis [m, tree frame]. */
  public Point3 point(int i, double along) {
    return start(i).toward(end(i), along);
  }
}
