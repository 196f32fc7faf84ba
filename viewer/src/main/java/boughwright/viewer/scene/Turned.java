// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Solids as from a lathe. */
final class Turned {
  private static final int SIDES = 20;

  private Turned() {}

  /**
   * A solid in the colour of fittings.
   *
   * @param start where its axis starts [m, scene frame]
   * @param way the way of its axis
   * @param profile pairs of length along the axis and radius, in order [m]
   */
  static Mesh of(Point3 start, Direction3 way, double[][] profile) {
    List<Station> stations = new ArrayList<>();
    for (double[] ring : profile) {
      stations.add(
          new Station(
              start.plus(way.times(ring[0])),
              way,
              ring[1],
              0,
              Vector3.ZERO,
              Palette.FITTING,
              1,
              ring[0]));
    }
    return new SkinMesher(SIDES, Optional.empty()).close(stations, SkinMesher.End.FLAT);
  }
}
