// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.plan.FrontMeasure;
import java.util.Arrays;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What was measured of one front at one planting angle. Immutable.
 *
 * <p>Units and signs are those that {@link FrontMeasure} states; what cannot be said is absent.
 */
public final class FrontReading {
  private final FrontPose pose;

  /** Shape: one per measure; NaN where it cannot be said. */
  private final double[] values;

  /** Keeps the array: it must not be changed afterwards. */
  FrontReading(FrontPose pose, double[] values) {
    this.pose = Objects.requireNonNull(pose, "pose");
    this.values = values;
  }

  /** A reading given by its values; a measure that is not among them cannot be said. */
  public FrontReading(FrontPose pose, Map<FrontMeasure, Double> values) {
    this(pose, nothing());
    values.forEach(
        (measure, value) -> {
          if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(measure + " is " + value);
          }
          this.values[measure.ordinal()] = value;
        });
  }

  /** One place for each measure, nothing said yet. */
  static double[] nothing() {
    double[] values = new double[FrontMeasure.values().length];
    Arrays.fill(values, Double.NaN);
    return values;
  }

  public FrontPose pose() {
    return pose;
  }

  /** What was measured, or empty where it cannot be said of this tree. */
  public OptionalDouble value(FrontMeasure measure) {
    double value = values[measure.ordinal()];
    return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  /** The value as a plain number: NaN where it cannot be said. For loops over many poses. */
  public double raw(FrontMeasure measure) {
    return values[measure.ordinal()];
  }

  /** One per measure, NaN where it cannot be said; not to be changed. */
  double[] values() {
    return values;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof FrontReading reading
        && pose.equals(reading.pose)
        && Arrays.equals(values, reading.values);
  }

  @Override
  public int hashCode() {
    return 31 * pose.hashCode() + Arrays.hashCode(values);
  }

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(pose.toString());
    for (FrontMeasure measure : FrontMeasure.values()) {
      value(measure).ifPresent(value -> text.append(' ').append(measure).append('=').append(value));
    }
    return text.toString();
  }
}
