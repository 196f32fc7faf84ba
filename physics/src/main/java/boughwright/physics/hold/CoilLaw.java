// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.hold;

import boughwright.physics.rod.SectionResponse;
import java.util.Arrays;

/**
 * How the coil on a section answers the bending of the branch, in any direction: each element is
 * elastic about the curvature that it flowed to, and flows when its moment, whatever its direction,
 * comes to its limit. Within one move there is a convex potential, so the tangent is symmetric.
 * About the branch axis it is a straight-line spring.
 */
public final class CoilLaw {
  private final CoilElements elements;
  private final double torsion;

  /** Curvature about axes 1 and 2 at which each element has no moment [1/m], shape (elements). */
  private final double[] flowed1;

  private final double[] flowed2;

  /** Twist of the branch at which the coil has no torsional moment [rad/m]. */
  private final double twist;

  private CoilLaw(CoilLaw before, double[] flowed1, double[] flowed2) {
    this(before.elements, new Twisting(before.torsion, before.twist), flowed1, flowed2);
  }

  private CoilLaw(CoilElements elements, Twisting twisting, double[] flowed1, double[] flowed2) {
    this.elements = elements;
    torsion = twisting.stiffness;
    twist = twisting.from;
    this.flowed1 = flowed1;
    this.flowed2 = flowed2;
  }

  private record Twisting(double stiffness, double from) {}

  /**
   * A coil just wound on.
   *
   * @param elements its moment-curvature line
   * @param torsion torsional stiffness about the branch axis [N m2]
   */
  static CoilLaw fresh(CoilElements elements, double torsion) {
    int count = elements.count();
    return new CoilLaw(elements, new Twisting(torsion, 0), new double[count], new double[count]);
  }

  /** A coil wound on when the branch already had a strain, under which the coil has no moment. */
  CoilLaw woundAt(double e1, double e2, double e3) {
    double[] at1 = new double[elements.count()];
    double[] at2 = new double[elements.count()];
    Arrays.fill(at1, e1);
    Arrays.fill(at2, e2);
    return new CoilLaw(elements, new Twisting(torsion, e3), at1, at2);
  }

  /** A part of the coil, which remembers the same. */
  CoilLaw times(double part) {
    CoilElements less = CoilElements.mixed(elements, part, elements, 0);
    return new CoilLaw(less, new Twisting(part * torsion, twist), flowed1, flowed2);
  }

  /** The coil after its branch was brought to a bending strain [rad/m]. */
  public CoilLaw after(double e1, double e2) {
    double[] now1 = flowed1.clone();
    double[] now2 = flowed2.clone();
    for (int i = 0; i < now1.length; i++) {
      double x1 = e1 - flowed1[i];
      double x2 = e2 - flowed2[i];
      double far = Math.sqrt(x1 * x1 + x2 * x2);
      double moment = elements.stiffness()[i] * far;
      if (moment > elements.limit()[i]) {
        double kept = elements.limit()[i] / moment;
        now1[i] = e1 - kept * x1;
        now2[i] = e2 - kept * x2;
      }
    }
    return new CoilLaw(this, now1, now2);
  }

  /** Adds the coil's answer at a strain to that of the branch [rad/m]. */
  public void add(double e1, double e2, double e3, SectionResponse out) {
    for (int i = 0; i < flowed1.length; i++) {
      double k = elements.stiffness()[i];
      double x1 = e1 - flowed1[i];
      double x2 = e2 - flowed2[i];
      double far = Math.sqrt(x1 * x1 + x2 * x2);
      double limit = elements.limit()[i];
      if (k * far <= limit) {
        out.m1 += k * x1;
        out.m2 += k * x2;
        out.k11 += k;
        out.k22 += k;
        out.energy += k * far * far / 2;
      } else {
        double across = limit / far;
        double u1 = x1 / far;
        double u2 = x2 / far;
        out.m1 += limit * u1;
        out.m2 += limit * u2;
        out.k11 += across * (1 - u1 * u1);
        out.k22 += across * (1 - u2 * u2);
        out.k12 -= across * u1 * u2;
        out.energy += limit * (far - limit / (2 * k));
      }
    }
    double turned = e3 - twist;
    out.m3 += torsion * turned;
    out.k33 += torsion;
    out.energy += torsion * turned * turned / 2;
  }

  /** Bending stiffness while nothing flows [N m2]. */
  public double stiffness() {
    return elements.whole();
  }

  /** Torsional stiffness about the branch axis [N m2]. */
  public double torsion() {
    return torsion;
  }

  /** The moment that no bending exceeds [N m]. */
  public double most() {
    return elements.most();
  }
}
