// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import boughwright.modeller.geometry.Point3;
import java.util.Map;
import java.util.Objects;

/**
 * A point beside the tree that a line can be tied to.
 *
 * @param id name, used once
 * @param at where [m, tree frame as measured]
 * @param kind what it is
 * @param extras fields of the file that this version does not know
 */
public record AnchorPoint(String id, Point3 at, AnchorKind kind, Map<String, Object> extras) {
  public AnchorPoint {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(at, "at");
    Objects.requireNonNull(kind, "kind");
    extras = Extras.copyOf(extras);
  }
}
