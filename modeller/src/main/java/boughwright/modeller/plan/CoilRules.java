// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

import boughwright.modeller.tree.Finding;
import boughwright.modeller.tree.Finding.Words;
import boughwright.modeller.tree.Skeleton;
import java.util.List;
import java.util.Locale;

/** Whether the ends of a coil, whose places are sound, are joined by wood it can wind along. */
final class CoilRules {
  private CoilRules() {}

  /** A fault unless the way from the first end to the other runs outward all along. */
  static List<Finding> findings(Skeleton skeleton, Coil coil) {
    if (runsOutward(skeleton, coil.from(), coil.to())) {
      return List.of();
    }
    boolean turned = runsOutward(skeleton, coil.to(), coil.from());
    return List.of(
        Finding.fault(
            List.of(coil.from().segment(), coil.to().segment()),
            "to",
            new Words(
                "coil-no-path",
                String.format(
                    Locale.ROOT,
                    "no branch runs outward from %s of \"%s\" to %s of \"%s\", so no wire can wind"
                        + " along it",
                    coil.from().along(),
                    coil.from().segment(),
                    coil.to().along(),
                    coil.to().segment()),
                turned
                    ? "Swap from and to: a coil is given from the trunk outward"
                    : "Start it on the segment it ends on, or on one that this one grows from")));
  }

  /** True if the way along the tree leads outward, and has a length. */
  private static boolean runsOutward(Skeleton skeleton, Spot from, Spot to) {
    int start = skeleton.indexOf(from.segment());
    int at = skeleton.indexOf(to.segment());
    double along = to.along();
    boolean moved = false;
    while (at != start) {
      moved |= along > 0;
      along = skeleton.segment(at).along();
      at = skeleton.parent(at);
      if (at == Skeleton.NONE) {
        return false;
      }
    }
    return from.along() < along || moved && from.along() == along;
  }
}
