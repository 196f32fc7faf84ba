// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.plan.Spot;
import java.util.Objects;

/**
 * A place on the limb where a line can hold it.
 *
 * @param spot where
 * @param fromUnion distance along its own limb from where that starts to bend [m]
 * @param alongPath distance along the wood from where the first limb of the path starts to bend [m]
 * @param compliance how far it gives way sideways to a small force [m/N]
 */
public record TiePlace(Spot spot, double fromUnion, double alongPath, double compliance) {
  public TiePlace {
    Objects.requireNonNull(spot, "spot");
  }
}
