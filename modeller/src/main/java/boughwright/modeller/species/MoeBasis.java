// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.species;

/** How a printed modulus was measured. */
public enum MoeBasis {
  /**
   * Centre-loaded bending at a span of 14 depths: includes shear deflection, and 10 % are added to
   * take it out (Forest Products Laboratory 2021, Wood Handbook FPL-GTR-282, Table 5-3 footnote c).
   */
  CENTRE_LOADED_14(1.10),
  /** Taken as the source prints it. */
  AS_PRINTED(1.0);

  private final double shearCorrection;

  MoeBasis(double shearCorrection) {
    this.shearCorrection = shearCorrection;
  }

  /** Factor from the printed modulus to the one without shear deflection [1]. */
  public double shearCorrection() {
    return shearCorrection;
  }
}
