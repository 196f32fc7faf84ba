// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.plan.FrontMeasure;
import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * What of a tree is seen along one line of sight: the part of a {@link FrontReading} that is the
 * same for every pose with that line of sight, however the tree is rolled about it. Immutable.
 */
public final class Seen {
  private static final int MEASURES = FrontMeasure.values().length;

  private final Direction3 towardViewer;

  /**
   * Shape: one per measure, NaN where it is not a matter of the line of sight alone; then one per
   * branch on the trunk line, visible area over that of the trunk [1].
   */
  private final double[] values;

  private Seen(Direction3 towardViewer, double[] values) {
    this.towardViewer = towardViewer;
    this.values = values;
  }

  /**
   * What is seen.
   *
   * @param measures one per measure
   * @param branches one per branch on the trunk line
   */
  static Seen of(Direction3 towardViewer, double[] measures, double[] branches) {
    double[] values = Arrays.copyOf(measures, MEASURES + branches.length);
    System.arraycopy(branches, 0, values, MEASURES, branches.length);
    return new Seen(towardViewer, values);
  }

  /** Four lines of sight round a place of a lattice, the lower two first, each from the left. */
  record Corners(Seen lowLeft, Seen lowRight, Seen highLeft, Seen highRight) {
    /** Part of the way to the right and upward [1]. */
    Seen blend(double across, double upward) {
      double lowRightPart = across * (1 - upward);
      double highLeftPart = (1 - across) * upward;
      double highRightPart = across * upward;
      double lowLeftPart = 1 - lowRightPart - highLeftPart - highRightPart;
      double[] out = new double[lowLeft.values.length];
      for (int k = 0; k < out.length; k++) {
        out[k] =
            lowLeftPart * lowLeft.values[k]
                + lowRightPart * lowRight.values[k]
                + highLeftPart * highLeft.values[k]
                + highRightPart * highRight.values[k];
      }
      return new Seen(lowLeft.towardViewer, out);
    }
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
    return Arrays.copyOf(values, MEASURES);
  }

  double branch(int k) {
    return values[MEASURES + k];
  }
}
