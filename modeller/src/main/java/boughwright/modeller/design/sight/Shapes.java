// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.sight;

import boughwright.modeller.design.shape.Frustum;
import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What is looked at, as plain numbers in the tree frame: pieces of wood first, then pads of
 * foliage. Immutable, for use by any number of threads.
 *
 * <p>A piece is every ball whose middle is on its axis and whose radius goes evenly from the one at
 * its start to the one at its end.
 */
public final class Shapes {
  /** Numbers of a piece: start, axis, radius at the start, growth of the radius to the end. */
  static final int PIECE = 8;

  /** Numbers of a pad: middle, then xx, xy, xz, yy, yz, zz of the squared half sizes. */
  static final int PAD = 9;

  final int pieces;
  final int count;

  /** Shape: {@link #PIECE} per piece [m]. */
  final double[] wood;

  /** Shape: {@link #PAD} per pad [m, m2]. */
  final double[] pads;

  /** Shape: one per piece; true where nothing below z = 0 is seen: soil hides it. */
  final boolean[] inSoil;

  /** Shape: one per piece; numbers of the places where it starts and ends, equal where they are. */
  private final int[] startPlace;

  private final int[] endPlace;

  /** Shape: one per shape; shapes of the group do not hide each other where that is asked. */
  final boolean[] group;

  /**
   * Takes shapes over.
   *
   * @param wood pieces of wood
   * @param inSoil one per piece; whether soil hides what of it is below z = 0
   * @param group one per piece; whether it is of the group that does not hide itself
   * @param foliage pads of foliage
   */
  public Shapes(List<Frustum> wood, boolean[] inSoil, boolean[] group, List<Ellipsoid> foliage) {
    if (inSoil.length != wood.size() || group.length != wood.size()) {
      throw new IllegalArgumentException("one mark per piece of wood is expected");
    }
    pieces = wood.size();
    count = pieces + foliage.size();
    this.wood = new double[PIECE * pieces];
    pads = new double[PAD * foliage.size()];
    this.inSoil = inSoil.clone();
    this.group = Arrays.copyOf(group, count);
    startPlace = new int[pieces];
    endPlace = new int[pieces];
    Map<Point3, Integer> places = new HashMap<>();
    for (int i = 0; i < pieces; i++) {
      startPlace[i] = places.computeIfAbsent(wood.get(i).start(), at -> places.size());
      endPlace[i] = places.computeIfAbsent(wood.get(i).end(), at -> places.size());
      take(i, wood.get(i));
    }
    for (int i = 0; i < foliage.size(); i++) {
      take(i, foliage.get(i));
    }
  }

  private void take(int i, Frustum piece) {
    Point3 start = piece.start();
    Vector3 axis = piece.end().minus(start);
    double radius = piece.startRadius();
    double growth = piece.endRadius() - radius;
    if (axis.norm() <= Math.abs(growth)) {
      // One end's ball holds the other's.
      start = growth > 0 ? piece.end() : start;
      radius = Math.max(radius, piece.endRadius());
      growth = 0;
      axis = Vector3.ZERO;
    }
    int at = PIECE * i;
    wood[at] = start.x();
    wood[at + 1] = start.y();
    wood[at + 2] = start.z();
    wood[at + 3] = axis.x();
    wood[at + 4] = axis.y();
    wood[at + 5] = axis.z();
    wood[at + 6] = radius;
    wood[at + 7] = growth;
  }

  private void take(int i, Ellipsoid pad) {
    int at = PAD * i;
    pads[at] = pad.centre().x();
    pads[at + 1] = pad.centre().y();
    pads[at + 2] = pad.centre().z();
    add(at, pad.turn().turn(new Direction3(1, 0, 0)), pad.halfX());
    add(at, pad.turn().turn(new Direction3(0, 1, 0)), pad.halfY());
    add(at, pad.turn().turn(new Direction3(0, 0, 1)), pad.halfZ());
  }

  private void add(int at, Direction3 axis, double half) {
    double squared = half * half;
    pads[at + 3] += squared * axis.x() * axis.x();
    pads[at + 4] += squared * axis.x() * axis.y();
    pads[at + 5] += squared * axis.x() * axis.z();
    pads[at + 6] += squared * axis.y() * axis.y();
    pads[at + 7] += squared * axis.y() * axis.z();
    pads[at + 8] += squared * axis.z() * axis.z();
  }

  /** Whether one of two pieces starts where the other ends. */
  boolean joined(int i, int other) {
    return i < pieces
        && other < pieces
        && (startPlace[i] == endPlace[other] || endPlace[i] == startPlace[other]);
  }

  /** How many shapes there are: pieces of wood, then pads. */
  public int count() {
    return count;
  }

  /** How many of them are pieces of wood. */
  public int pieces() {
    return pieces;
  }
}
