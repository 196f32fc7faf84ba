// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.tree.Extras;
import java.util.Map;
import java.util.Objects;

/**
 * A pull by hand while a branch is bent, let go when the coils and lines are to hold it.
 *
 * @param id name within the plan
 * @param at where the hand takes hold
 * @param direction which way it pulls; the hand follows sideways, so the force keeps its direction
 * @param move how far the place comes along that direction before it is let go, more than 0 [m]
 * @param extras fields of the file that this version does not know
 */
public record HandBend(
    String id, Spot at, Direction3 direction, double move, Map<String, Object> extras) {
  public HandBend {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(at, "at");
    Objects.requireNonNull(direction, "direction");
    if (!(move > 0) || Double.isInfinite(move)) {
      throw new IllegalArgumentException("a hand moves by more than 0, not " + move);
    }
    extras = Extras.copyOf(extras);
  }

  /** The same pull, so far. */
  public HandBend moving(double far) {
    return new HandBend(id, at, direction, far, extras);
  }
}
