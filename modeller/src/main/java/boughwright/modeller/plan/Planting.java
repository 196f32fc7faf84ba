// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

import boughwright.modeller.tree.Extras;
import java.util.Map;

/**
 * The planting angle: how the tree is tilted about its trunk base, from the pose as measured.
 *
 * @param tilt angle of the tilt [rad]
 * @param towardAzimuth the azimuth toward which the top moves [rad]
 * @param extras fields of the file that this version does not know
 */
public record Planting(double tilt, double towardAzimuth, Map<String, Object> extras) {
  public Planting {
    if (!Double.isFinite(tilt) || !Double.isFinite(towardAzimuth)) {
      throw new IllegalArgumentException("tilt " + tilt + " toward " + towardAzimuth);
    }
    extras = Extras.copyOf(extras);
  }

  public Planting(double tilt, double towardAzimuth) {
    this(tilt, towardAzimuth, Map.of());
  }
}
