// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * What a risk becomes when the same places are worked less hard, without drawing again.
 *
 * <p>Strength over demand is taken as lognormal, so that the normal quantile of a probability moves
 * by ln(ratio of demands) over the spread of the logarithm. The spread is the wider of two: that of
 * the limit, and the one that the probability itself implies; a wider spread asks for a smaller
 * movement.
 */
final class LighterRisk {
  private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

  /** Standard normal quantile of 95 % [1]. */
  private static final double HIGH_QUANTILE = 1.6449;

  /** Probabilities at 0 or 1 are known to no better than some thousand draws tell [1]. */
  private static final double RESOLVED = 1e-5;

  /** No limit of wood is known closer than this, as a standard deviation of its logarithm [1]. */
  private static final double LEAST_SPREAD = 0.05;

  /** Closer to even odds than this, a probability implies no spread [1]. */
  private static final double NEAR_EVEN = 0.3;

  private final TrialResult full;
  private final Risk risk;

  LighterRisk(TrialResult full, Risk risk) {
    this.full = full;
    this.risk = risk;
  }

  /** The sum of the risk in a pose of the same plan that pulls less. */
  RiskSum in(TrialResult lighter) {
    return RiskSum.of(risk.failures(), failure -> moved(failure, ratio(failure, lighter)));
  }

  /** How hard a failure's place works, as a part of what it did [1]. */
  private double ratio(FailureRisk failure, TrialResult lighter) {
    ToDoubleFunction<PathSample> demand =
        switch (failure.mode()) {
          case CRACK -> PathSample::tensionStrain;
          case KINK -> PathSample::compressionStrain;
          case SPLIT -> PathSample::bendingStrain;
          case SHEAR, TEAR -> PathSample::moment;
        };
    Optional<String> where = failure.place().map(FailurePlace::segment);
    double before = most(full, where, demand);
    return before > 0 ? most(lighter, where, demand) / before : 1;
  }

  private static double most(
      TrialResult result, Optional<String> where, ToDoubleFunction<PathSample> demand) {
    List<SegmentTrial> all = result.segments();
    return all.stream()
        .filter(segment -> where.isEmpty() || segment.segment().equals(where.get()))
        .flatMap(segment -> segment.samples().stream())
        .mapToDouble(demand)
        .boxed()
        .max(Comparator.naturalOrder())
        .orElse(0.0);
  }

  static Probability moved(FailureRisk failure, double ratio) {
    if (!(ratio > 0)) {
      return new Probability(0, 0, 0);
    }
    double shift = Math.log(ratio) / spread(failure);
    Probability was = failure.probability();
    double p = moved(was.p(), shift);
    double low = moved(was.low(), shift);
    return new Probability(p, low, Math.max(low, moved(was.high(), shift)));
  }

  private static double moved(double p, double shift) {
    return p <= 0 ? 0 : NORMAL.cumulativeProbability(quantile(p) + shift);
  }

  private static double quantile(double p) {
    return NORMAL.inverseCumulativeProbability(Math.max(RESOLVED, Math.min(1 - RESOLVED, p)));
  }

  private static double spread(FailureRisk failure) {
    Range limit = failure.limit();
    double spread = LEAST_SPREAD;
    if (limit.low() > 0) {
      spread = Math.max(spread, Math.log(limit.high() / limit.low()) / (2 * HIGH_QUANTILE));
    }
    double margin = -quantile(failure.probability().p());
    if (failure.demand() > 0 && limit.middle() > 0 && Math.abs(margin) > NEAR_EVEN) {
      spread = Math.max(spread, Math.log(limit.middle() / failure.demand()) / margin);
    }
    return spread;
  }
}
