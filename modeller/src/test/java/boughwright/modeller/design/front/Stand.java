// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import boughwright.modeller.design.shape.TrunkLine;
import boughwright.modeller.design.shape.WoodLeft;
import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.RoundAngle;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.TreeDraft;
import boughwright.modeller.tree.TreeWood;
import boughwright.modeller.tree.Unions;
import boughwright.modeller.tree.Wound;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.UnaryOperator;

/** Trees for tests of fronts, put together piece by piece, in metres, moved as a whole. */
final class Stand {
  private record Piece(
      String id, String parent, double along, Kind kind, Vector3 end, double from, double to) {}

  private record Scar(
      String id, String segment, double along, Vector3 away, double width, double height) {}

  private final List<Piece> pieces = new ArrayList<>();
  private final List<Scar> scars = new ArrayList<>();

  static Stand trunk(Vector3 end, double from, double to) {
    Stand stand = new Stand();
    stand.pieces.add(new Piece("t0", null, 1, Kind.TRUNK, end, from, to));
    return stand;
  }

  /** Adds a piece at the end of another; calipers are given. */
  Stand add(String parent, String id, Kind kind, Vector3 end, double from, double to) {
    return addAt(parent, 1, new Piece(id, parent, 1, kind, end, from, to));
  }

  /** Adds a piece of one caliper that starts a fraction along another. */
  Stand addAt(String parent, double along, String id, Kind kind, Vector3 end, double caliper) {
    return addAt(parent, along, new Piece(id, parent, along, kind, end, caliper, caliper));
  }

  private Stand addAt(String parent, double along, Piece piece) {
    pieces.add(new Piece(piece.id, parent, along, piece.kind, piece.end, piece.from, piece.to));
    return this;
  }

  /** Adds a round wound whose middle lies in a direction from the axis of its segment. */
  Stand wound(String segment, double along, Vector3 away, double size) {
    scars.add(new Scar("w" + scars.size(), segment, along, away, size, size * 1.3));
    return this;
  }

  /** A tree with a trunk that turns, branches, roots, deadwood and wounds. */
  static Stand random(Random random) {
    Vector3 tip = new Vector3(random.nextGaussian() * 0.02, random.nextGaussian() * 0.02, 0.07);
    Stand stand = trunk(tip, 0.06, 0.052);
    int count = 4 + random.nextInt(4);
    for (int i = 1; i < count; i++) {
      tip =
          tip.plus(
              new Vector3(
                  random.nextGaussian() * 0.03,
                  random.nextGaussian() * 0.03,
                  0.04 + 0.03 * random.nextDouble()));
      double caliper = 0.052 * (count - i) / (double) count + 0.004;
      stand.add("t" + (i - 1), "t" + i, Kind.TRUNK, tip, caliper, caliper * 0.85);
    }
    for (int b = 0; b < 9; b++) {
      String on = "t" + random.nextInt(count);
      Vector3 from = stand.end(on);
      Vector3 out = level(random).times(0.05 + 0.1 * random.nextDouble());
      Vector3 end = from.plus(out).plus(new Vector3(0, 0, 0.05 * random.nextGaussian()));
      Kind kind = b == 7 ? Kind.DEADWOOD : b == 8 ? Kind.SACRIFICE : Kind.BRANCH;
      stand.add(on, "b" + b, kind, end, 0.008 + 0.006 * random.nextDouble(), 0.006);
      Vector3 further = end.plus(out.times(0.5)).plus(new Vector3(0, 0, 0.02));
      stand.add("b" + b, "c" + b, kind, further, 0.006, 0.003);
    }
    for (int r = 0; r < 5; r++) {
      Vector3 end = level(random).times(0.06).plus(new Vector3(0, 0, -0.015));
      stand.addAt("t0", 0, "r" + r, Kind.ROOT, end, 0.01 + 0.015 * random.nextDouble());
    }
    for (int w = 0; w < 4; w++) {
      stand.wound("t" + w, 0.2 + 0.6 * random.nextDouble(), level(random), 0.015);
    }
    return stand;
  }

  private static Vector3 level(Random random) {
    return Direction3.ofAzimuth(2 * Math.PI * random.nextDouble()).vector();
  }

  private Vector3 end(String id) {
    return pieces.stream().filter(piece -> piece.id.equals(id)).findFirst().orElseThrow().end;
  }

  /** The tree with every place moved, and every size scaled. */
  Skeleton moved(UnaryOperator<Vector3> move, double scale) {
    List<Segment> segments = new ArrayList<>();
    for (Piece piece : pieces) {
      segments.add(
          new Segment(
              piece.id,
              Optional.ofNullable(piece.parent),
              piece.along,
              Optional.empty(),
              piece.kind,
              piece.parent == null ? Optional.of(Point3.ORIGIN) : Optional.empty(),
              Point3.ORIGIN.plus(move.apply(piece.end).times(scale)),
              piece.from * scale,
              piece.to * scale,
              OptionalDouble.empty(),
              Optional.empty(),
              Map.of()));
    }
    Skeleton bare = new Skeleton(tree(segments, List.of()));
    List<Wound> wounds = new ArrayList<>();
    for (Scar scar : scars) {
      int segment = bare.indexOf(scar.segment);
      double round = RoundAngle.of(bare.direction(segment), move.apply(scar.away));
      wounds.add(
          new Wound(
              scar.id,
              scar.segment,
              scar.along,
              round,
              scar.width * scale,
              scar.height * scale,
              Optional.empty(),
              Map.of()));
    }
    return new Skeleton(tree(segments, wounds));
  }

  private static Tree tree(List<Segment> segments, List<Wound> wounds) {
    return new TreeDraft("test", new TreeWood.OfSpecies("unknown"), segments)
        .unions(Unions.AXIS)
        .wounds(wounds)
        .build();
  }

  Skeleton skeleton() {
    return moved(UnaryOperator.identity(), 1);
  }

  static FrontSubject bare(Skeleton skeleton) {
    WoodLeft wood = new WoodLeft(skeleton);
    return FrontSubject.bare(wood, TrunkLine.of(wood, Optional.empty()));
  }

  /** Looks at it level, without leaves. */
  FrontGauge gauge() {
    return new FrontGauge(bare(skeleton()), Eye.LEVEL);
  }
}
