// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import java.util.Objects;
import java.util.function.DoubleConsumer;

/**
 * How the risk of a trial is sampled.
 *
 * @param samples draws, each a whole trial
 * @param seed the same seed gives the same numbers, on any number of processors
 * @param progress is told the part done, from 0 to 1, now and then and from any thread
 */
public record RiskOptions(int samples, long seed, DoubleConsumer progress) {
  /** Ten thousand draws, with nobody watching. */
  public static final RiskOptions DEFAULT = new RiskOptions(10_000, 1, part -> {});

  public RiskOptions {
    if (samples < 1) {
      throw new IllegalArgumentException("at least one draw is made, not " + samples);
    }
    Objects.requireNonNull(progress, "progress");
  }
}
