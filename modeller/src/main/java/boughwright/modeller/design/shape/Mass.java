// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.shape;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import java.util.List;
import java.util.Objects;

/**
 * Volume, middle and inertia of solid wood, per unit of density: times the density of the wood they
 * are its mass, its centre of mass and its inertia.
 *
 * <p>Wood where pieces overlap at a union counts for each of them.
 *
 * @param volume volume, more than 0 [m3]
 * @param centre centre of mass [m]
 * @param inertia inertia about the centre of mass
 */
public record Mass(double volume, Point3 centre, Inertia inertia) {
  public Mass {
    if (!(volume > 0) || Double.isInfinite(volume)) {
      throw new IllegalArgumentException("volume is " + volume + ", more than 0 is expected");
    }
    Objects.requireNonNull(centre, "centre");
    Objects.requireNonNull(inertia, "inertia");
  }

  /**
   * Of one tapered piece with flat ends square to its axis.
   *
   * @throws IllegalArgumentException if it has no length
   */
  public static Mass of(Frustum piece) {
    double a = piece.startRadius();
    double b = piece.endRadius();
    double length = piece.length();
    double squares = a * a + a * b + b * b;
    double volume = Math.PI * length * squares / 3;
    double middle = length * (a * a + 2 * a * b + 3 * b * b) / (4 * squares);
    double fourths = a * a * a * a + b * b * (a * a + b * b) + a * b * a * a + a * b * b * b;
    double about = Math.PI * length * fourths / 10;
    double fromStart = Math.PI * length * length * length * (a * a + 3 * a * b + 6 * b * b) / 30;
    double square = about / 2 + fromStart - volume * middle * middle;
    return new Mass(
        volume,
        piece.start().plus(piece.direction().times(middle)),
        Inertia.round(piece.direction(), about, square));
  }

  /**
   * Of several pieces together.
   *
   * @throws IllegalArgumentException if there is none
   */
  public static Mass of(List<Frustum> pieces) {
    return sum(pieces.stream().map(Mass::of).toList());
  }

  /**
   * Of several bodies together.
   *
   * @throws IllegalArgumentException if there is none
   */
  public static Mass sum(List<Mass> bodies) {
    double volume = 0;
    Vector3 moment = Vector3.ZERO;
    for (Mass body : bodies) {
      volume += body.volume;
      moment = moment.plus(body.centre.minus(Point3.ORIGIN).times(body.volume));
    }
    if (!(volume > 0)) {
      throw new IllegalArgumentException("nothing has no centre of mass");
    }
    Point3 centre = Point3.ORIGIN.plus(moment.times(1 / volume));
    Inertia inertia = Inertia.ZERO;
    for (Mass body : bodies) {
      inertia = inertia.plus(body.inertiaAbout(centre));
    }
    return new Mass(volume, centre, inertia);
  }

  /** Inertia about another point, for axes of the same directions. */
  public Inertia inertiaAbout(Point3 point) {
    return inertia.plus(Inertia.point(volume, centre.minus(point)));
  }
}
