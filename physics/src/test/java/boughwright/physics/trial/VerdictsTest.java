// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.plan.Hold;
import boughwright.modeller.tree.Condition;
import boughwright.modeller.tree.Features;
import boughwright.modeller.tree.Hemisphere;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VerdictsTest {
  private static final Hold PULL = new Hold.Tension(8);
  private static final Range LIMIT = new Range(0.010, 0.017, 0.029);
  private static final Probability HALF = new Probability(0.3, 0.1, 0.6);
  private static final Occasion SUMMER =
      new Occasion(
          Optional.of(LocalDate.of(2026, 7, 20)),
          new Condition(
              Optional.of(Hemisphere.NORTH), Optional.empty(), Optional.empty(), Optional.empty()),
          false);

  private static Verdict judge(VerdictCase tried, Risk risk, Occasion occasion) {
    TrialRequest request = tried.request();
    TrialResult result = VerdictCase.withRisk(Trial.run(request), risk);
    return Verdicts.of(request, result, occasion).orElseThrow();
  }

  private static Verdict judge(Probability probability) {
    return judge(VerdictCase.of(PULL), VerdictCase.crack(probability, 0.012, LIMIT), SUMMER);
  }

  @Test
  void trialWithoutRisk_hasNoVerdict() {
    TrialRequest request = VerdictCase.of(PULL).request();
    assertThat(Verdicts.of(request, Trial.run(request), SUMMER)).isEmpty();
  }

  @Test
  void smallRisk_isTakenWithNothingToChange() {
    Verdict verdict = judge(new Probability(0.01, 0.001, 0.05));
    assertThat(verdict.level()).isEqualTo(Verdict.Level.TAKES_IT);
    assertThat(verdict.firstChange()).isEmpty();
    assertThat(verdict.reason())
        .contains("crack on the top of b1, 4 mm from the union")
        .contains("about 1 in 100, could be 1 in 20");
  }

  @Test
  void verdict_isKeptWithTheResult() {
    TrialRequest request = VerdictCase.of(PULL).request();
    TrialResult result =
        VerdictCase.withRisk(Trial.run(request), VerdictCase.crack(HALF, 0.012, LIMIT));
    Verdict verdict = Verdicts.of(request, result, SUMMER).orElseThrow();
    assertThat(result.withVerdict(verdict).verdict()).contains(verdict);
    assertThat(result.withVerdict(verdict).risk()).isEqualTo(result.risk());
  }

  @ParameterizedTest
  @CsvSource({"acer-palmatum, red maple", "carpinus-betulus, ''"})
  void proxySpecies_isNamed(String species, String proxy) {
    VerdictCase tried = new VerdictCase(species, PULL, Features.NONE, Optional.empty());
    String reason = judge(tried, VerdictCase.crack(HALF, 0.012, LIMIT), SUMMER).reason();
    assertThat(reason.contains("stand in")).isEqualTo(!proxy.isEmpty());
    assertThat(reason).contains(proxy);
  }

  /** Demand over limit falls with the pull: half a standard deviation is exp(-0.5 s) of it. */
  @Test
  void firstChange_isAPullThatIsJudgedBetter() {
    Verdict verdict = judge(HALF);
    assertThat(verdict.level()).isEqualTo(Verdict.Level.NO);
    List<Double> pulls =
        Pattern.compile("a smaller movement: line g1 at about ([0-9.]+) N")
            .matcher(verdict.firstChange())
            .results()
            .map(match -> Double.parseDouble(match.group(1)))
            .toList();
    assertThat(pulls).hasSize(2);
    assertThat(pulls.get(1)).isLessThan(pulls.get(0));
    assertThat(pulls.get(0)).isLessThan(8);
    assertThat(verdict.firstChange()).contains("mm shorter").contains("the end of b1 moves");
  }

  @ParameterizedTest
  @CsvSource({"tension", "shortening", "length"})
  void firstChange_isFoundHoweverTheLineIsHeld(String held) {
    Hold hold =
        switch (held) {
          case "tension" -> PULL;
          case "shortening" -> new Hold.Shortening(0.04);
          default -> new Hold.Length(0.16);
        };
    String change =
        judge(VerdictCase.of(hold), VerdictCase.crack(HALF, 0.012, LIMIT), SUMMER).firstChange();
    assertThat(change)
        .startsWith(
            "For \"only with protection, and at your risk\" a smaller movement: line g1 at");
  }

  @Test
  void poseThatDoesNotHold_isRefusedWithAPullThatDoes() {
    VerdictCase tried = VerdictCase.of(new Hold.Shortening(0.1999));
    TrialRequest request = tried.request();
    TrialResult failed = lost(Trial.run(request));
    TrialResult result =
        VerdictCase.withRisk(failed, VerdictCase.crack(new Probability(1, 1, 1), 0.012, LIMIT));
    Verdict verdict = Verdicts.of(request, result, SUMMER).orElseThrow();
    assertThat(verdict.level()).isEqualTo(Verdict.Level.NO);
    assertThat(verdict.reason()).contains("No pose holds");
    assertThat(verdict.firstChange()).contains("a pose holds up to line g1 at about");
  }

  private static TrialResult lost(TrialResult result) {
    return new TrialResult(
        result.plan(),
        result.proposals(),
        new Outcome(false, false, 1, "it jumps"),
        List.of(),
        List.of(),
        Optional.empty(),
        result.held(),
        result.error(),
        Optional.empty(),
        Optional.empty(),
        result.warnings(),
        result.assumptions());
  }

  @Test
  void doubtThatDecides_isMeasuredFirst() {
    Risk base = VerdictCase.crack(new Probability(0.015, 0.0001, 0.2), 0.008, LIMIT);
    Risk risk =
        new Risk(
            base.failures(),
            base.tensions(),
            0,
            List.of(new InputShare("stiffness of b1", 0.6, "make a pull test on b1")),
            base.limits(),
            base.samples(),
            base.seed());
    Verdict verdict = judge(VerdictCase.of(PULL), risk, SUMMER);
    assertThat(verdict.level()).isEqualTo(Verdict.Level.IN_STAGES);
    assertThat(verdict.firstChange())
        .startsWith("Make a pull test on b1. Else for \"takes it\" a smaller movement");
  }

  @Test
  void season_takesTheVerdictDownAndSaysUntilWhen() {
    Occasion spring =
        new Occasion(Optional.of(LocalDate.of(2026, 4, 10)), SUMMER.condition(), false);
    Verdict verdict =
        judge(
            VerdictCase.of(new Hold.Shortening(0.08)),
            VerdictCase.crack(new Probability(0.001, 0, 0.01), 0.004, LIMIT),
            spring);
    assertThat(verdict.level()).isEqualTo(Verdict.Level.WITH_PROTECTION);
    assertThat(verdict.reason()).startsWith("Sap is rising").contains("about 1 in 1000");
    assertThat(verdict.firstChange()).contains("2026-06-16");
    assertThat(verdict.life()).anyMatch(sentence -> sentence.startsWith("Bark slips"));
  }

  @Test
  void season_neverMakesAVerdictBetter() {
    Occasion repotted =
        new Occasion(
            SUMMER.on(),
            new Condition(
                Optional.of(Hemisphere.NORTH),
                Optional.of(LocalDate.of(2026, 1, 10)),
                Optional.empty(),
                Optional.empty()),
            false);
    Verdict verdict = judge(VerdictCase.of(PULL), VerdictCase.crack(HALF, 0.012, LIMIT), repotted);
    assertThat(verdict.level()).isEqualTo(Verdict.Level.NO);
    assertThat(verdict.firstChange()).startsWith("For \"only with protection");
  }
}
