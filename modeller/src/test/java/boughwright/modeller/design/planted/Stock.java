// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.planted;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.RoundAngle;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.TreeDraft;
import boughwright.modeller.tree.TreeWood;
import boughwright.modeller.tree.Wound;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** A tree that grows in a generator, piece by piece; metres and radians. */
final class Stock {
  /** One straight piece: which limb it is part of, and on which it sits. */
  record Piece(
      String id,
      String limb,
      Optional<String> parent,
      double along,
      Kind kind,
      Point3 start,
      Point3 end,
      double caliperStart,
      double caliperEnd) {
    Direction3 direction() {
      return end.minus(start).direction();
    }

    Point3 point(double along) {
      return start.toward(end, along);
    }
  }

  private final Map<String, Piece> pieces = new LinkedHashMap<>();
  private final List<Wound> wounds = new ArrayList<>();

  /** The trunk base. */
  Piece base(String id, Point3 end, double caliperStart, double caliperEnd) {
    return put(
        new Piece(
            id, id, Optional.empty(), 1, Kind.TRUNK, Point3.ORIGIN, end, caliperStart, caliperEnd));
  }

  /** A piece that goes on where another ends. */
  Piece onward(Piece from, String id, Point3 end, double caliperStart, double caliperEnd) {
    return put(
        new Piece(
            id,
            from.limb(),
            Optional.of(from.id()),
            1,
            from.kind(),
            from.end(),
            end,
            caliperStart,
            caliperEnd));
  }

  /** A new limb on a piece. */
  Piece side(
      Piece on, double along, String id, Kind kind, Vector3 step, double... caliperStartAndEnd) {
    Point3 start = on.point(along);
    return put(
        new Piece(
            id,
            id,
            Optional.of(on.id()),
            along,
            kind,
            start,
            start.plus(step),
            caliperStartAndEnd[0],
            caliperStartAndEnd[1]));
  }

  private Piece put(Piece piece) {
    if (pieces.putIfAbsent(piece.id(), piece) != null) {
      throw new IllegalStateException("two pieces " + piece.id());
    }
    return piece;
  }

  /** A round wound on a piece, on the side that looks along {@code toward}. */
  void wound(Piece on, double along, Direction3 toward, double size) {
    wounds.add(
        new Wound(
            "w" + (wounds.size() + 1),
            on.id(),
            along,
            RoundAngle.of(on.direction(), toward.vector()),
            size,
            size * 1.2,
            Optional.empty(),
            Map.of()));
  }

  List<Piece> pieces() {
    return List.copyOf(pieces.values());
  }

  Piece piece(String id) {
    return pieces.get(id);
  }

  Tree tree(String name) {
    List<Segment> segments = new ArrayList<>();
    for (Piece piece : pieces.values()) {
      boolean goesOn = piece.parent().isPresent() && !piece.id().equals(piece.limb());
      segments.add(
          new Segment(
              piece.id(),
              piece.parent(),
              piece.along(),
              piece.parent().map(parent -> goesOn ? Joint.CONTINUES : Joint.UNION),
              piece.kind(),
              piece.parent().isPresent() ? Optional.empty() : Optional.of(piece.start()),
              piece.end(),
              piece.caliperStart(),
              piece.caliperEnd(),
              OptionalDouble.empty(),
              Optional.empty(),
              Map.of()));
    }
    return new TreeDraft(name, new TreeWood.OfSpecies("carpinus-betulus"), segments)
        .wounds(wounds)
        .build();
  }
}
