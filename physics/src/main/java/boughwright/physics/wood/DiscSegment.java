// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

/**
 * The part of a disc of radius one beyond a chord, where the fibres of a bent section that has
 * begun to flow are still elastic; and what follows for the section.
 *
 * <p>Lengths are in radii, strains and stresses in those at which flow begins. On the chord, at
 * distance {@code c} from the centre, the strain is -1; towards the centre and beyond it the stress
 * stays -1. With {@code S = Q - c A} the first moment of the segment about its chord, no net axial
 * force means {@code x S = pi}, x being the curvature.
 *
 * @param chord distance of the chord from the centre, c, -1 to 1 [1]
 * @param area area of the segment, A [1]
 * @param first first moment about the centre line, Q [1]
 * @param second second moment about the centre line, I [1]
 */
record DiscSegment(double chord, double area, double first, double second) {
  private static final double DISC = Math.PI;

  /**
   * The segment seen from the centre under twice an angle.
   *
   * @param half half of that angle, more than 0 and at most pi [rad]
   */
  static DiscSegment of(double half) {
    double c = Math.cos(half);
    double s = Math.sin(half);
    return new DiscSegment(
        c, half - s * c, 2 * s * s * s / 3, (half - s * c * (1 - 2 * s * s)) / 4);
  }

  private double aboutChord() {
    return first - chord * area;
  }

  /** Curvature times radius over the strain at which flow begins, x [1]. */
  double curvature() {
    return DISC / aboutChord();
  }

  /** Bending moment over the one at which flow begins [1]. */
  double moment() {
    return 4 * (second - chord * first) / aboutChord();
  }

  /** Rate of the moment over curvature [1]. */
  double slope() {
    return 4 / DISC * (second - first * first / area);
  }

  /** Energy per length over the moment times the curvature at which flow begins [1]. */
  double energy() {
    double x = curvature();
    return 2 + 4 * x * chord + 2 / DISC * x * x * (second - chord * (2 * first - chord * area));
  }

  /** Strain of the most stretched fibre over the one at which flow begins [1]. */
  double tension() {
    return curvature() * (1 - chord) - 1;
  }

  /** Rate of that strain over curvature [1]. */
  double tensionSlope() {
    return 1 - first / area;
  }
}
