// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.table;

import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Skeleton;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The segments of a tree in the order one follows it: a segment, the branches on it from its start
 * to its end with all they carry, then the segment that goes on from it.
 */
final class TreeRows {
  private final Skeleton skeleton;
  private final List<Row> rows = new ArrayList<>();
  private final Map<String, Integer> rowOf = new HashMap<>();

  /**
   * A row.
   *
   * @param segment index of the segment in the file
   * @param generation how many unions lie between it and the trunk base
   */
  record Row(int segment, int generation) {}

  TreeRows(Skeleton skeleton) {
    this.skeleton = skeleton;
    Deque<Row> waiting = new ArrayDeque<>();
    waiting.push(new Row(skeleton.outward(0), 0));
    while (!waiting.isEmpty()) {
      Row row = waiting.pop();
      rowOf.put(skeleton.segment(row.segment()).id(), rows.size());
      rows.add(row);
      for (int child : lastFirst(row.segment())) {
        boolean on = skeleton.joint(child) == Joint.CONTINUES;
        waiting.push(new Row(child, row.generation() + (on ? 0 : 1)));
      }
    }
  }

  private List<Integer> lastFirst(int segment) {
    List<Integer> children = new ArrayList<>(skeleton.children(segment));
    children.sort(
        Comparator.<Integer, Boolean>comparing(c -> skeleton.joint(c) == Joint.CONTINUES)
            .thenComparing(c -> skeleton.segment(c).along())
            .thenComparing(c -> c)
            .reversed());
    return children;
  }

  Skeleton skeleton() {
    return skeleton;
  }

  int size() {
    return rows.size();
  }

  Row get(int row) {
    return rows.get(row);
  }

  String id(int row) {
    return skeleton.segment(rows.get(row).segment()).id();
  }

  /** The row of a segment, or -1. */
  int rowOf(String id) {
    return rowOf.getOrDefault(id, -1);
  }

  /** Whether the same segments stand in the same rows. */
  boolean hasRowsOf(TreeRows other) {
    if (size() != other.size()) {
      return false;
    }
    for (int row = 0; row < size(); row++) {
      if (!id(row).equals(other.id(row))) {
        return false;
      }
    }
    return true;
  }
}
