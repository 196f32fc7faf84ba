// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.tree.Skeleton;

/**
 * How a branch grows out of its parent: it starts on the parent's axis, swells into a collar where
 * it leaves the bark, and the crotch is darker than the open branch.
 *
 * <p>The caliper of a branch is read just outside the collar, so the swelling has died away one
 * branch radius from the parent's bark. Its shape is our own choice for the drawing; no result
 * depends on it.
 *
 * @param surface where the axis leaves the parent's bark: length from the start [m]
 * @param radius radius of the branch at its start [m]
 * @param room largest radius that stays inside the parent [m]
 */
record Collar(double surface, double radius, double room) {
  private static final double SWELLING = 0.28;
  private static final double REACH = 0.42;
  private static final double INNER_REACH = 0.5;
  private static final double CROTCH_SKY = 0.5;

  /** The collar of a segment that sits on a parent. */
  static Collar of(Skeleton skeleton, int segment) {
    int parent = skeleton.parent(segment);
    double along = skeleton.segment(segment).along();
    double parentRadius = Thickness.radius(skeleton.segment(parent), along);
    Direction3 way = skeleton.direction(segment);
    double slant = Math.sin(way.angleTo(skeleton.direction(parent)));
    double surface = parentRadius / Math.max(slant, 0.5);
    double radius = skeleton.segment(segment).caliperStart() / 2;
    return new Collar(
        Math.min(surface, 0.6 * skeleton.length(segment)), radius, 0.94 * parentRadius);
  }

  /** A station of the branch as it grows out of its parent. */
  Station at(Station plain) {
    return new Station(
        plain.point(),
        plain.direction(),
        swell(plain.radius(), plain.rest()),
        plain.strain(),
        plain.tensionSide(),
        plain.bark(),
        sky(plain.rest()),
        plain.rest());
  }

  /** The radius to draw where the branch itself has a given radius, at a length from its start. */
  private double swell(double own, double length) {
    double out = (length - surface) / (length < surface ? INNER_REACH * surface : REACH * radius);
    double swollen = own * (1 + SWELLING * Math.exp(-out * out));
    return Math.min(swollen, Math.max(own, room));
  }

  /** How much sky a place sees at a length from the start. */
  private double sky(double length) {
    double out = Math.min(1, Math.max(0, (length - surface) / (2.2 * radius)));
    return CROTCH_SKY + (1 - CROTCH_SKY) * out * (2 - out);
  }
}
