// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the wood does under the proposals of a plan.
 *
 * @param plan plan id
 * @param proposals ids of the proposals tried
 * @param outcome whether there is a pose to show
 * @param lines guy-lines in plan order; empty when the outcome does not hold
 * @param segments segments left after the cuts, in file order; empty when the outcome does not hold
 * @param peak the place bent hardest; empty when nothing is bent
 * @param held {@code tension}, {@code length}, {@code weight}, {@code hand}, {@code coil}, or
 *     several joined by a plus sign
 * @param error the solver's own estimate of its error
 * @param risk what it risks; empty where the wood has no limit or the risk was not asked for
 * @param verdict the answer in words; empty where there is no risk to judge
 * @param warnings what the person should look at
 * @param assumptions what the numbers rest on, the most important first
 */
public record TrialResult(
    String plan,
    List<String> proposals,
    Outcome outcome,
    List<LineTrial> lines,
    List<SegmentTrial> segments,
    Optional<Peak> peak,
    String held,
    ErrorEstimate error,
    Optional<Risk> risk,
    Optional<Verdict> verdict,
    List<String> warnings,
    List<String> assumptions) {

  /**
   * The solver's own estimate of its error, from halving its elements.
   *
   * @param position largest error of any point [m]
   * @param tension largest relative error of any tension [1]
   * @param strain largest error of the bending strain relative to the peak [1]
   */
  public record ErrorEstimate(double position, double tension, double strain) {}

  public TrialResult {
    proposals = List.copyOf(proposals);
    lines = List.copyOf(lines);
    segments = List.copyOf(segments);
    warnings = List.copyOf(warnings);
    assumptions = List.copyOf(assumptions);
  }

  /**
   * The same result with the risk it carries.
   *
   * @param found the risk
   * @param notes what it rests on besides
   */
  public TrialResult withRisk(Risk found, List<String> notes) {
    List<String> all = Stream.concat(assumptions.stream(), notes.stream()).toList();
    return with(Optional.of(found), verdict, all);
  }

  /** The same result with a verdict, in place of any it had. */
  public TrialResult withVerdict(Verdict judged) {
    return with(risk, Optional.of(judged), assumptions);
  }

  private TrialResult with(Optional<Risk> found, Optional<Verdict> judged, List<String> restsOn) {
    return new TrialResult(
        plan, proposals, outcome, lines, segments, peak, held, error, found, judged, warnings,
        restsOn);
  }

  /** The trial of one segment, if it is still there. */
  public Optional<SegmentTrial> segment(String id) {
    return segments.stream().filter(segment -> segment.segment().equals(id)).findFirst();
  }
}
