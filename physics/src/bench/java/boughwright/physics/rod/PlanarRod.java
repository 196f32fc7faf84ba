// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import boughwright.modeller.geometry.Point3;
import org.hipparchus.ode.OrdinaryDifferentialEquation;

/** A planar rod as a differential equation in angle, x and z, with one unknown at the clamp. */
final class PlanarRod implements OrdinaryDifferentialEquation {
  private final double startRadius;
  private final double slope;
  private final double modulus;
  private final double length;
  private final double loadedLength;
  private final double angle;
  private final boolean line;
  private final double pull;
  private final double anchorX;
  private final double anchorZ;
  private double moment;
  private double forceX;
  private double forceZ;

  private PlanarRod(BendCase bend) {
    line = bend.isLine();
    length = bend.length();
    Table row = bend.row();
    // lengths in units of the table, moduli so that modulus times radius^4 is the stiffness
    startRadius = line ? row.number("r_base") * Table.MM : 1;
    slope = line ? (row.number("r_tip") * Table.MM - startRadius) / length : 0;
    modulus = line ? row.number("E_MPa") * Table.MPA * Math.PI / 4 : 1;
    loadedLength = line ? row.number("s_attach") * Table.MM : length;
    angle = line ? Math.toRadians(row.number("incl_deg_above_horizontal")) : 0;
    pull = line ? row.number("tension_N") : bend.alpha();
    anchorX = line ? row.point("anchor_x").x() : 0;
    anchorZ = line ? row.point("anchor_x").z() : 0;
  }

  static PlanarRod of(BendCase bend) {
    return new PlanarRod(bend);
  }

  double loadedLength() {
    return loadedLength;
  }

  double[] start() {
    return new double[] {angle, 0, 0};
  }

  /** The unknown in the unbent state: the angle of the line, or the moment at the clamp. */
  double unbent() {
    return line
        ? Math.atan2(
            anchorZ - loadedLength * Math.sin(angle), anchorX - loadedLength * Math.cos(angle))
        : -pull * length;
  }

  /** A second guess, nearer the bent state. */
  double second() {
    return line ? unbent() + 0.05 : -pull * length / (1 + 0.25 * pull);
  }

  double scale() {
    return line ? 1 : pull * length;
  }

  void aim(double unknown) {
    if (line) {
      forceX = pull * Math.cos(unknown);
      forceZ = pull * Math.sin(unknown);
      moment = anchorX * forceZ - anchorZ * forceX;
    } else {
      forceX = 0;
      forceZ = -pull;
      moment = unknown;
    }
  }

  /** The moment left at the load, which should be none. */
  double miss(double[] end) {
    return moment - end[1] * forceZ + end[2] * forceX;
  }

  Point3 tip(double[] end) {
    double beyond = length - loadedLength;
    return new Point3(
        end[1] + beyond * Math.cos(end[0]), 0, end[2] + beyond * Math.sin(end[0]));
  }

  @Override
  public int getDimension() {
    return 3;
  }

  @Override
  public double[] computeDerivatives(double s, double[] y) {
    double radius = startRadius + slope * s;
    double squared = radius * radius;
    double m = moment - y[1] * forceZ + y[2] * forceX;
    return new double[] {m / (modulus * squared * squared), Math.cos(y[0]), Math.sin(y[0])};
  }
}
