// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

import boughwright.modeller.tree.Extras;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * A front a person marked to come back to.
 *
 * @param id name within the document
 * @param azimuth the azimuth of the tree as measured that faces the viewer [rad]
 * @param planting the planting angle; empty for the tree as measured
 * @param note what the person wrote to it
 * @param extras fields of the file that this version does not know
 */
public record MarkedFront(
    String id,
    double azimuth,
    Optional<Planting> planting,
    Optional<String> note,
    Map<String, Object> extras) {
  public MarkedFront {
    Objects.requireNonNull(id, "id");
    if (!Double.isFinite(azimuth)) {
      throw new IllegalArgumentException("front at " + azimuth);
    }
    Objects.requireNonNull(planting, "planting");
    Objects.requireNonNull(note, "note");
    extras = Extras.copyOf(extras);
  }
}
