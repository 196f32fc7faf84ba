// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Kind;
import java.util.Objects;

/**
 * A segment as it is measured.
 *
 * @param id its name ({@link NextId#segment})
 * @param place where it starts
 * @param kind what it is
 * @param run how it runs from there
 * @param caliperStart diameter over bark at its start, just outside the collar [m]
 * @param caliperEnd diameter over bark at its end [m]
 */
public record NewSegment(
    String id, Place place, Kind kind, Run run, double caliperStart, double caliperEnd) {

  /**
   * Where it starts.
   *
   * @param parent the segment it starts on
   * @param along where on the parent's axis, 0 to 1 [1]
   * @param joint whether the same shoot goes on or a branch joins
   */
  public record Place(String parent, double along, Joint joint) {
    public Place {
      Objects.requireNonNull(parent, "parent");
      Objects.requireNonNull(joint, "joint");
    }
  }

  public NewSegment {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(run, "run");
  }
}
