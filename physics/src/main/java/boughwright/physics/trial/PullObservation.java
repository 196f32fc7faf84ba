// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import java.util.Objects;

/**
 * What one pull test says of the wood, made linear around a point: the measured movement minus the
 * predicted one, as logarithms, is what the steps from that point add up to, and noise.
 *
 * @param test id of the test
 * @param residual ln of the movement measured, base taken off, minus ln of the movement predicted
 *     at the point; of several readings the mean, each with the weight of its own error [1]
 * @param byLnMoe change of ln predicted with ln MOE of every segment, in file order, shape
 *     (segments) [1]
 * @param byStartReading change of ln predicted with the error taken off the caliper at the start of
 *     every segment, shape (segments) [1/m]
 * @param byEndReading the same at the end [1/m]
 * @param noiseVariance variance of the residual where the wood and the calipers are known [1]
 */
public record PullObservation(
    String test,
    double residual,
    double[] byLnMoe,
    double[] byStartReading,
    double[] byEndReading,
    double noiseVariance) {
  public PullObservation {
    Objects.requireNonNull(test, "test");
    byLnMoe = byLnMoe.clone();
    byStartReading = byStartReading.clone();
    byEndReading = byEndReading.clone();
    if (!Double.isFinite(residual) || !(noiseVariance > 0)) {
      throw new IllegalArgumentException(
          "an observation has a residual and noise, not " + residual + ", " + noiseVariance);
    }
  }

  /** The same with another variance of the noise [1]. */
  PullObservation withNoise(double variance) {
    return new PullObservation(test, residual, byLnMoe, byStartReading, byEndReading, variance);
  }
}
