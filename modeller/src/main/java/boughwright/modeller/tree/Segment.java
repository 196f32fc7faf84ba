// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import boughwright.modeller.geometry.Point3;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One straight piece of the tree as measured.
 *
 * @param id name within the tree
 * @param parent the segment it starts on; empty only for the trunk base
 * @param along where on the parent's axis it starts: fraction of the parent's length from the
 *     parent's start, 0 to 1 [1]
 * @param joins how it joins its parent; empty for the default by file order ({@link Skeleton})
 * @param kind trunk, branch, root, sacrifice or deadwood
 * @param start start point, given only where {@code parent} is empty [m, tree frame]
 * @param end end point [m, tree frame]
 * @param caliperStart diameter over bark at the start, or just outside the collar for a branch that
 *     joins by a union [m]
 * @param caliperEnd diameter over bark at the end [m]
 * @param bark thickness of one layer of bark; empty for the tree's [m]
 * @param live whether it carries live growth; empty when the person did not say
 * @param features what a person ticks because it weakens the wood
 * @param extras fields of the file that this version does not know, kept for saving
 */
public record Segment(
    String id,
    Optional<String> parent,
    double along,
    Optional<Joint> joins,
    Kind kind,
    Optional<Point3> start,
    Point3 end,
    double caliperStart,
    double caliperEnd,
    OptionalDouble bark,
    Optional<Boolean> live,
    Features features,
    Map<String, Object> extras) {
  public Segment {
    Objects.requireNonNull(id, "id");
    if (!(along >= 0 && along <= 1)) {
      throw new IllegalArgumentException("along is " + along + ", 0 to 1 is expected");
    }
    Objects.requireNonNull(joins, "joins");
    Objects.requireNonNull(kind, "kind");
    if (parent.isPresent() == start.isPresent()) {
      throw new IllegalArgumentException(
          "segment " + id + ": start is given exactly where there is no parent");
    }
    Objects.requireNonNull(end, "end");
    requirePositive(caliperStart, "caliperStart");
    requirePositive(caliperEnd, "caliperEnd");
    if (bark.isPresent() && !(bark.getAsDouble() >= 0)) {
      throw new IllegalArgumentException("bark is " + bark.getAsDouble() + ", 0 or more");
    }
    Objects.requireNonNull(live, "live");
    Objects.requireNonNull(features, "features");
    extras = Extras.copyOf(extras);
  }

  /** A segment of whole wood of which nothing more is said. */
  public Segment(
      String id,
      Optional<String> parent,
      double along,
      Optional<Joint> joins,
      Kind kind,
      Optional<Point3> start,
      Point3 end,
      double caliperStart,
      double caliperEnd,
      OptionalDouble bark,
      Optional<Boolean> live,
      Map<String, Object> extras) {
    this(
        id,
        parent,
        along,
        joins,
        kind,
        start,
        end,
        caliperStart,
        caliperEnd,
        bark,
        live,
        Features.NONE,
        extras);
  }

  private static void requirePositive(double value, String name) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(name + " is " + value + ", a positive number is expected");
    }
  }
}
