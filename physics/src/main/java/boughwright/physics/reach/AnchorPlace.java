// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Anchor;
import boughwright.modeller.tree.AnchorKind;
import java.util.Objects;
import java.util.Optional;

/**
 * Something that is there and that a line can be tied to.
 *
 * @param sort what it is
 * @param name id of the segment or of the point; {@code rim} for the rim
 * @param anchor how a line names it
 * @param at where it is in the measured pose [m, tree frame]
 * @param kind what a point is; empty on the tree
 */
public record AnchorPlace(
    AnchorSort sort, String name, Anchor anchor, Point3 at, Optional<AnchorKind> kind) {
  public AnchorPlace {
    Objects.requireNonNull(sort, "sort");
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(anchor, "anchor");
    Objects.requireNonNull(at, "at");
    Objects.requireNonNull(kind, "kind");
  }
}
