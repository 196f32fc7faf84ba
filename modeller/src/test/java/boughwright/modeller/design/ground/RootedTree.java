// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.ground;

import boughwright.modeller.design.shape.WoodLeft;
import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.tree.Container;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.TreeDraft;
import boughwright.modeller.tree.TreeWood;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Builds trees with planted roots for tests. */
final class RootedTree {
  private final List<Segment> segments = new ArrayList<>();

  /** A trunk of even thickness, upright, 0.5 m high. */
  static RootedTree cylinder(double caliper) {
    return new RootedTree().trunk(new Point3(0, 0, 0.5), caliper, caliper);
  }

  RootedTree trunk(Point3 end, double caliperStart, double caliperEnd) {
    segments.add(
        segment("t", Optional.empty(), Kind.TRUNK, end, new double[] {caliperStart, caliperEnd}));
    return this;
  }

  /** A root from the trunk base along a direction. */
  RootedTree root(String id, Direction3 way, double length, double... calipers) {
    Point3 end = Point3.ORIGIN.plus(way.times(length));
    return piece(id, "t", 0, end, calipers);
  }

  /** A piece of root on another piece. */
  RootedTree piece(String id, String parent, double along, Point3 end, double... calipers) {
    segments.add(
        new Segment(
            id,
            Optional.of(parent),
            along,
            Optional.empty(),
            Kind.ROOT,
            Optional.empty(),
            end,
            calipers[0],
            calipers[1],
            OptionalDouble.empty(),
            Optional.empty(),
            Map.of()));
    return this;
  }

  private static Segment segment(
      String id, Optional<String> parent, Kind kind, Point3 end, double[] calipers) {
    return new Segment(
        id,
        parent,
        1,
        Optional.empty(),
        kind,
        parent.isEmpty() ? Optional.of(Point3.ORIGIN) : Optional.empty(),
        end,
        calipers[0],
        calipers[1],
        OptionalDouble.empty(),
        Optional.empty(),
        Map.of());
  }

  WoodLeft wood() {
    return new WoodLeft(new Skeleton(tree()));
  }

  Tree tree() {
    return new TreeDraft("tree", new TreeWood.OfSpecies("unknown"), segments).build();
  }

  /** All of it turned about the origin. */
  static WoodLeft turned(WoodLeft wood, Rotation turn) {
    Tree tree = wood.skeleton().tree();
    List<Segment> out = new ArrayList<>();
    for (Segment old : tree.segments()) {
      out.add(
          new Segment(
              old.id(),
              old.parent(),
              old.along(),
              old.joins(),
              old.kind(),
              old.start().map(start -> turned(start, turn)),
              turned(old.end(), turn),
              old.caliperStart(),
              old.caliperEnd(),
              old.bark(),
              old.live(),
              old.extras()));
    }
    return new WoodLeft(new Skeleton(new TreeDraft(tree).segments(out).build()));
  }

  static Point3 turned(Point3 point, Rotation turn) {
    return Point3.ORIGIN.plus(turn.turn(point.minus(Point3.ORIGIN)));
  }

  /** A container with its middle under the trunk, its length to the right. */
  static Container container(double length, double width, double depth) {
    return new Container(
        new Container.Size(length, width, depth),
        0,
        0,
        0,
        0,
        OptionalDouble.empty(),
        false,
        Map.of());
  }
}
