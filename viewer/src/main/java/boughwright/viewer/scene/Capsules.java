// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.tree.RoundAngle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The wood of a pose as tapered pieces with round ends, to be struck by lines of sight. Immutable
 * as far as can be seen; any thread may ask.
 */
public final class Capsules {
  /** Straight pieces on one segment; its drawn axis is a curve. */
  private static final int PIECES = 4;

  /** Of more pieces than this a picture is framed by balls. */
  private static final int MOST_IN_FULL = 8000;

  /** Cells of near places along the diagonal of the tree. */
  private static final int CELLS = 100;

  private final LiveTree tree;
  private final Pose pose;
  private Wood wood;
  private List<StagesView.Outline> frame;

  /** All pieces, and the box round them. */
  private record Wood(List<Piece> pieces, Box bounds) {}

  /** A straight piece: its ends, their radii, its segment and where on it they are. */
  private record Piece(
      int segment,
      Point3 from,
      Direction3 way,
      double length,
      double radius,
      double widening,
      double fromAlong,
      double toAlong) {

    double reach() {
      return length / 2 + Math.max(radius, radius + widening * length);
    }
  }

  /**
   * Wood that was struck.
   *
   * @param segment index of the segment
   * @param along where on it, 0 to 1 [1]
   * @param axis that place on the axis [m, scene frame]
   * @param bark where the line of sight meets the bark [m, scene frame]
   * @param away from where the line of sight begins [m]
   */
  public record Struck(int segment, double along, Point3 axis, Point3 bark, double away) {}

  private Capsules(LiveTree tree, Pose pose) {
    this.tree = tree;
    this.pose = pose;
  }

  static Capsules of(LiveTree tree, Pose pose) {
    return new Capsules(tree, pose);
  }

  /** Made when first needed: most poses of a pull are gone before a line of sight meets them. */
  private synchronized Wood wood() {
    if (wood == null) {
      List<Piece> pieces = new ArrayList<>();
      Box bounds = Box.around(tree.base());
      for (int i = 0; i < tree.skeleton.size(); i++) {
        if (!tree.kept.isGone(i)) {
          bounds = add(pieces, i, bounds);
        }
      }
      wood = new Wood(pieces, bounds);
    }
    return wood;
  }

  private Box add(List<Piece> pieces, int segment, Box before) {
    Box bounds = before;
    double left = tree.kept.left(segment);
    Point3 from = pose.at(segment, 0).point();
    double radius = Thickness.radius(tree.skeleton.segment(segment), 0);
    for (int n = 1; n <= PIECES; n++) {
      double along = left * n / PIECES;
      Point3 to = pose.at(segment, along).point();
      double next = Thickness.radius(tree.skeleton.segment(segment), along);
      double length = from.distance(to);
      if (length > 0) {
        pieces.add(
            new Piece(
                segment,
                from,
                to.minus(from).direction(),
                length,
                radius,
                (next - radius) / length,
                left * (n - 1) / PIECES,
                along));
      }
      bounds = around(around(bounds, from, radius), to, next);
      from = to;
      radius = next;
    }
    return bounds;
  }

  private static Box around(Box box, Point3 middle, double radius) {
    Vector3 corner = new Vector3(radius, radius, radius);
    return box.with(middle.plus(corner)).with(middle.plus(corner.times(-1)));
  }

  /** The box round the wood [m, scene frame]. */
  public Box bounds() {
    return wood().bounds();
  }

  /** The axis and radius of a segment in this pose, from its start to what is left of its end. */
  public StagesView.Outline outline(int segment) {
    List<Point3> axis = new ArrayList<>();
    List<Double> radii = new ArrayList<>();
    int count = 2 * PIECES;
    double left = tree.kept.left(segment);
    for (int n = 0; n <= count; n++) {
      double along = left * n / count;
      axis.add(pose.at(segment, along).point());
      radii.add(Thickness.radius(tree.skeleton.segment(segment), along));
    }
    return new StagesView.Outline(axis, radii);
  }

  /**
   * What a picture that shows all of this wood has to hold; no wood is outside of it. Of very many
   * segments, near places count as one ball round them, at most a hundredth of the tree too large.
   */
  public synchronized List<StagesView.Outline> frame() {
    if (frame == null) {
      frame = wood().pieces().size() > MOST_IN_FULL ? balls() : outlines();
    }
    return frame;
  }

  private List<StagesView.Outline> balls() {
    double side = bounds().diagonal() / CELLS;
    Map<List<Long>, Double> cells = new HashMap<>();
    for (Piece piece : wood().pieces()) {
      double end = piece.radius() + piece.widening() * piece.length();
      cells.merge(cell(piece.from(), side), piece.radius(), Math::max);
      cells.merge(cell(piece.from().plus(piece.way().times(piece.length())), side), end, Math::max);
    }
    double corner = side * Math.sqrt(3) / 2;
    List<Point3> middles = new ArrayList<>();
    List<Double> radii = new ArrayList<>();
    cells.forEach(
        (cell, radius) -> {
          middles.add(
              new Point3(
                  (cell.get(0) + 0.5) * side,
                  (cell.get(1) + 0.5) * side,
                  (cell.get(2) + 0.5) * side));
          radii.add(radius + corner);
        });
    return List.of(new StagesView.Outline(middles, radii));
  }

  private static List<Long> cell(Point3 at, double side) {
    return List.of(
        (long) Math.floor(at.x() / side),
        (long) Math.floor(at.y() / side),
        (long) Math.floor(at.z() / side));
  }

  /** The outlines of all segments that are there. */
  private List<StagesView.Outline> outlines() {
    List<StagesView.Outline> all = new ArrayList<>();
    for (int i = 0; i < tree.skeleton.size(); i++) {
      if (!tree.kept.isGone(i)) {
        all.add(outline(i));
      }
    }
    return all;
  }

  /** A place on the axis in this pose [m, scene frame]. */
  public Point3 axis(int segment, double along) {
    return pose.at(segment, Math.min(along, tree.kept.left(segment))).point();
  }

  /** Half the thickness at a place [m]. */
  public double radius(int segment, double along) {
    return Thickness.radius(tree.skeleton.segment(segment), along);
  }

  /** The nearest wood on a line of sight, of the segments that may be struck. */
  public Optional<Struck> nearest(Camera.Sight sight, java.util.function.IntPredicate may) {
    return all(sight, may).stream().findFirst();
  }

  /** Every segment on a line of sight, the nearest first, each where it is met first. */
  public List<Struck> all(Camera.Sight sight, java.util.function.IntPredicate may) {
    List<Struck> struck = new ArrayList<>();
    for (Piece piece : wood().pieces()) {
      if (passes(piece, sight) && may.test(piece.segment())) {
        double away = meets(piece, sight);
        if (away < Double.POSITIVE_INFINITY) {
          keepNearest(struck, struck(piece, sight, away));
        }
      }
    }
    struck.sort(Comparator.comparingDouble(Struck::away));
    return struck;
  }

  private static void keepNearest(List<Struck> struck, Struck found) {
    for (int n = 0; n < struck.size(); n++) {
      if (struck.get(n).segment() == found.segment()) {
        if (found.away() < struck.get(n).away()) {
          struck.set(n, found);
        }
        return;
      }
    }
    struck.add(found);
  }

  /** Whether a line comes near enough to a piece to be worth a closer look. */
  private static boolean passes(Piece piece, Camera.Sight sight) {
    double half = piece.length() / 2;
    double x = piece.from().x() + half * piece.way().x() - sight.from().x();
    double y = piece.from().y() + half * piece.way().y() - sight.from().y();
    double z = piece.from().z() + half * piece.way().z() - sight.from().z();
    double ahead = x * sight.along().x() + y * sight.along().y() + z * sight.along().z();
    double reach = piece.reach();
    return x * x + y * y + z * z - ahead * ahead <= reach * reach && ahead > -reach;
  }

  private Struck struck(Piece piece, Camera.Sight sight, double away) {
    Point3 bark = sight.from().plus(sight.along().times(away));
    double at = bark.minus(piece.from()).dot(piece.way().vector()) / piece.length();
    double part = Math.min(1, Math.max(0, at));
    double along = piece.fromAlong() + part * (piece.toAlong() - piece.fromAlong());
    return new Struck(piece.segment(), along, pose.at(piece.segment(), along).point(), bark, away);
  }

  /** How far along the line of sight a piece is met first; infinite where it is missed [m]. */
  private static double meets(Piece piece, Camera.Sight sight) {
    double first = side(piece, sight);
    first = Math.min(first, ball(piece.from(), piece.radius(), sight));
    Point3 end = piece.from().plus(piece.way().times(piece.length()));
    return Math.min(first, ball(end, piece.radius() + piece.widening() * piece.length(), sight));
  }

  /**
   * Where a line first meets the side of a straight piece whose radius grows evenly: the distance
   * from the axis, squared, equals the radius there, squared.
   */
  private static double side(Piece piece, Camera.Sight sight) {
    Vector3 from = sight.from().minus(piece.from());
    double ahead = from.dot(piece.way().vector());
    double with = sight.along().dot(piece.way());
    double radius = piece.radius() + piece.widening() * ahead;
    double slope = piece.widening() * with;
    double a = 1 - with * with - slope * slope;
    double b = from.dot(sight.along().vector()) - ahead * with - slope * radius;
    double c = from.dot(from) - ahead * ahead - radius * radius;
    double inside = b * b - a * c;
    if (inside < 0 || Math.abs(a) < 1e-12) {
      return Double.POSITIVE_INFINITY;
    }
    double root = Math.sqrt(inside);
    double first = Double.POSITIVE_INFINITY;
    for (double away : new double[] {(-b - root) / a, (-b + root) / a}) {
      double at = ahead + away * with;
      if (away >= 0 && at >= 0 && at <= piece.length() && away < first) {
        first = away;
      }
    }
    return first;
  }

  private static double ball(Point3 middle, double radius, Camera.Sight sight) {
    Vector3 from = sight.from().minus(middle);
    double b = from.dot(sight.along().vector());
    double inside = b * b - from.dot(from) + radius * radius;
    double away = -b - Math.sqrt(Math.max(0, inside));
    return inside < 0 || away < 0 ? Double.POSITIVE_INFINITY : away;
  }

  /**
   * Where round its segment at rest a struck place is, as a wound counts [rad].
   *
   * @see boughwright.modeller.tree.Wound#round
   */
  public double round(Struck struck) {
    Direction3 rest = tree.skeleton.direction(struck.segment());
    Axis axis = pose.at(struck.segment(), struck.along());
    Rotation back = Rotation.between(axis.direction(), tree.stand().turn().turn(rest));
    Vector3 radial = struck.bark().minus(struck.axis());
    Vector3 square = radial.minus(axis.direction().times(radial.dot(axis.direction().vector())));
    if (square.norm() < 1e-9) {
      return 0;
    }
    return RoundAngle.of(rest, tree.stand().turn().inverse().turn(back.turn(square)));
  }
}
