// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import boughwright.modeller.design.shape.FrontPose;
import java.util.List;
import java.util.Objects;

/**
 * A side of the tree at the planting angle that suits it best.
 *
 * @param score how good it is, and why
 * @param top whether it beats every side near it; if not, the score rises on toward a better one
 * @param reasons what tells it from the other fronts, what matters most first
 */
public record Front(FrontScore score, boolean top, List<FrontReason> reasons) {
  public Front {
    Objects.requireNonNull(score, "score");
    reasons = List.copyOf(reasons);
  }

  public FrontPose pose() {
    return score.pose();
  }
}
