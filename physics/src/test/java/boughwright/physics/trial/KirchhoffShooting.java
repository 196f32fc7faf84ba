// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/**
 * Integrates the equations of a straight tapered round elastic rod from one end, with Hipparchus
 * alone: r' = t, t' = w x t, m' = -t x n, with the spin w = across(m)/EI + t (m.t)/GJ (Antman,
 * Nonlinear Problems of Elasticity, ch. 8; from memory).
 */
final class KirchhoffShooting {
  private static final double TOLERANCE = 1e-12;

  private KirchhoffShooting() {}

  /**
   * One end of a stretch.
   *
   * @param position where [m]
   * @param side a direction across the rod that turns with the wood
   * @param tangent direction along the rod
   * @param moment through the section [N m]
   */
  record End(Vector3D position, Vector3D side, Vector3D tangent, Vector3D moment) {
    End withMoment(Vector3D other) {
      return new End(position, side, tangent, other);
    }

    /** A vector that turns with this end, from its value when this end was like another. */
    Vector3D carried(Vector3D vector, End rest) {
      return side.scalarMultiply(vector.dotProduct(rest.side))
          .add(tangent.scalarMultiply(vector.dotProduct(rest.tangent)))
          .add(
              tangent
                  .crossProduct(side)
                  .scalarMultiply(vector.dotProduct(rest.tangent.crossProduct(rest.side))));
    }
  }

  /**
   * A round tapered stretch.
   *
   * @param length [m]
   * @param startRadius [m]
   * @param endRadius [m]
   * @param moe [Pa]
   * @param shear [Pa]
   */
  record Stretch(double length, double startRadius, double endRadius, double moe, double shear) {
    /** The part of this stretch between two fractions of its length. */
    Stretch part(double from, double to) {
      double step = endRadius - startRadius;
      return new Stretch(
          (to - from) * length, startRadius + from * step, startRadius + to * step, moe, shear);
    }
  }

  /** The far end, with a force passing through the whole stretch [N]. */
  static End along(End start, Stretch stretch, Vector3D force) {
    double[] y = new double[12];
    Vector3D[] parts = {start.position(), start.side(), start.tangent(), start.moment()};
    for (int k = 0; k < 4; k++) {
      System.arraycopy(parts[k].toArray(), 0, y, 3 * k, 3);
    }
    OrdinaryDifferentialEquation equation =
        new OrdinaryDifferentialEquation() {
          @Override
          public int getDimension() {
            return 12;
          }

          @Override
          public double[] computeDerivatives(double s, double[] state) {
            return derivatives(s, state, stretch, force);
          }
        };
    double[] z =
        new DormandPrince853Integrator(1e-9, stretch.length(), TOLERANCE, TOLERANCE)
            .integrate(equation, new ODEState(0, y), stretch.length())
            .getPrimaryState();
    return new End(vector(z, 0), vector(z, 3), vector(z, 6), vector(z, 9));
  }

  private static double[] derivatives(double s, double[] y, Stretch stretch, Vector3D force) {
    Vector3D side = vector(y, 3);
    Vector3D tangent = vector(y, 6);
    Vector3D moment = vector(y, 9);
    double radius =
        stretch.startRadius()
            + (stretch.endRadius() - stretch.startRadius()) * s / stretch.length();
    double fourth = Math.PI * Math.pow(radius, 4);
    double twisting = moment.dotProduct(tangent);
    Vector3D across = moment.subtract(tangent.scalarMultiply(twisting));
    Vector3D spin =
        across
            .scalarMultiply(4 / (stretch.moe() * fourth))
            .add(tangent.scalarMultiply(2 * twisting / (stretch.shear() * fourth)));
    double[] out = new double[12];
    System.arraycopy(tangent.toArray(), 0, out, 0, 3);
    System.arraycopy(spin.crossProduct(side).toArray(), 0, out, 3, 3);
    System.arraycopy(spin.crossProduct(tangent).toArray(), 0, out, 6, 3);
    System.arraycopy(force.crossProduct(tangent).toArray(), 0, out, 9, 3);
    return out;
  }

  private static Vector3D vector(double[] y, int at) {
    return new Vector3D(y[at], y[at + 1], y[at + 2]);
  }
}
