// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.planted;

import boughwright.modeller.design.planted.Stock.Piece;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.tree.Kind;
import java.util.List;
import java.util.Set;

/** Whether limbs keep clear of each other. */
final class Clearance {
  /** Axes are this many times further apart than the bark of both would touch. */
  private static final double APART = 2;

  private static final double APART_FROM_TRUNK = 1.4;

  private final Stock stock;
  private final Set<String> mayTouch;

  private Clearance(Stock stock, Set<String> mayTouch) {
    this.stock = stock;
    this.mayTouch = mayTouch;
  }

  /**
   * Whether all limbs keep clear of each other.
   *
   * @param mayTouch limbs that need not keep clear of one another
   */
  static boolean isKept(Stock stock, Set<String> mayTouch) {
    Clearance clearance = new Clearance(stock, mayTouch);
    List<Piece> pieces =
        stock.pieces().stream().filter(piece -> piece.kind() != Kind.ROOT).toList();
    for (int i = 0; i < pieces.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (!clearance.areClear(pieces.get(i), pieces.get(j))) {
          return false;
        }
      }
    }
    return true;
  }

  private boolean areClear(Piece a, Piece b) {
    boolean meant = mayTouch.contains(a.limb()) && mayTouch.contains(b.limb());
    if (a.limb().equals(b.limb()) || meant || sitsOn(a, b) || sitsOn(b, a) || startTogether(a, b)) {
      return true;
    }
    double touch = (thickest(a) + thickest(b)) / 2;
    boolean near = grewFrom(a, b) || grewFrom(b, a) || isTrunk(a) || isTrunk(b);
    double times = near ? APART_FROM_TRUNK : APART;
    return distance(a.start(), a.end(), b.start(), b.end()) > times * touch;
  }

  private static boolean isTrunk(Piece piece) {
    return piece.kind() == Kind.TRUNK;
  }

  private static double thickest(Piece piece) {
    return Math.max(piece.caliperStart(), piece.caliperEnd());
  }

  /** Whether one is the first piece of a limb that sits on the limb of the other. */
  private boolean sitsOn(Piece child, Piece other) {
    return child.id().equals(child.limb()) && grewFrom(child, other);
  }

  /** Whether the limb of one sits on the limb of the other. */
  private boolean grewFrom(Piece child, Piece other) {
    return stock
        .piece(child.limb())
        .parent()
        .filter(parent -> stock.piece(parent).limb().equals(other.limb()))
        .isPresent();
  }

  private static boolean startTogether(Piece a, Piece b) {
    return a.start().distance(b.start()) < 1e-9;
  }

  /** Least distance of two stretches, by turns the nearest point on one to the other. */
  private static double distance(Point3 a0, Point3 a1, Point3 b0, Point3 b1) {
    double best = Double.POSITIVE_INFINITY;
    for (double from : new double[] {0, 0.5, 1}) {
      double s = from;
      double t = 0;
      for (int i = 0; i < 40; i++) {
        t = nearest(a0.toward(a1, s), b0, b1);
        s = nearest(b0.toward(b1, t), a0, a1);
      }
      best = Math.min(best, a0.toward(a1, s).distance(b0.toward(b1, t)));
    }
    return best;
  }

  private static double nearest(Point3 point, Point3 from, Point3 to) {
    Vector3 way = to.minus(from);
    return Math.max(0, Math.min(1, point.minus(from).dot(way) / way.dot(way)));
  }
}
