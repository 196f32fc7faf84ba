// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.tree.Hemisphere;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Judges a trial: what its risk, the season and the state of the tree come to, in a grower's words.
 *
 * <p>The wood gives a level by the numbers of {@link VerdictBounds}; season and rest can only make
 * it worse. The first change is found by trying the same plan with less pull.
 */
public final class Verdicts {
  private final TrialRequest request;
  private final TrialResult result;
  private final Risk risk;
  private final Occasion occasion;

  private Verdicts(TrialRequest request, TrialResult result, Risk risk, Occasion occasion) {
    this.request = request;
    this.result = result;
    this.risk = risk;
    this.occasion = occasion;
  }

  /**
   * Judges a trial that has a risk; the same trial is judged the same at any time.
   *
   * @return empty where the result has no risk to judge
   */
  public static Optional<Verdict> of(TrialRequest request, TrialResult result, Occasion occasion) {
    return result.risk().map(risk -> new Verdicts(request, result, risk, occasion).judge());
  }

  private Verdict judge() {
    SapSeason sap = SapSeason.of(request.species());
    List<SeasonFinding> season = new SeasonRules(sap, occasion, isHard()).findings();
    RiskSum sum = RiskSum.of(risk);
    Verdict.Level wood = result.outcome().holds() ? VerdictBounds.level(sum) : Verdict.Level.NO;
    SeasonFinding strictest =
        season.stream().max(Comparator.comparing(SeasonFinding::best)).orElseThrow();
    boolean bySeason = strictest.best().compareTo(wood) > 0;
    VerdictReason reason = new VerdictReason(request, result, risk);
    String why = bySeason ? strictest.words() + " " + reason.words(wood) : reason.words(wood);
    FirstChange change = new FirstChange(request, result, risk);
    return new Verdict(
        bySeason ? strictest.best() : wood,
        why,
        bySeason ? strictest.until() : change.words(wood),
        season.stream().map(SeasonFinding::words).toList(),
        life(sap));
  }

  /** Beyond the range in which the wood springs back; so too where that is not known. */
  private boolean isHard() {
    if (result.peak().isEmpty()) {
      return !result.outcome().holds();
    }
    Peak peak = result.peak().get();
    OptionalDouble yield =
        risk.limits().stream()
            .filter(limit -> limit.segment().equals(peak.segment()))
            .mapToDouble(LimitSample::yield)
            .min();
    return yield.isEmpty() || peak.compressionStrain() > yield.getAsDouble();
  }

  private List<String> life(SapSeason sap) {
    return worstPlace()
        .map(place -> new LifeOutlook(request).beyond(place, barkSlips(sap)))
        .orElse(List.of());
  }

  private Optional<FailurePlace> worstPlace() {
    Optional<FailurePlace> breaking =
        risk.failures().stream()
            .filter(failure -> failure.mode() != FailureMode.KINK)
            .flatMap(failure -> failure.place().stream())
            .findFirst();
    return breaking.or(
        () ->
            result
                .peak()
                .map(
                    peak ->
                        new FailurePlace(
                            peak.segment(),
                            peak.along(),
                            peak.fromUnion(),
                            peak.round(),
                            peak.side())));
  }

  private boolean barkSlips(SapSeason sap) {
    Optional<Hemisphere> half = occasion.condition().hemisphere();
    return occasion.on().isPresent()
        && half.isPresent()
        && sap.isOn(occasion.on().get(), half.get());
  }
}
