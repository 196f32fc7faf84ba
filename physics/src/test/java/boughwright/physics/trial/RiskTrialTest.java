// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.plan.Document;
import boughwright.modeller.species.SpeciesTable;
import java.nio.file.Path;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RiskTrialTest {
  private static final RiskOptions FEW = new RiskOptions(400, 7, part -> {});

  @TempDir Path folder;

  /** A level branch on an upright trunk, pulled straight down near its tip. */
  private TreeText branch(String hold) {
    return new TreeText("\"fagus-sylvatica\"")
        .unions("surface")
        .segment(
            "\"id\": \"t\", \"parent\": null, \"kind\": \"trunk\", \"start_mm\": [0,0,0],"
                + " \"end_mm\": [0,0,200], \"caliper_start_mm\": 40, \"caliper_end_mm\": 36")
        .segment(
            "\"id\": \"b1\", \"parent\": \"t\", \"along\": 0.9, \"kind\": \"branch\","
                + " \"end_mm\": [120,0,200], \"caliper_start_mm\": 12, \"caliper_end_mm\": 10")
        .segment(
            "\"id\": \"b2\", \"parent\": \"b1\", \"kind\": \"branch\","
                + " \"end_mm\": [240,0,215], \"caliper_start_mm\": 10, \"caliper_end_mm\": 8")
        .proposal(
            "\"guy_lines\": [{\"id\": \"g\", \"segment\": \"b2\", \"along\": 0.9,"
                + " \"anchor_mm\": [230, 0, 0], "
                + hold
                + "}]");
  }

  private TrialRequest request(TreeText text) {
    Document document = text.read(folder);
    return TrialRequest.of(
        document.tree(),
        document.plans().get(0),
        SpeciesTable.bundled().woodFor("fagus-sylvatica"));
  }

  private Risk risk(String hold) {
    return RiskTrial.run(request(branch(hold)), FEW).risk().orElseThrow();
  }

  private static Probability crack(Risk risk) {
    return risk.of(FailureMode.CRACK).orElseThrow().probability();
  }

  @Test
  void sameSeed_givesTheSameNumbersOnAnyNumberOfThreads() throws Exception {
    TrialRequest request = request(branch("\"tension_N\": 12"));
    Risk first = RiskTrial.run(request, FEW).risk().orElseThrow();
    ForkJoinPool one = new ForkJoinPool(1);
    ForkJoinPool five = new ForkJoinPool(5);
    try {
      Risk alone = one.submit(() -> RiskTrial.run(request, FEW).risk().orElseThrow()).get();
      Risk many = five.submit(() -> RiskTrial.run(request, FEW).risk().orElseThrow()).get();
      assertThat(alone).isEqualTo(first);
      assertThat(many).isEqualTo(first);
    } finally {
      one.shutdown();
      five.shutdown();
    }
  }

  @Test
  void anotherSeed_givesNearlyTheSameProbability() {
    TrialRequest request = request(branch("\"tension_N\": 28"));
    double first =
        crack(RiskTrial.run(request, new RiskOptions(4000, 1, p -> {})).risk().get()).p();
    double other =
        crack(RiskTrial.run(request, new RiskOptions(4000, 2, p -> {})).risk().get()).p();
    assertThat(first).isBetween(0.02, 0.9).isCloseTo(other, within(0.02));
  }

  @Test
  void harderPull_isMoreLikelyToCrackAndToKink() {
    Risk soft = risk("\"tension_N\": 12");
    Risk hard = risk("\"tension_N\": 28");
    assertThat(crack(soft).p()).isLessThan(0.2 * crack(hard).p());
    assertThat(soft.of(FailureMode.KINK).orElseThrow().probability().p())
        .isLessThan(hard.of(FailureMode.KINK).orElseThrow().probability().p());
  }

  @Test
  void pullNoBranchCarries_countsAsCracked() {
    TrialResult result = RiskTrial.run(request(branch("\"tension_N\": 400")), FEW);
    Risk risk = result.risk().orElseThrow();
    assertThat(risk.noPose()).isGreaterThan(0.2);
    assertThat(crack(risk).p()).isGreaterThan(0.95);
  }

  @Test
  void heldByLength_forceIsARangeAndStiffnessHardlyDecides() {
    Risk byLength = risk("\"shorten_mm\": 40");
    Range pull = byLength.tensions().get("g");
    assertThat(pull.high() / pull.low()).isBetween(2.0, 8.0);
    Risk byTension = risk("\"tension_N\": 12");
    Range fixed = byTension.tensions().get("g");
    assertThat(fixed.low()).isCloseTo(12, within(1e-6));
    assertThat(fixed.high()).isCloseTo(12, within(1e-6));
    assertThat(share(byTension, "stiffness")).isGreaterThan(3 * share(byLength, "stiffness"));
  }

  private static double share(Risk risk, String word) {
    return risk.shares().stream()
        .filter(share -> share.input().contains(word))
        .mapToDouble(InputShare::share)
        .sum();
  }

  @Test
  void place_isWhereAPersonFindsIt() {
    Risk risk = risk("\"tension_N\": 10");
    FailurePlace crack = risk.of(FailureMode.CRACK).orElseThrow().place().orElseThrow();
    FailurePlace kink = risk.of(FailureMode.KINK).orElseThrow().place().orElseThrow();
    assertThat(crack.segment()).isEqualTo("b1");
    assertThat(crack.side()).isEqualTo("top");
    assertThat(kink.side()).isEqualTo("underside");
    assertThat(crack.fromUnion().orElseThrow()).isLessThan(0.03);
  }

  @Test
  void intervals_holdTheirProbability() {
    for (FailureRisk failure : risk("\"tension_N\": 12").failures()) {
      Probability p = failure.probability();
      assertThat(p.p()).as(failure.mode().name()).isBetween(0.0, 1.0);
      assertThat(p.low()).as(failure.mode().name()).isLessThanOrEqualTo(p.high());
    }
  }

  @Test
  void modulusGivenWithItsSpread_narrowsForceAndRisk() {
    Risk table = risk("\"shorten_mm\": 40");
    TreeText known =
        branch("\"shorten_mm\": 40").tree("\"wood\": {\"b*\": {\"moe_GPa\": 7, \"moe_cv\": 0.05}}");
    Risk given = RiskTrial.run(request(known), FEW).risk().orElseThrow();
    Range before = table.tensions().get("g");
    Range after = given.tensions().get("g");
    assertThat(Math.log(after.high() / after.low()))
        .isLessThan(0.5 * Math.log(before.high() / before.low()));
  }

  @Test
  void straightLineWood_hasNoRisk() {
    TreeText elastic =
        branch("\"tension_N\": 12")
            .tree("\"wood\": {\"*\": {\"moe_GPa\": 7, \"response\": \"elastic\"}}");
    assertThat(RiskTrial.run(request(elastic), FEW).risk()).isEmpty();
  }

  @Test
  void progress_comesToTheEnd() {
    AtomicReference<Double> most = new AtomicReference<>(0.0);
    RiskOptions told = new RiskOptions(50, 1, part -> most.accumulateAndGet(part, Math::max));
    RiskTrial.run(request(branch("\"tension_N\": 8")), told);
    assertThat(most.get()).isEqualTo(1);
  }

  @Test
  void shares_areThereAndAddUpToNoMoreThanAll() {
    TreeText rough = branch("\"tension_N\": 24").tree("\"caliper_error_mm\": 1");
    Risk risk = RiskTrial.run(request(rough), FEW).risk().orElseThrow();
    assertThat(risk.shares().stream().mapToDouble(InputShare::share).sum()).isBetween(0.6, 1.1);
    assertThat(share(risk, "caliper at the start of \"b1\""))
        .isGreaterThan(0.03)
        .isGreaterThan(share(risk, "caliper at the end of \"b2\""));
  }

  @Test
  void assumptions_sayHowWellThingsAreRead() {
    TrialResult result = RiskTrial.run(request(branch("\"tension_N\": 8")), FEW);
    assertThat(result.assumptions())
        .anyMatch(line -> line.contains("within 0.3 mm nine times in ten"))
        .noneMatch(line -> line.contains("knots"));
  }
}
