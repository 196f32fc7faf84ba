// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

/** The sections along a span. */
@FunctionalInterface
public interface SectionLine {
  /**
   * The section at a place.
   *
   * @param s distance from the start of the span [m]
   */
  SectionLaw at(double s);

  /**
   * The section at a place as it was when the given shape settled, before anything bent it.
   *
   * @param s distance from the start of the span [m]
   */
  default SectionLaw settledAt(double s) {
    return at(s);
  }

  /**
   * Round elastic sections whose radius goes linearly from start to end ({@link
   * LinearSection#round}).
   *
   * @param moe modulus of elasticity E [Pa]
   * @param shearModulus modulus of rigidity G [Pa]
   * @param taper radius along the span
   */
  static SectionLine round(double moe, double shearModulus, RadiusTaper taper) {
    return s -> LinearSection.round(moe, shearModulus, taper.at(s));
  }

  /**
   * A radius that goes linearly along a span.
   *
   * @param start radius at the start [m]
   * @param end radius at the end [m]
   * @param length length of the span [m]
   */
  record RadiusTaper(double start, double end, double length) {
    public RadiusTaper {
      if (!(start > 0 && end > 0 && length > 0)) {
        throw new IllegalArgumentException(
            "radii and length are positive, not " + start + ", " + end + ", " + length);
      }
    }

    public double at(double s) {
      return start + (end - start) * (s / length);
    }
  }
}
