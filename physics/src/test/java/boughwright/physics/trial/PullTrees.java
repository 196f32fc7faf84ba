// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.PullTest;
import boughwright.modeller.tree.Response;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.TreeDraft;
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
    double middle = (THICK + THIN) / 2;
    return tree(
        wood,
        tests,
        trunk(),
        segment("b1", Kind.BRANCH, new Point3(LENGTH / 2, 0, HEIGHT), THICK, middle),
        segment("b2", Kind.BRANCH, new Point3(LENGTH, 0, HEIGHT), middle, THIN));
  }

  /** The same with a branch of one segment, b1. */
  static Tree ofOnePiece(TreeWood wood, PullTest... tests) {
    Point3 tip = new Point3(LENGTH, 0, HEIGHT);
    return tree(wood, tests, trunk(), segment("b1", Kind.BRANCH, tip, THICK, THIN));
  }

  /** The same on a trunk no thicker than the branch. */
  static Tree onThinTrunk(TreeWood wood, PullTest... tests) {
    double middle = (THICK + THIN) / 2;
    return tree(
        wood,
        tests,
        segment("t", Kind.TRUNK, new Point3(0, 0, HEIGHT), THICK, THICK),
        segment("b1", Kind.BRANCH, new Point3(LENGTH / 2, 0, HEIGHT), THICK, middle),
        segment("b2", Kind.BRANCH, new Point3(LENGTH, 0, HEIGHT), middle, THIN));
  }

  private static Segment trunk() {
    return segment("t", Kind.TRUNK, new Point3(0, 0, HEIGHT), TRUNK_RADIUS, TRUNK_RADIUS);
  }

  private static Tree tree(TreeWood wood, PullTest[] tests, Segment... segments) {
    return new TreeDraft("pulled", wood, List.of(segments))
        .bark(OptionalDouble.of(0))
        .unions(Unions.AXIS)
        .pullTests(List.of(tests))
        .build();
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

  /** A pull straight down at the tip of the branch of two segments. */
  static PullTest down(String id, PullTest.Reading... readings) {
    return down(id, "b2", readings);
  }

  /** A pull straight down at the end of a segment. */
  static PullTest down(String id, String segment, PullTest.Reading... readings) {
    return new PullTest(
        id, segment, 1, Direction3.UP.opposite(), List.of(readings), Optional.empty(), Map.of());
  }

  /** A pull along the branch. */
  static PullTest along(String id) {
    return pull(id, 1, Direction3.of(1, 0, 0));
  }

  /** A pull where the branch starts. */
  static PullTest atStart(String id) {
    return pull(id, 0, Direction3.UP);
  }

  private static PullTest pull(String id, double along, Direction3 direction) {
    return new PullTest(
        id, "b1", along, direction, List.of(reading(1, 0.001)), Optional.empty(), Map.of());
  }

  static PullTest.Reading reading(double force, double moved) {
    return new PullTest.Reading(force, moved, 0, 0.01, 0.0003);
  }
}
