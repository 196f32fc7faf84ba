// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.tree.Condition;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.PullTest;
import boughwright.modeller.tree.Response;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.TreeWood;
import boughwright.modeller.tree.Unions;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** An upright trunk with one level branch of two segments that are one cone, no bark. */
final class PullTrees {
  static final double MOE = 6e9;

  /** Height of the trunk, with the branch at its end [m]. */
  static final double HEIGHT = 0.2;

  static final double TRUNK_RADIUS = 0.02;

  /** Length of the branch from the trunk's axis, where it bends from [m]. */
  static final double LENGTH = 0.3;

  static final double THICK = 0.008;
  static final double THIN = 0.005;

  /** Straight-line elastic wood of one's own. */
  static final TreeWood ELASTIC =
      new TreeWood.Own(
          "test wood", MOE, OptionalDouble.empty(), Optional.of(Response.ELASTIC), Map.of());

  private PullTrees() {}

  static Tree of(TreeWood wood, PullTest... tests) {
    double middle = THICK + THIN;
    return new Tree(
        "pulled",
        wood,
        Optional.empty(),
        OptionalDouble.of(0),
        Unions.AXIS,
        List.of(
            segment("t", Kind.TRUNK, new Point3(0, 0, HEIGHT), TRUNK_RADIUS, TRUNK_RADIUS),
            segment("b1", Kind.BRANCH, new Point3(LENGTH / 2, 0, HEIGHT), THICK, middle / 2),
            segment("b2", Kind.BRANCH, new Point3(LENGTH, 0, HEIGHT), middle / 2, THIN)),
        List.of(),
        List.of(),
        OptionalDouble.empty(),
        Condition.UNKNOWN,
        List.of(tests));
  }

  private static Segment segment(String id, Kind kind, Point3 end, double start, double thin) {
    Optional<String> parent =
        switch (id) {
          case "b1" -> Optional.of("t");
          case "b2" -> Optional.of("b1");
          default -> Optional.empty();
        };
    return new Segment(
        id,
        parent,
        1,
        Optional.empty(),
        kind,
        parent.isPresent() ? Optional.empty() : Optional.of(Point3.ORIGIN),
        end,
        2 * start,
        2 * thin,
        OptionalDouble.empty(),
        Optional.empty(),
        Map.of());
  }

  /** A pull straight down at the tip of the branch. */
  static PullTest down(String id, PullTest.Reading... readings) {
    return new PullTest(
        id, "b2", 1, Direction3.UP.opposite(), List.of(readings), Optional.empty(), Map.of());
  }

  static PullTest.Reading reading(double force, double moved) {
    return new PullTest.Reading(force, moved, 0, 0.01, 0.0003);
  }
}
