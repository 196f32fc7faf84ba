// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.NameRules;
import boughwright.modeller.tree.Pad;
import boughwright.modeller.tree.PullTest;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.WoodOverride;
import boughwright.modeller.tree.Wound;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A document while its segments are changed; judged as a whole at the end. Mutable. */
final class Draft {
  final Document before;

  /** Segments in file order. */
  final List<SegmentDraft> segments = new ArrayList<>();

  List<Wound> wounds;
  List<WoodOverride> overrides;
  List<PullTest> pullTests;
  List<Pad> pads;
  List<Plan> plans;

  private final Map<String, SegmentDraft> byId = new HashMap<>();

  /** A step of an edit. */
  @FunctionalInterface
  interface Step {
    void on(Draft draft) throws InputException;
  }

  private Draft(Document before) {
    this.before = before;
    Skeleton skeleton = new Skeleton(before.tree());
    for (int i = 0; i < skeleton.size(); i++) {
      SegmentDraft segment = new SegmentDraft(skeleton.segment(i));
      segment.joint = skeleton.joint(i);
      segments.add(segment);
      byId.put(segment.id, segment);
    }
    wounds = before.tree().wounds();
    overrides = before.tree().overrides();
    pullTests = before.tree().pullTests();
    pads = before.tree().foliage().pads();
    plans = before.plans();
  }

  /** An edit that works on the segments of a document. */
  static Edit edit(String name, Step step) {
    return new Edit(
        name,
        document -> {
          Draft draft = new Draft(document);
          step.on(draft);
          return new Finish(draft).document();
        });
  }

  boolean has(String id) {
    return byId.containsKey(id);
  }

  Set<String> ids() {
    return byId.keySet();
  }

  /**
   * A segment.
   *
   * @throws InputException if no segment has that id
   */
  SegmentDraft get(String id) throws InputException {
    SegmentDraft segment = byId.get(id);
    if (segment == null) {
      throw Refusal.unknown("segment", id, byId.keySet());
    }
    return segment;
  }

  /** Puts a new segment in at a place of the file order. */
  void insert(int at, SegmentDraft segment) throws InputException {
    requireFree(segment.id);
    segments.add(at, segment);
    byId.put(segment.id, segment);
  }

  /**
   * Gives segments other names.
   *
   * @param names new name by old name
   */
  void rename(Map<String, String> names) throws InputException {
    List<SegmentDraft> renamed = new ArrayList<>();
    for (String old : names.keySet()) {
      renamed.add(get(old));
    }
    byId.keySet().removeAll(names.keySet());
    for (SegmentDraft segment : renamed) {
      String now = names.get(segment.id);
      requireFree(now);
      byId.put(now, segment);
    }
    for (SegmentDraft segment : segments) {
      segment.parent = segment.parent.map(id -> names.getOrDefault(id, id));
      segment.id = names.getOrDefault(segment.id, segment.id);
    }
  }

  private void requireFree(String id) throws InputException {
    Optional<String> fault = NameRules.faultOfId(id);
    if (fault.isPresent()) {
      throw Refusal.of(
          "segment", "bad-id", "the name " + fault.get(), "Give a short name such as b3");
    }
    if (has(id)) {
      throw Refusal.of(
          "segment " + Refusal.quoted(id),
          "duplicate-id",
          "another segment is called " + Refusal.quoted(id),
          "Give a name that is free, such as " + NextId.free(id, byId.keySet()));
    }
  }

  void remove(Set<String> ids) {
    segments.removeIf(segment -> ids.contains(segment.id));
    byId.keySet().removeAll(ids);
  }

  /** A segment and all that grows on it, in file order. */
  List<SegmentDraft> branch(SegmentDraft base) {
    Map<String, List<SegmentDraft>> children = new HashMap<>();
    for (SegmentDraft segment : segments) {
      segment.parent.ifPresent(
          id -> children.computeIfAbsent(id, key -> new ArrayList<>()).add(segment));
    }
    Set<String> ids = new HashSet<>();
    Deque<SegmentDraft> waiting = new ArrayDeque<>(List.of(base));
    while (!waiting.isEmpty()) {
      SegmentDraft next = waiting.remove();
      if (ids.add(next.id)) {
        waiting.addAll(children.getOrDefault(next.id, List.of()));
      }
    }
    return segments.stream().filter(segment -> ids.contains(segment.id)).toList();
  }

  /** Segments that start on a segment, in file order. */
  List<SegmentDraft> children(SegmentDraft parent) {
    return segments.stream()
        .filter(one -> one.parent.isPresent() && one.parent.get().equals(parent.id))
        .toList();
  }

  /** The place in the file order after a segment and all that grows on it. */
  int after(SegmentDraft base) {
    List<SegmentDraft> branch = branch(base);
    return segments.indexOf(branch.get(branch.size() - 1)) + 1;
  }

  /** Where a segment starts [m]. */
  Point3 start(SegmentDraft segment) {
    Deque<SegmentDraft> way = new ArrayDeque<>();
    SegmentDraft at = segment;
    while (at.parent.isPresent()) {
      way.push(at);
      at = byId.get(at.parent.get());
    }
    Point3 start = at.start.orElseThrow();
    while (!way.isEmpty()) {
      SegmentDraft next = way.pop();
      start = start.toward(at.end, next.along);
      at = next;
    }
    return start;
  }

  /** The point a fraction along a segment [m]. */
  Point3 point(SegmentDraft segment, double along) {
    return start(segment).toward(segment.end, along);
  }

  /** Moves a segment and all that grows on it as one. */
  void shift(SegmentDraft base, Vector3 step) {
    for (SegmentDraft segment : branch(base)) {
      segment.end = segment.end.plus(step);
      segment.start = segment.start.map(start -> start.plus(step));
    }
  }

  List<Segment> built() {
    return segments.stream().map(SegmentDraft::build).toList();
  }
}
