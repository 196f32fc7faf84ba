// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import boughwright.modeller.geometry.Point3;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Small trees for tests, in metres. */
public final class Sticks {
  private Sticks() {}

  /** An upright trunk of 100 mm from the origin. */
  public static Segment trunk(String id) {
    return new Segment(
        id,
        Optional.empty(),
        1,
        Optional.empty(),
        Kind.TRUNK,
        Optional.of(Point3.ORIGIN),
        new Point3(0, 0, 0.1),
        0.04,
        0.03,
        OptionalDouble.empty(),
        Optional.empty(),
        Map.of());
  }

  /** A segment of one caliper that starts a fraction along its parent. */
  public static Segment on(String parent, double along, String id, Kind kind, Point3 end) {
    return new Segment(
        id,
        Optional.of(parent),
        along,
        Optional.empty(),
        kind,
        Optional.empty(),
        end,
        0.01,
        0.01,
        OptionalDouble.empty(),
        Optional.empty(),
        Map.of());
  }

  public static Tree tree(Segment... segments) {
    return new TreeDraft("test", new TreeWood.OfSpecies("unknown"), List.of(segments)).build();
  }
}
