// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.physics.trial.FailureMode;
import boughwright.physics.trial.FailurePlace;
import boughwright.physics.trial.FailureRisk;
import boughwright.physics.trial.InputShare;
import boughwright.physics.trial.LimitSample;
import boughwright.physics.trial.LineTrial;
import boughwright.physics.trial.PathSample;
import boughwright.physics.trial.Peak;
import boughwright.physics.trial.Probability;
import boughwright.physics.trial.Range;
import boughwright.physics.trial.Risk;
import boughwright.physics.trial.SegmentTrial;
import boughwright.physics.trial.TrialResult;
import boughwright.physics.trial.Verdict;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Risks and verdicts set down by hand, for tests of words and drawing. Nothing is computed. */
public final class InventedRisks {
  /** Strain at which fibres yield [1]. */
  public static final double YIELD = 0.0027;

  /** Strain at which the outside cracks, over the strain at the peak [1]. */
  public static final Range CRACK = new Range(0.95, 1.6, 2.6);

  /** Strain at which the inside kinks, over the strain at the peak [1]. */
  public static final Range KINK = new Range(0.8, 1.3, 2.1);

  /** How far from the union the place lies [m]. */
  public static final double FROM_UNION = 0.014;

  /** One in 30, could be one in 14. */
  public static final Probability ONE_IN_THIRTY = new Probability(1 / 30.0, 0.009, 1 / 14.0);

  /** One in 8, could be one in 4. */
  public static final Probability ONE_IN_EIGHT = new Probability(1 / 8.0, 0.05, 1 / 4.0);

  private static final Probability NEVER = new Probability(0, 0, 1e-5);

  private InventedRisks() {}

  /** The result with a risk at its peak and the verdict that fits it. */
  public static TrialResult with(TrialResult result) {
    return with(result, Optional.of(risk(result)), Optional.of(verdict()));
  }

  public static TrialResult with(
      TrialResult result, Optional<Risk> risk, Optional<Verdict> verdict) {
    return new TrialResult(
        result.plan(),
        result.proposals(),
        result.outcome(),
        result.lines(),
        result.segments(),
        result.peak(),
        result.held(),
        result.error(),
        risk,
        verdict,
        result.warnings(),
        result.assumptions());
  }

  public static Verdict verdict() {
    return new Verdict(
        Verdict.Level.IN_STAGES,
        "The outside cracks in about 1 in 30 bends like this one, and the inside kinks in 1 in 8.",
        "Two thirds of the movement now and the rest in six weeks would make it one the wood takes.",
        List.of("15 March is before the sap rises: a good time."),
        List.of("Live growth stays beyond the bend."));
  }

  /** Crack and kink at the peak, nothing else near; one line known to a third. */
  public static Risk risk(TrialResult result) {
    Peak peak = result.peak().orElseThrow();
    Map<String, Range> tensions = new HashMap<>();
    for (LineTrial line : result.lines()) {
      double middle = line.tension();
      tensions.put(line.id(), new Range(0.64 * middle, middle, 1.52 * middle));
    }
    return new Risk(
        List.of(
            at(peak, FailureMode.KINK, ONE_IN_EIGHT, KINK),
            at(peak, FailureMode.CRACK, ONE_IN_THIRTY, CRACK),
            away(FailureMode.SPLIT),
            away(FailureMode.SHEAR),
            away(FailureMode.TEAR)),
        tensions,
        0.004,
        List.of(
            new InputShare("strength of this wood", 0.46, "make a pull test"),
            new InputShare("caliper of " + peak.segment(), 0.31, "measure it again"),
            new InputShare("stiffness of branch wood", 0.02, "")),
        limits(result),
        10000,
        1);
  }

  private static FailureRisk at(Peak peak, FailureMode mode, Probability probability, Range limit) {
    boolean kink = mode == FailureMode.KINK;
    return new FailureRisk(
        mode,
        probability,
        Optional.of(
            new FailurePlace(
                peak.segment(),
                peak.along(),
                OptionalDouble.of(FROM_UNION),
                kink ? Math.PI : 0,
                kink ? "underside" : "top")),
        kink ? peak.compressionStrain() : peak.tensionStrain(),
        scaled(limit, peak.bendingStrain()));
  }

  private static FailureRisk away(FailureMode mode) {
    return new FailureRisk(mode, NEVER, Optional.empty(), 0, new Range(1e6, 2e6, 3e6));
  }

  private static List<LimitSample> limits(TrialResult result) {
    List<LimitSample> limits = new ArrayList<>();
    double peak = result.peak().orElseThrow().bendingStrain();
    for (SegmentTrial segment : result.segments()) {
      if (segment.bendingStrain() > 0) {
        for (PathSample sample : segment.samples()) {
          double thin = peak * Math.pow(sample.radius() / 0.01, -0.21);
          limits.add(
              new LimitSample(
                  segment.segment(),
                  sample.along(),
                  scaled(CRACK, thin),
                  scaled(KINK, thin),
                  YIELD));
        }
      }
    }
    return limits;
  }

  private static Range scaled(Range range, double by) {
    return new Range(range.low() * by, range.middle() * by, range.high() * by);
  }
}
