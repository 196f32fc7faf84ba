// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.ground;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import java.util.List;
import java.util.Optional;

/**
 * What the roots of one tree lose as it is tilted in a container, or in none.
 *
 * @param roots the roots, at least one
 * @param foot middle of the trunk base [m, tree frame]
 * @param whole volume of all of them [m3]
 * @param box the container
 */
record RootLosses(List<Root> roots, Point3 foot, double whole, Optional<Box> box) {
  RootLosses(List<Root> roots, Point3 foot, Optional<Box> box) {
    this(roots, foot, roots.stream().mapToDouble(Root::volume).sum(), box);
  }

  /** Share of the volume that goes after a turn from the tree frame to the viewer's [1]. */
  double share(Rotation toViewer) {
    return new RootsLeft(roots, new Stand(toViewer, foot), box).share(whole);
  }
}
