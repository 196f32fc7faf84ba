// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.ground;

import boughwright.modeller.geometry.Rotation;
import java.util.List;
import java.util.Optional;

/**
 * What the roots of one tree lose as it is tilted in a container, or in none.
 *
 * @param roots the roots, at least one
 * @param whole volume of all of them [m3]
 * @param box the container
 */
record RootLosses(List<Root> roots, double whole, Optional<Box> box) {
  RootLosses(List<Root> roots, Optional<Box> box) {
    this(roots, roots.stream().mapToDouble(Root::volume).sum(), box);
  }

  /** What goes after a turn from the tree frame to the viewer's. */
  RootLoss at(Rotation toViewer) {
    return new RootsLeft(roots, new Stand(toViewer), box).loss(whole);
  }
}
