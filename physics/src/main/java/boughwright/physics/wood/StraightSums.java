// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import boughwright.physics.rod.SectionResponse;

/**
 * The answer of a section while none of its fibres flows any further: straight lines from where
 * each of them rests, summed once. Nearly all of the time spent on wood that was held is here.
 */
final class StraightSums {
  private final FibreGrid grid;

  /** Total strain below which a fibre flows on [1]. */
  private final double[] limit;

  private final double area;
  private final double s1;
  private final double s2;
  private final double i11;
  private final double i12;
  private final double i22;

  /** Sums of the stress at no strain and its moments, over E. */
  private final double n0;

  private final double m10;
  private final double m20;
  private final double work;

  /**
   * What the fibres flowed, shapes (fibres).
   *
   * @param strain shortening for good [1]
   * @param work work spent on it, over E [1]
   * @param least strain beyond rest below which it goes on [1]
   */
  record Flowed(double[] strain, double[] work, double[] least) {}

  StraightSums(FibreGrid grid, double[] rest, Flowed flowed) {
    this.grid = grid;
    limit = new double[grid.count];
    double[] sums = new double[10];
    for (int i = 0; i < grid.count; i++) {
      limit[i] = rest[i] + flowed.least()[i];
      double a = grid.area[i];
      double g1 = grid.p2[i];
      double g2 = -grid.p1[i];
      double stress = flowed.strain()[i] - rest[i];
      sums[0] += a;
      sums[1] += a * g1;
      sums[2] += a * g2;
      sums[3] += a * g1 * g1;
      sums[4] += a * g1 * g2;
      sums[5] += a * g2 * g2;
      sums[6] += a * stress;
      sums[7] += a * stress * g1;
      sums[8] += a * stress * g2;
      sums[9] += a * (rest[i] * rest[i] / 2 - flowed.strain()[i] * rest[i] + flowed.work()[i]);
    }
    area = sums[0];
    s1 = sums[1];
    s2 = sums[2];
    i11 = sums[3];
    i12 = sums[4];
    i22 = sums[5];
    n0 = sums[6];
    m10 = sums[7];
    m20 = sums[8];
    work = sums[9];
  }

  /** The strain of the axis at which there is no net axial force [1]. */
  double middle(double e1, double e2) {
    return -(e1 * s1 + e2 * s2 + n0) / area;
  }

  /** Whether no fibre flows at a strain. */
  boolean holds(double middle, double e1, double e2) {
    for (int i = 0; i < grid.count; i++) {
      if (middle + e1 * grid.p2[i] - e2 * grid.p1[i] < limit[i]) {
        return false;
      }
    }
    return true;
  }

  /** Bending moments, tangent and work at a strain at which no fibre flows. */
  void respond(double moe, double e1, double e2, SectionResponse out) {
    double middle = middle(e1, e2);
    double q1 = middle * s1 + e1 * i11 + e2 * i12;
    double q2 = middle * s2 + e1 * i12 + e2 * i22;
    out.m1 = moe * (q1 + m10);
    out.m2 = moe * (q2 + m20);
    out.k11 = moe * (i11 - s1 * s1 / area);
    out.k12 = moe * (i12 - s1 * s2 / area);
    out.k22 = moe * (i22 - s2 * s2 / area);
    double squares = (middle * (middle * area + e1 * s1 + e2 * s2) + e1 * q1 + e2 * q2) / 2;
    out.energy = moe * (squares + middle * n0 + e1 * m10 + e2 * m20 + work);
  }
}
