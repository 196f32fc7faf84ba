// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.tree.Features;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Segment;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** A segment while it is changed. Mutable, used by one edit. */
final class SegmentDraft {
  String id;
  Optional<String> parent;
  double along;
  Optional<Joint> joins;
  Kind kind;
  Optional<Point3> start;
  Point3 end;
  double caliperStart;
  double caliperEnd;
  OptionalDouble bark;
  Optional<Boolean> live;
  Features features;
  Map<String, Object> extras;

  /** How it is to join its parent, whatever the order of the file gives; null for that default. */
  Joint joint;

  /** Kept where nothing changes, so that a long history shares what is the same. */
  private final Segment from;

  SegmentDraft(Segment from) {
    this.from = from;
    id = from.id();
    parent = from.parent();
    along = from.along();
    joins = from.joins();
    kind = from.kind();
    start = from.start();
    end = from.end();
    caliperStart = from.caliperStart();
    caliperEnd = from.caliperEnd();
    bark = from.bark();
    live = from.live();
    features = from.features();
    extras = from.extras();
  }

  String subject() {
    return "segment " + Refusal.quoted(id);
  }

  /** Joins its parent so from now on, whatever the order of the file gives. */
  void joints(Joint wanted) {
    joins = Optional.empty();
    joint = wanted;
  }

  Segment build() {
    Segment built = changed();
    return built.equals(from) ? from : built;
  }

  private Segment changed() {
    return new Segment(
        id,
        parent,
        along + 0.0,
        joins,
        kind,
        start.map(SegmentDraft::plain),
        plain(end),
        caliperStart,
        caliperEnd,
        bark,
        live,
        features,
        extras);
  }

  /** A negative zero is written as 0, and would not be the same when it is read again. */
  static Point3 plain(Point3 point) {
    return new Point3(point.x() + 0.0, point.y() + 0.0, point.z() + 0.0);
  }
}
