// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.plan.FrontMeasure;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * How good a front is, and what that is made of.
 *
 * @param pose the front
 * @param total weighted mean of what each measure is worth, 0 to 1; NaN where nothing that counts
 *     can be said [1]
 * @param parts the measures that can be said, in their order
 * @param unsaid the measures that cannot be said of this tree
 */
public record FrontScore(
    FrontPose pose, double total, List<Part> parts, List<FrontMeasure> unsaid) {
  public FrontScore {
    Objects.requireNonNull(pose, "pose");
    parts = List.copyOf(parts);
    unsaid = List.copyOf(unsaid);
  }

  /**
   * One measure of a front.
   *
   * @param measure what was measured
   * @param value what it came to, in the unit of the measure
   * @param merit what that is worth, 0 to 1 [1]
   * @param share how much of the score the measure decides, 0 to 1 [1]
   */
  public record Part(FrontMeasure measure, double value, double merit, double share) {
    /** What it adds to the score [1]. */
    public double contribution() {
      return share * merit;
    }
  }

  /** Whether there is a score at all. */
  public boolean isSaid() {
    return !Double.isNaN(total);
  }

  /** What a measure came to; empty where it cannot be said. */
  public Optional<Part> part(FrontMeasure measure) {
    return parts.stream().filter(part -> part.measure() == measure).findFirst();
  }
}
