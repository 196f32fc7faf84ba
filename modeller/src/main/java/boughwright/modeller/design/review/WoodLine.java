// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Skeleton;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * One shoot from its start to its tip, measured along its axis. Immutable.
 *
 * <p>Where two pieces meet, the inner one has the place.
 */
public final class WoodLine {
  private final Skeleton skeleton;
  private final List<Piece> pieces;
  private final double[] at;
  private final List<Point3> points = new ArrayList<>();

  /**
   * A part of a segment.
   *
   * @param segment index in the skeleton
   * @param from where it starts, as a fraction of the segment [1]
   * @param to where it ends [1]
   */
  record Piece(int segment, double from, double to) {
    Piece {
      if (!(from >= 0 && from < to && to <= 1)) {
        throw new IllegalArgumentException("a piece from " + from + " to " + to);
      }
    }
  }

  WoodLine(Skeleton skeleton, List<Piece> pieces) {
    this.skeleton = skeleton;
    this.pieces = List.copyOf(pieces);
    at = new double[pieces.size() + 1];
    points.add(skeleton.point(pieces.get(0).segment(), pieces.get(0).from()));
    for (int n = 0; n < pieces.size(); n++) {
      Piece piece = pieces.get(n);
      at[n + 1] = at[n] + (piece.to() - piece.from()) * skeleton.length(piece.segment());
      points.add(skeleton.point(piece.segment(), piece.to()));
    }
  }

  List<Piece> pieces() {
    return pieces;
  }

  Skeleton skeleton() {
    return skeleton;
  }

  /** Where pieces start and end, in order [m, tree frame]; shape: one more than pieces. */
  List<Point3> points() {
    return points;
  }

  /** Distance along the line to the start of a piece, or to the end after the last [m]. */
  double start(int piece) {
    return at[piece];
  }

  /** Length along the line [m]. */
  public double length() {
    return at[pieces.size()];
  }

  /** Ids of its segments, from the inner to the outer. */
  public List<String> ids() {
    return pieces.stream().map(piece -> skeleton.segment(piece.segment()).id()).toList();
  }

  /** The id of the segment it starts with. */
  public String id() {
    return skeleton.segment(pieces.get(0).segment()).id();
  }

  /** Ids of the segments between two distances along the line [m]. */
  List<String> idsBetween(double from, double to) {
    return List.copyOf(ids().subList(pieceAt(from), pieceAt(to) + 1));
  }

  /** The piece a distance along the line lies on; places beyond the ends count as at the ends. */
  int pieceAt(double s) {
    int found = Arrays.binarySearch(at, s);
    int after = found >= 0 ? found : -found - 1;
    return Math.min(Math.max(after - 1, 0), pieces.size() - 1);
  }

  private double alongSegment(int n, double s) {
    Piece piece = pieces.get(n);
    double part = Math.min(1, Math.max(0, (s - at[n]) / (at[n + 1] - at[n])));
    return piece.from() + part * (piece.to() - piece.from());
  }

  /** The place on a segment [m along the line]. */
  Spot spot(double s) {
    int n = pieceAt(s);
    return new Spot(skeleton.segment(pieces.get(n).segment()).id(), alongSegment(n, s));
  }

  /** The point on the axis [m along the line]. */
  public Point3 point(double s) {
    int n = pieceAt(s);
    return skeleton.point(pieces.get(n).segment(), alongSegment(n, s));
  }

  /** Diameter over bark [m along the line]. */
  public double caliper(double s) {
    return caliperOn(pieceAt(s), s);
  }

  /** Diameter over bark on a piece: where two pieces meet each may have its own [m]. */
  double caliperOn(int piece, double s) {
    return skeleton.caliper(pieces.get(piece).segment(), alongSegment(piece, s));
  }

  /** A caliper and where it was read [m along the line], [m]. */
  record Reading(double s, double caliper) {}

  /** The calipers at both ends of every piece, in order. */
  List<Reading> readings() {
    List<Reading> out = new ArrayList<>();
    for (int n = 0; n < pieces.size(); n++) {
      out.add(new Reading(at[n], caliperOn(n, at[n])));
      out.add(new Reading(at[n + 1], caliperOn(n, at[n + 1])));
    }
    return out;
  }

  /** From one place on it straight to another further out [m along the line]. */
  Direction3 chord(double from, double to) {
    return point(Math.min(to, length())).minus(point(Math.max(0, from))).direction();
  }

  /** From start straight to tip. */
  Direction3 chord() {
    return chord(0, length());
  }

  Point3 tip() {
    return points.get(points.size() - 1);
  }

  double tipCaliper() {
    return caliper(length());
  }

  /** Distance along the line of a place on one of its segments; the place must be on the line. */
  double distanceTo(int segment, double along) {
    for (int n = 0; n < pieces.size(); n++) {
      Piece piece = pieces.get(n);
      if (piece.segment() == segment && along >= piece.from() && along <= piece.to()) {
        return at[n] + (along - piece.from()) * skeleton.length(segment);
      }
    }
    throw new IllegalArgumentException("segment " + segment + " at " + along + " is not on it");
  }

  boolean has(int segment) {
    return pieces.stream().anyMatch(piece -> piece.segment() == segment);
  }
}
