// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.plan.FrontMeasure;
import java.util.OptionalDouble;

/**
 * What of a tree is seen along one line of sight: the part of a {@link FrontReading} that is the
 * same for every pose with that line of sight, however the tree is rolled about it. Immutable.
 */
public final class Seen {
  private final Direction3 towardViewer;

  /** Shape: one per measure; NaN where it is not a matter of the line of sight alone. */
  private final double[] values;

  /** Shape: one per branch on the trunk line; visible area over that of the trunk [1]. */
  private final double[] branches;

  Seen(Direction3 towardViewer, double[] values, double[] branches) {
    this.towardViewer = towardViewer;
    this.values = values;
    this.branches = branches;
  }

  /** Part of the way from what is seen along one line of sight to what is seen along another. */
  static Seen blend(Seen one, Seen other, double part) {
    return new Seen(
        one.towardViewer,
        between(one.values, other.values, part),
        between(one.branches, other.branches, part));
  }

  private static double[] between(double[] one, double[] other, double part) {
    double[] out = new double[one.length];
    for (int k = 0; k < out.length; k++) {
      out[k] = one[k] + part * (other[k] - one[k]);
    }
    return out;
  }

  /** The direction from the tree to the viewer, in the tree frame as measured. */
  public Direction3 towardViewer() {
    return towardViewer;
  }

  /** What is measured along the line of sight alone; empty for what needs the pose. */
  public OptionalDouble value(FrontMeasure measure) {
    double value = values[measure.ordinal()];
    return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  double[] copyOfValues() {
    return values.clone();
  }

  double branch(int k) {
    return branches[k];
  }
}
