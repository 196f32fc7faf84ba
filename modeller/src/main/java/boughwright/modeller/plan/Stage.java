// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

import boughwright.modeller.tree.Extras;
import java.util.Map;

/**
 * One tightening of a plan.
 *
 * @param after time since the first bend [s]
 * @param part part of the plan's bends reached: 0 is as measured, 1 is all of them [1]
 * @param extras fields of the file that this version does not know
 */
public record Stage(double after, double part, Map<String, Object> extras) {
  public Stage {
    if (!(after >= 0 && part >= 0 && part <= 1) || Double.isInfinite(after)) {
      throw new IllegalArgumentException("stage after " + after + " s, part " + part);
    }
    extras = Extras.copyOf(extras);
  }

  public Stage(double after, double part) {
    this(after, part, Map.of());
  }
}
