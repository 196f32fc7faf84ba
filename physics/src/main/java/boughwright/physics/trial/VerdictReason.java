// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.species.Species;
import boughwright.modeller.tree.TreeWood;
import java.util.Locale;
import java.util.Optional;

/**
 * Why a verdict is what it is, in words: the way of failing, its place, its odds, and whose values
 * stand in.
 *
 * @param request what was tried
 * @param result what came of it
 * @param risk what it risks
 */
record VerdictReason(TrialRequest request, TrialResult result, Risk risk) {

  String words(Verdict.Level level) {
    return wood(level) + proxy();
  }

  private String wood(Verdict.Level level) {
    if (!result.outcome().holds()) {
      return "No pose holds under this pull: " + result.outcome().where() + ".";
    }
    Optional<FailureRisk> first =
        risk.failures().stream().filter(f -> f.mode() != FailureMode.KINK).findFirst();
    Optional<FailureRisk> kink = risk.of(FailureMode.KINK);
    RiskSum sum = RiskSum.of(risk);
    if (first.isEmpty() && kink.isEmpty()) {
      return "Nothing in the wood comes near its limit.";
    }
    String breaking = first.map(failure -> breaking(failure, sum)).orElse("Nothing breaks.");
    String inside =
        kink.map(failure -> " Inside, " + said(failure) + ", which is damage the limb outlives.")
            .orElse("");
    String care =
        level == Verdict.Level.WITH_PROTECTION
            ? " Wrap it first (raffia, wet and tight; common practice, no source)."
            : "";
    return breaking + inside + care;
  }

  private String breaking(FailureRisk first, RiskSum sum) {
    String any = Odds.words(sum.probability());
    String one = Odds.words(first.probability());
    String said = "First to break: " + said(first);
    return any.equals(one) ? said + "." : said + "; breaking in any way " + any + ".";
  }

  private String said(FailureRisk failure) {
    return named(failure) + ", " + Odds.words(failure.probability());
  }

  private static String named(FailureRisk failure) {
    return switch (failure.mode()) {
      case KINK -> "a kink" + at(failure, true);
      case CRACK -> "a crack" + at(failure, true);
      case SPLIT -> "a split along the middle" + at(failure, false);
      case SHEAR -> "fibres sliding along each other" + at(failure, false);
      case TEAR ->
          "a tear at the union" + failure.place().map(p -> " of " + p.segment()).orElse("");
    };
  }

  private static String at(FailureRisk failure, boolean onBark) {
    if (failure.place().isEmpty()) {
      return "";
    }
    FailurePlace place = failure.place().get();
    String where =
        place.fromUnion().isPresent()
            ? String.format(
                Locale.ROOT, "%.0f mm from the union", 1000 * place.fromUnion().getAsDouble())
            : String.format(Locale.ROOT, "%.0f %% along it", 100 * place.along());
    String side = onBark ? " on the " + place.side() + " of " : " in ";
    return side + place.segment() + ", " + where;
  }

  private String proxy() {
    Species species = request.species();
    boolean tableWood = request.tree().wood() instanceof TreeWood.OfSpecies;
    return tableWood && species.isProxy()
        ? " " + species.botanicalName() + ": " + species.proxyFor().orElseThrow() + "."
        : "";
  }
}
