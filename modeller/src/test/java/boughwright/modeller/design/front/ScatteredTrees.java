// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import boughwright.modeller.design.shape.TrunkLine;
import boughwright.modeller.design.shape.WoodLeft;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.TreeWood;
import boughwright.modeller.tree.Unions;
import boughwright.modeller.tree.Wound;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;

/** Trees thrown together at random, each the same every time it is asked for. */
final class ScatteredTrees {
  private final Random random;
  private final List<Segment> segments = new ArrayList<>();
  private final List<Wound> wounds = new ArrayList<>();

  private ScatteredTrees(long seed) {
    random = new Random(seed);
  }

  static Tree tree(long seed) {
    return new ScatteredTrees(seed).grow();
  }

  static FrontSubject subject(Tree tree) {
    WoodLeft wood = new WoodLeft(new Skeleton(tree));
    return FrontSubject.bare(wood, TrunkLine.of(wood, Optional.empty()));
  }

  private double from(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  private Tree grow() {
    int trunk = 5 + random.nextInt(5);
    Point3 at = Point3.ORIGIN;
    double caliper = from(0.04, 0.07);
    List<Point3> nodes = new ArrayList<>();
    for (int n = 0; n < trunk; n++) {
      Point3 end = at.plus(new Vector3(from(-0.03, 0.03), from(-0.03, 0.03), from(0.03, 0.06)));
      double next = caliper * from(0.75, 0.95);
      add("t" + n, n == 0 ? null : "t" + (n - 1), Kind.TRUNK, 1, end, caliper, next);
      nodes.add(end);
      at = end;
      caliper = next;
    }
    for (int n = 0; n < 6 + random.nextInt(8); n++) {
      branch(n, random.nextInt(trunk), nodes);
    }
    for (int n = 0; n < 5 + random.nextInt(4); n++) {
      double round = from(0, 2 * Math.PI);
      double reach = from(0.05, 0.12);
      Point3 end = new Point3(reach * Math.cos(round), reach * Math.sin(round), from(-0.03, 0));
      add("r" + n, "t0", Kind.ROOT, 0, end, from(0.012, 0.026), 0.008);
    }
    for (int n = 0; n < random.nextInt(4); n++) {
      wounds.add(
          new Wound(
              "w" + n,
              "t" + random.nextInt(trunk),
              from(0.1, 0.9),
              from(0, 2 * Math.PI),
              from(0.008, 0.02),
              from(0.01, 0.03),
              Optional.empty(),
              Map.of()));
    }
    return new Tree(
        "scattered",
        new TreeWood.OfSpecies("unknown"),
        Optional.empty(),
        OptionalDouble.empty(),
        Unions.SURFACE,
        segments,
        List.of(),
        wounds);
  }

  private void branch(int n, int on, List<Point3> nodes) {
    double round = from(0, 2 * Math.PI);
    double reach = from(0.04, 0.14);
    Vector3 out = new Vector3(reach * Math.cos(round), reach * Math.sin(round), from(-0.01, 0.06));
    Kind kind = random.nextInt(8) == 0 ? Kind.DEADWOOD : Kind.BRANCH;
    Point3 first = nodes.get(on).plus(out);
    add("b" + n, "t" + on, kind, 1, first, from(0.006, 0.014), 0.005);
    Vector3 on2 = new Vector3(from(-0.04, 0.04), from(-0.04, 0.04), from(0, 0.03));
    add("b" + n + "f", "b" + n, kind, 1, first.plus(on2), 0.005, 0.003);
  }

  private void add(
      String id, String parent, Kind kind, double along, Point3 end, double thick, double thin) {
    boolean side = id.startsWith("b") && !id.endsWith("f");
    segments.add(
        new Segment(
            id,
            Optional.ofNullable(parent),
            along,
            side ? Optional.of(Joint.UNION) : Optional.empty(),
            kind,
            parent == null ? Optional.of(Point3.ORIGIN) : Optional.empty(),
            end,
            thick,
            thin,
            OptionalDouble.empty(),
            Optional.empty(),
            Map.of()));
  }
}
