// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * What measuring can tell: how much differences of scores would change if the tree were measured
 * again.
 *
 * @param fronts for each front, how far its score must be below the first one's for nine other
 *     measurements in ten to say so too; 0 for the first [1]
 * @param sides how far the best and the worst side must be apart for that [1]
 */
public record FrontDoubt(List<Double> fronts, double sides) {
  /** Enough to know a spread within a sixth or so. */
  private static final int MEASUREMENTS = 24;

  /** Nine in ten draws of a normal distribution lie below so many deviations. */
  private static final double NINE_IN_TEN = 1.2816;

  /** Rounding alone makes scores differ by this much [1]. */
  private static final double ROUNDING = 1e-6;

  public FrontDoubt {
    fronts = List.copyOf(fronts);
  }

  /** Measures the tree again and again, and looks at what was found. */
  public static FrontDoubt of(FrontCase tree, FrontRules rules, Fronts found) {
    List<FrontScore> poses = new ArrayList<>();
    found.fronts().forEach(front -> poses.add(front.score()));
    poses.add(found.worst());
    double[][] scores = new double[MEASUREMENTS][];
    IntStream.range(0, MEASUREMENTS)
        .parallel()
        .forEach(
            n -> {
              FrontGauge gauge = tree.measuredAgain(n);
              scores[n] =
                  poses.stream()
                      .mapToDouble(pose -> rules.total(gauge.read(pose.pose())))
                      .toArray();
            });
    List<Double> behind = new ArrayList<>();
    for (int k = 0; k < poses.size(); k++) {
      int other = k;
      behind.add(
          ROUNDING
              + NINE_IN_TEN
                  * deviation(
                      IntStream.range(0, MEASUREMENTS)
                          .mapToDouble(n -> scores[n][0] - scores[n][other])));
    }
    return new FrontDoubt(behind.subList(0, poses.size() - 1), behind.get(poses.size() - 1));
  }

  private static double deviation(DoubleStream values) {
    double[] all = values.toArray();
    double mean = DoubleStream.of(all).average().orElse(0);
    return Math.sqrt(
        DoubleStream.of(all).map(v -> (v - mean) * (v - mean)).sum() / (all.length - 1));
  }

  /** Whether the first front is better than another, as far as measuring can tell. */
  public boolean tells(Fronts found, int front) {
    double behind =
        found.fronts().get(0).score().total() - found.fronts().get(front).score().total();
    return behind > fronts.get(front);
  }

  /** Whether any side is better than another, as far as measuring can tell. */
  public boolean tellsSides(Fronts found) {
    return !found.fronts().isEmpty()
        && found.fronts().get(0).score().total() - found.worst().total() > sides;
  }
}
