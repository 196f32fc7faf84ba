// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.PlanDraft;
import boughwright.modeller.species.Species;
import boughwright.modeller.species.SpeciesTable;
import boughwright.modeller.tree.AnchorKind;
import boughwright.modeller.tree.AnchorPoint;
import boughwright.modeller.tree.Growing;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Setting;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.TreeDraft;
import boughwright.modeller.tree.TreeWood;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;

/**
 * An invented tree by chance: a trunk, two roots, and one tapered, bent branch with a side twig;
 * screws in the soil and a frame beside it. Knows nothing of any search.
 */
final class RandomBranch {
  private final Random random;
  private final List<Segment> segments = new ArrayList<>();
  private final List<String> limb = new ArrayList<>();
  private Point3 tip = Point3.ORIGIN;

  private RandomBranch(long seed) {
    random = new Random(seed);
  }

  /**
   * A tree with its branch.
   *
   * @param tree the tree
   * @param limb ids of the segments of the branch from the inside out
   */
  record Grown(Tree tree, List<String> limb) {
    Plan plan() {
      return new PlanDraft("a").build();
    }

    static Species species() {
      return SpeciesTable.bundled().find("Carpinus betulus").get(0);
    }
  }

  static Grown of(long seed) {
    return new RandomBranch(seed).grow();
  }

  /** A tree of one straight upright segment and a screw beside it. */
  static Grown stick() {
    RandomBranch stick = new RandomBranch(0);
    stick.add("t1", null, 1, Kind.TRUNK, new Point3(0, 0, 0.25), 0.012, 0.008);
    stick.limb.add("t1");
    return stick.grown(List.of(point("s1", new Point3(0.2, 0, 0), AnchorKind.SCREW)));
  }

  private double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  private Grown grow() {
    trunk();
    branch();
    List<AnchorPoint> anchors = new ArrayList<>();
    for (int n = 0; n < 7; n++) {
      double azimuth = 2 * Math.PI * (n + random.nextDouble()) / 7;
      Vector3 out = Direction3.ofAzimuth(azimuth).times(between(0.09, 0.2));
      anchors.add(point("s" + n, Point3.ORIGIN.plus(out).plus(up(-0.01)), AnchorKind.SCREW));
    }
    for (int n = 0; n < 4; n++) {
      Vector3 out = Direction3.ofAzimuth(between(0, 2 * Math.PI)).times(between(0.2, 0.4));
      anchors.add(
          point("f" + n, Point3.ORIGIN.plus(out).plus(up(between(0.1, 0.5))), AnchorKind.FRAME));
    }
    return grown(anchors);
  }

  private Grown grown(List<AnchorPoint> anchors) {
    Tree tree =
        new TreeDraft("invented by chance", new TreeWood.OfSpecies("carpinus-betulus"), segments)
            .bark(OptionalDouble.of(0.0004))
            .setting(new Setting(Optional.empty(), Growing.UNSAID, anchors))
            .build();
    return new Grown(tree, List.copyOf(limb));
  }

  private static Vector3 up(double height) {
    return new Vector3(0, 0, height);
  }

  private static AnchorPoint point(String id, Point3 at, AnchorKind kind) {
    return new AnchorPoint(id, at, kind, Map.of());
  }

  private void trunk() {
    double caliper = between(0.04, 0.07);
    Point3 at = Point3.ORIGIN;
    for (int n = 1; n <= 4; n++) {
      Point3 end = at.plus(new Vector3(between(-0.008, 0.008), between(-0.008, 0.008), 0.06));
      add("t" + n, n == 1 ? null : "t" + (n - 1), 1, Kind.TRUNK, end, caliper, 0.88 * caliper);
      caliper *= 0.88;
      at = end;
    }
    for (int n = 1; n <= 2; n++) {
      Vector3 out = Direction3.ofAzimuth(between(0, 2 * Math.PI)).times(0.08);
      add("r" + n, "t1", 0, Kind.ROOT, Point3.ORIGIN.plus(out).plus(up(-0.015)), 0.025, 0.014);
    }
  }

  private void branch() {
    int on = 2 + random.nextInt(3);
    double along = between(0.2, 0.9);
    Segment trunk = segments.get(on - 1);
    Point3 from = segments.get(on - 2).end().toward(trunk.end(), along);
    int count = 4 + random.nextInt(4);
    double length = between(0.15, 0.35) / count;
    double caliper = between(0.008, 0.016);
    double taper = Math.pow(between(0.25, 0.5), 1.0 / count);
    Direction3 way = Direction3.ofAzimuth(between(0, 2 * Math.PI), between(0, 1));
    tip = from;
    String parent = trunk.id();
    for (int n = 1; n <= count; n++) {
      Point3 end = tip.plus(way.times(n == 1 ? length + 0.025 : length));
      String id = "b" + n;
      Kind kind = Kind.BRANCH;
      add(id, parent, n == 1 ? along : 1, kind, end, caliper, taper * caliper);
      limb.add(id);
      caliper *= taper;
      tip = end;
      parent = id;
      Vector3 turn = new Vector3(between(-1, 1), between(-1, 1), between(-1, 1)).times(0.35);
      way = Rotation.ofVector(turn).turn(way);
    }
    Vector3 aside = way.anySquare().times(0.05);
    add("w1", "b2", 0.5, Kind.BRANCH, tip.toward(from, 0.6).plus(aside), 0.003, 0.002);
  }

  private void add(
      String id, String parent, double along, Kind kind, Point3 end, double start, double stop) {
    segments.add(
        new Segment(
            id,
            Optional.ofNullable(parent),
            along,
            Optional.empty(),
            kind,
            parent == null ? Optional.of(Point3.ORIGIN) : Optional.empty(),
            end,
            start,
            stop,
            OptionalDouble.empty(),
            Optional.empty(),
            Map.of()));
  }
}
