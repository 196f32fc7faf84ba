// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import boughwright.modeller.geometry.Point3;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Parents, start points and joints of segments whose links are sound; no recursion. */
final class Layout {
  final List<Segment> segments;
  final Map<String, Integer> index = new HashMap<>();
  final List<List<Integer>> children = new ArrayList<>();

  /** Shape: one per segment; index of the parent or {@link Skeleton#NONE}. */
  final int[] parent;

  /** Shape: one per segment; indices with every parent before its children. */
  final int[] outward;

  /** Shape: one per segment; start of the axis [m, tree frame]. */
  final Point3[] start;

  /** Shape: one per segment. */
  final Joint[] joint;

  Layout(List<Segment> segments) {
    this.segments = segments;
    int count = segments.size();
    for (int i = 0; i < count; i++) {
      index.put(segments.get(i).id(), i);
      children.add(new ArrayList<>());
    }
    parent = new int[count];
    outward = new int[count];
    start = new Point3[count];
    joint = new Joint[count];
    int base = Skeleton.NONE;
    for (int i = 0; i < count; i++) {
      parent[i] = segments.get(i).parent().map(index::get).orElse(Skeleton.NONE);
      if (parent[i] == Skeleton.NONE) {
        base = i;
      } else {
        children.get(parent[i]).add(i);
      }
    }
    children.replaceAll(List::copyOf);
    if (base != Skeleton.NONE) {
      walk(base);
    }
  }

  private void walk(int base) {
    Deque<Integer> waiting = new ArrayDeque<>(List.of(base));
    int done = 0;
    while (!waiting.isEmpty()) {
      int i = waiting.remove();
      outward[done++] = i;
      Segment segment = segments.get(i);
      start[i] =
          parent[i] == Skeleton.NONE
              ? segment.start().orElseThrow()
              : point(parent[i], segment.along());
      if (parent[i] == Skeleton.NONE) {
        joint[i] = Joint.CONTINUES;
      }
      joinChildren(i);
      waiting.addAll(children.get(i));
    }
  }

  private void joinChildren(int i) {
    boolean first = true;
    for (int c : children.get(i)) {
      Segment child = segments.get(c);
      boolean alike = child.kind() == segments.get(i).kind() && child.along() == 1;
      joint[c] = child.joins().orElse(alike && first ? Joint.CONTINUES : Joint.UNION);
      first &= !alike;
    }
  }

  /** The point a fraction along the axis [m, tree frame]. */
  Point3 point(int i, double along) {
    return start[i].toward(segments.get(i).end(), along);
  }

  /** Length of the axis [m]. */
  double length(int i) {
    return start[i].distance(segments.get(i).end());
  }

  /** Diameter over bark a fraction along a segment [m]. */
  double caliper(int i, double along) {
    Segment segment = segments.get(i);
    return segment.caliperStart() + along * (segment.caliperEnd() - segment.caliperStart());
  }
}
