// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import boughwright.modeller.plan.FrontMeasure;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What speaks for a front, or against it, compared with others.
 *
 * @param measure what is compared
 * @param gain how much more it adds to the score than in the others on average; negative where it
 *     speaks against the front [1]
 * @param value what it came to, in the unit of the measure
 * @param others what it came to in the others, from the smallest to the largest
 */
public record FrontReason(FrontMeasure measure, double gain, double value, Span others) {
  /** Less of the score than this speaks neither for nor against: half a point of 100. Choice. */
  private static final double LEAST = 0.005;

  /**
   * From the smallest to the largest value.
   *
   * @param low smallest
   * @param high largest
   */
  public record Span(double low, double high) {}

  public boolean isFor() {
    return gain > 0;
  }

  /**
   * What tells a front from others, what matters most first.
   *
   * @param others the fronts it is compared with; without any nothing tells it from them
   */
  public static List<FrontReason> of(FrontScore front, List<FrontScore> others) {
    return front.parts().stream()
        .map(part -> compared(part, others))
        .flatMap(Optional::stream)
        .filter(reason -> Math.abs(reason.gain()) >= LEAST)
        .sorted(Comparator.comparingDouble(reason -> -Math.abs(reason.gain())))
        .toList();
  }

  private static Optional<FrontReason> compared(FrontScore.Part part, List<FrontScore> others) {
    List<FrontScore.Part> same =
        others.stream().map(other -> other.part(part.measure())).flatMap(Optional::stream).toList();
    if (same.isEmpty()) {
      return Optional.empty();
    }
    double mean = same.stream().mapToDouble(FrontScore.Part::contribution).average().orElseThrow();
    double low = same.stream().mapToDouble(FrontScore.Part::value).min().orElseThrow();
    double high = same.stream().mapToDouble(FrontScore.Part::value).max().orElseThrow();
    return Optional.of(
        new FrontReason(
            part.measure(), part.contribution() - mean, part.value(), new Span(low, high)));
  }
}
