// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

/**
 * The largest strain of bending along a limb, radius times added curvature, found by looking at
 * many places of a pose.
 *
 * @param s where [m]
 * @param strain how large [1]
 */
record Peak(double s, double strain) {
  private static final int PLACES = 2000;

  static Peak of(RodCase rods, RodPose pose, int limb) {
    RodCase.Limb rod = rods.limbs().get(limb);
    Peak peak = new Peak(0, -1);
    for (int i = 0; i <= PLACES; i++) {
      double along = (double) i / PLACES;
      double s = along * rod.length();
      double strain = rod.wood().radius(along) * rods.section(pose, limb, s).addedCurvature();
      if (strain > peak.strain()) {
        peak = new Peak(s, strain);
      }
    }
    return peak;
  }
}
