// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import boughwright.physics.rod.SectionLaw;
import boughwright.physics.rod.SectionResponse;

/** Finds the bending strain of a section under a moment by Newton's method with shortened steps. */
public final class StrainSearch {
  private static final double SETTLED = 1e-11;

  /** A strain that was cut to the farthest size may miss it by this [1]. */
  private static final double ROUNDING = 1e-9;

  private static final int MOST_STEPS = 80;
  private static final int MOST_HALVINGS = 12;

  private StrainSearch() {}

  /**
   * The strain, or one of the farthest size where the search runs off, as it does under a moment
   * that cannot be carried.
   *
   * @param law the section
   * @param m1 moment about axis 1 [N m]
   * @param m2 moment about axis 2 [N m]
   * @param farthest size at which the search is given up [rad/m]
   */
  public static double[] under(SectionLaw law, double m1, double m2, double farthest) {
    SectionResponse r = new SectionResponse();
    double moment = size(m1, m2);
    double e1 = 0;
    double e2 = 0;
    law.respond(e1, e2, 0, r);
    double left = size(m1 - r.m1, m2 - r.m2);
    double floor = SETTLED * (moment + left);
    for (int n = 0; n < MOST_STEPS && left > floor; n++) {
      double d1 = m1 - r.m1;
      double d2 = m2 - r.m2;
      double det = r.k11 * r.k22 - r.k12 * r.k12;
      double s1 = (r.k22 * d1 - r.k12 * d2) / det;
      double s2 = (r.k11 * d2 - r.k12 * d1) / det;
      double part = 1;
      double next = Double.POSITIVE_INFINITY;
      for (int h = 0; h < MOST_HALVINGS && !(next < left); h++) {
        law.respond(e1 + part * s1, e2 + part * s2, 0, r);
        next = size(m1 - r.m1, m2 - r.m2);
        part = next < left ? part : part / 2;
      }
      if (!(next < left)) {
        break;
      }
      e1 += part * s1;
      e2 += part * s2;
      double far = size(e1, e2);
      if (!(far < farthest)) {
        double scale = Double.isFinite(far) ? farthest / far : 0;
        return new double[] {e1 * scale, e2 * scale};
      }
      left = next;
    }
    return new double[] {e1, e2};
  }

  /**
   * Whether a strain below the farthest carries a moment.
   *
   * @param law the section
   * @param m1 moment about axis 1 [N m]
   * @param m2 moment about axis 2 [N m]
   * @param farthest size at which the search is given up [rad/m]
   */
  static boolean carries(SectionLaw law, double m1, double m2, double farthest) {
    double[] strain = under(law, m1, m2, farthest);
    return size(strain[0], strain[1]) < (1 - ROUNDING) * farthest;
  }

  /** Length of a vector of no extreme size; {@link Math#hypot} takes ten times as long. */
  private static double size(double x, double y) {
    return Math.sqrt(x * x + y * y);
  }
}
