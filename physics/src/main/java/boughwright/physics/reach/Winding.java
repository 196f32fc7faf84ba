// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Coil;
import boughwright.modeller.plan.Hand;
import boughwright.modeller.plan.HandBend;
import java.util.Map;
import java.util.Objects;

/**
 * A coil, and the pull by hand that bends the limb before the coil holds it.
 *
 * @param place where the hand takes hold
 * @param by which way it pulls, and how far the place comes that way [m, tree frame]
 * @param coil the coil
 */
record Winding(TiePlace place, Vector3 by, Coil coil) {
  Winding {
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(coil, "coil");
    if (!(by.norm() > 0)) {
      throw new IllegalArgumentException("a hand moves by more than 0");
    }
  }

  /** The same coil, bent otherwise. */
  Winding by(Vector3 other) {
    return new Winding(place, other, coil);
  }

  Winding with(Coil other) {
    return new Winding(place, by, other);
  }

  /** Wound the other way. */
  Winding of(Hand hand) {
    return with(
        new Coil(
            coil.from(),
            coil.to(),
            coil.metal(),
            coil.gauge(),
            coil.strands(),
            coil.angleToAxis(),
            hand,
            coil.extras()));
  }

  HandBend hand(String id) {
    return new HandBend(id, place.spot(), by.direction(), by.norm(), Map.of());
  }
}
