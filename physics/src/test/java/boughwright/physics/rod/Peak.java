// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import java.util.TreeSet;

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
    double length = rods.limbs().get(limb).length();
    TreeSet<Double> places = new TreeSet<>();
    for (int i = 0; i <= PLACES; i++) {
      places.add(i == PLACES ? length : length * i / PLACES);
    }
    // where a child starts the moment jumps, and is looked up on the side of the base
    rods.limbs().stream().filter(child -> child.parent() == limb).forEach(c -> places.add(c.at()));
    Peak peak = new Peak(0, -1);
    for (double s : places) {
      double radius = rods.limbs().get(limb).wood().radius(s / length);
      double strain = radius * rods.section(pose, limb, s).addedCurvature();
      if (strain > peak.strain()) {
        peak = new Peak(s, strain);
      }
    }
    return peak;
  }
}
