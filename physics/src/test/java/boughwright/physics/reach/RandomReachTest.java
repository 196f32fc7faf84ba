// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Spot;
import boughwright.physics.rod.RodOptions;
import boughwright.physics.trial.SegmentTrial;
import boughwright.physics.trial.TreeStand;
import boughwright.physics.trial.Trial;
import boughwright.physics.trial.TrialRequest;
import boughwright.physics.trial.TrialResult;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Random branches with a target that a line is known to reach. Run with {@code
 * -Dboughwright.all=true} to hold all 200 to the brute force, with {@code
 * -Dboughwright.measured=true} to print what was measured.
 */
class RandomReachTest {
  private static final int BRANCHES = 200;

  /** The brute force takes a second for each; so many by default. */
  private static final int BRUTE = 40;

  /** What was asked for: within a millimetre, or half a percent of the limb. */
  private static final double NEAR = 0.001;

  private static final double NEAR_OF_LIMB = 0.005;

  /** The same lines, the same solver with the same options. */
  private static final double SAME_PLACE = 1e-9;

  private static final Set<AnchorSort> ANY = Set.of(AnchorSort.values());

  /** One branch and what came of it. */
  private record Case(
      int seed, Spot spot, Point3 target, AllChoices all, Reached reached, double seconds) {}

  private static Case of(int seed) {
    RandomBranch.Grown grown = RandomBranch.of(seed);
    Random random = new Random(1000L + seed);
    int last = grown.limb().size();
    Spot spot = new Spot(grown.limb().get(last / 2 + random.nextInt(last - last / 2)), 1);
    TreeStand stand =
        new TreeStand(grown.tree(), grown.plan(), RandomBranch.Grown.species(), RodOptions.DEFAULT);
    LimbPath path = new LimbPath(stand, spot);
    List<AnchorPlace> anchors = Anchorages.of(stand, path, ANY);
    AllChoices all = new AllChoices(stand, path.places(), anchors, path.length());
    Point3 target = all.someTarget(spot, random);
    long from = System.nanoTime();
    Reached reached =
        Reach.of(
            new ReachRequest(
                grown.tree(),
                grown.plan(),
                List.of(),
                RandomBranch.Grown.species(),
                new Target.Point(spot, target),
                new ReachRequest.Wishes(ANY, 1, 1)));
    return new Case(seed, spot, target, all, reached, (System.nanoTime() - from) / 1e9);
  }

  @Test
  void reach_comesAsNearAsTryingEverything_onRandomBranches() {
    int brute = Boolean.getBoolean("boughwright.all") ? BRANCHES : BRUTE;
    List<double[]> figures =
        IntStream.range(0, BRANCHES)
            .parallel()
            .mapToObj(
                seed -> {
                  Case one = of(seed);
                  assertThat(one.reached().choices()).as("choices of %d", seed).isNotEmpty();
                  Choice choice = one.reached().choices().get(0);
                  isItsOwnTrial(seed, one, choice);
                  double least = seed < brute ? one.all().least(one.spot(), one.target()) : 0;
                  return new double[] {
                    seed, choice.miss(), least, one.reached().limbLength(), one.seconds()
                  };
                })
            .toList();
    report(figures, brute);
    for (double[] row : figures.subList(0, brute)) {
      double allowed = Math.max(NEAR, NEAR_OF_LIMB * row[3]);
      assertThat(row[1] - row[2]).as("branch %.0f", row[0]).isLessThan(allowed);
    }
  }

  private static void isItsOwnTrial(int seed, Case one, Choice choice) {
    RandomBranch.Grown grown = RandomBranch.of(seed);
    Plan plan = grown.plan().withProposals(List.of(choice.proposal()));
    TrialResult trial =
        Trial.run(TrialRequest.of(grown.tree(), plan, RandomBranch.Grown.species()));
    assertThat(trial.outcome().holds()).isTrue();
    SegmentTrial bent = trial.segment(one.spot().segment()).orElseThrow();
    assertThat(bent.end().distance(choice.comesTo())).isLessThan(SAME_PLACE);
    assertThat(bent.end().distance(one.target())).isCloseTo(choice.miss(), within(SAME_PLACE));
  }

  private static org.assertj.core.data.Offset<Double> within(double offset) {
    return org.assertj.core.data.Offset.offset(offset);
  }

  private static void report(List<double[]> figures, int brute) {
    if (!Boolean.getBoolean("boughwright.measured")) {
      return;
    }
    double[] over =
        figures.subList(0, brute).stream().mapToDouble(row -> row[1] - row[2]).sorted().toArray();
    double[] miss = figures.stream().mapToDouble(row -> row[1]).sorted().toArray();
    double[] seconds = figures.stream().mapToDouble(row -> row[4]).sorted().toArray();
    System.out.printf(
        Locale.ROOT,
        "RandomReachTest: %d branches, %d by brute force: farther than it by median %.3f, 95 %%"
            + " %.3f, most %.3f mm; miss median %.3f, 95 %% %.3f, most %.3f mm; time median %.2f,"
            + " most %.2f s%n",
        figures.size(),
        brute,
        1000 * part(over, 0.5),
        1000 * part(over, 0.95),
        1000 * part(over, 1),
        1000 * part(miss, 0.5),
        1000 * part(miss, 0.95),
        1000 * part(miss, 1),
        part(seconds, 0.5),
        part(seconds, 1));
    figures.stream()
        .filter(row -> row[0] < brute && row[1] - row[2] > 3e-4)
        .forEach(
            row ->
                System.out.printf(
                    Locale.ROOT,
                    "  %.0f: %.2f against %.2f mm%n",
                    row[0],
                    1e3 * row[1],
                    1e3 * row[2]));
  }

  private static double part(double[] sorted, double part) {
    return sorted[(int) Math.round(part * (sorted.length - 1))];
  }
}
