// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.physics.trial.FailureMode;
import boughwright.physics.trial.Range;
import java.util.List;

/**
 * How hard the wood works along one limb, beside what it bears there.
 *
 * @param limb ids of its first and last segment, in words
 * @param fromUnion whether places count from a union; else from the trunk base
 * @param strains the outermost fibres along the limb, in order
 * @param limits what the wood bears along it, in order; empty where it has no limit
 * @param places where it fails first, as far as that is on this limb
 */
public record LimbStrain(
    String limb, boolean fromUnion, List<Fibres> strains, List<Limits> limits, List<Place> places) {
  public LimbStrain {
    strains = List.copyOf(strains);
    limits = List.copyOf(limits);
    places = List.copyOf(places);
  }

  /**
   * The outermost fibres at one place.
   *
   * @param at distance along the limb [m]
   * @param tension strain of the most stretched one [1]
   * @param compression strain of the most compressed one, without sign [1]
   */
  public record Fibres(double at, double tension, double compression) {}

  /**
   * What the wood bears at one place.
   *
   * @param at distance along the limb [m]
   * @param crack tension strain at which it cracks [1]
   * @param kink compression strain at which it kinks, without sign [1]
   * @param yield compression strain from which it yields, without sign [1]
   */
  public record Limits(double at, Range crack, Range kink, double yield) {}

  /**
   * Where it fails first in one way.
   *
   * @param mode kink or crack
   * @param at distance along the limb [m]
   * @param strain strain there under the best guess, without sign [1]
   */
  public record Place(FailureMode mode, double at, double strain) {}
}
