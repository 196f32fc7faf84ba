// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import java.util.Optional;

/**
 * The first thing that would change what the wood allows, found by trying.
 *
 * @param request what was tried
 * @param result what came of it
 * @param risk what it risks
 */
record FirstChange(TrialRequest request, TrialResult result, Risk risk) {
  /** Inputs that decide less are not worth a walk to the bench; our choice [1]. */
  private static final double WORTH_MEASURING = 0.1;

  /** In words; empty where nothing need change. */
  String words(Verdict.Level level) {
    if (level == Verdict.Level.TAKES_IT) {
      return "";
    }
    SmallerMovement smaller = new SmallerMovement(request, result);
    if (!result.outcome().holds()) {
      return smaller
          .holding()
          .map(
              found ->
                  "A smaller movement: a pose holds up to "
                      + smaller.words(found)
                      + ". Try that and judge again.")
          .orElse("No pull in these places holds: tie the line elsewhere.");
    }
    String movement = movement(smaller, level) + moved(level);
    String measure = measure();
    return doubtDecides(level) && !measure.isEmpty()
        ? measure + " Else " + lowerFirst(movement)
        : (movement + (measure.isEmpty() ? "" : " Or: ") + measure).strip();
  }

  private String moved(Verdict.Level level) {
    return new MovedLine(request, result, risk).words(level).map(said -> " " + said).orElse("");
  }

  private String movement(SmallerMovement smaller, Verdict.Level level) {
    Verdict.Level next = Verdict.Level.values()[level.ordinal() - 1];
    Optional<SmallerMovement.Found> better = smaller.reaching(next, risk);
    if (better.isEmpty()) {
      return "No smaller movement by these lines is worth making: tie them elsewhere.";
    }
    String said = said(smaller, next, better.get());
    Optional<SmallerMovement.Found> best =
        next == Verdict.Level.TAKES_IT
            ? Optional.empty()
            : smaller.reaching(Verdict.Level.TAKES_IT, risk);
    return best.map(found -> said + " " + said(smaller, Verdict.Level.TAKES_IT, found))
        .orElse(said);
  }

  private static String said(
      SmallerMovement smaller, Verdict.Level level, SmallerMovement.Found found) {
    return "For \"" + level.words() + "\" a smaller movement: " + smaller.words(found) + ".";
  }

  /** True where the best guess alone would be judged better: what is not known decides. */
  private boolean doubtDecides(Verdict.Level level) {
    RiskSum sum = RiskSum.of(risk);
    RiskSum known = new RiskSum(sum.breaking(), sum.breaking(), sum.kink());
    return VerdictBounds.level(known).compareTo(level) < 0;
  }

  /** What a person can measure that decides a good part of the doubt. */
  private String measure() {
    return risk.shares().stream()
        .filter(share -> share.share() >= WORTH_MEASURING && !share.advice().isBlank())
        .findFirst()
        .map(share -> sentence(share.advice()))
        .orElse("");
  }

  private static String sentence(String advice) {
    String text = advice.strip();
    if (text.isEmpty()) {
      return text;
    }
    String capital = Character.toUpperCase(text.charAt(0)) + text.substring(1);
    return capital.endsWith(".") ? capital : capital + ".";
  }

  private static String lowerFirst(String text) {
    return Character.toLowerCase(text.charAt(0)) + text.substring(1);
  }
}
