// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import java.util.Objects;
import java.util.Optional;

/**
 * How likely one way of failing is, and where.
 *
 * @param mode the way
 * @param probability how likely
 * @param place where it comes first under the best guess; empty where nothing is near it
 * @param demand how hard the best guess works there, in the unit of the limit: a strain for kink
 *     and crack, a stress over the modulus for split and shear, a part of the limb's own strength
 *     for tear [1]
 * @param limit what that place bears
 */
public record FailureRisk(
    FailureMode mode,
    Probability probability,
    Optional<FailurePlace> place,
    double demand,
    Range limit) {
  public FailureRisk {
    Objects.requireNonNull(mode, "mode");
    Objects.requireNonNull(probability, "probability");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(limit, "limit");
  }
}
