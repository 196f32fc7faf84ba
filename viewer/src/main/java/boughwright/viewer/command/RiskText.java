// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.physics.trial.FailureMode;
import boughwright.physics.trial.FailurePlace;
import boughwright.physics.trial.FailureRisk;
import boughwright.physics.trial.Odds;
import boughwright.physics.trial.Range;
import boughwright.physics.trial.Risk;
import boughwright.viewer.scene.FailureWords;
import boughwright.viewer.scene.RangeWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Each way of failing: how likely, where to mark it, how hard it works against what it bears. */
final class RiskText {
  private final TextPage page;
  private final Risk risk;

  private RiskText(TextPage page, Risk risk) {
    this.page = page;
    this.risk = risk;
  }

  static void write(TextPage page, Risk risk) {
    new RiskText(page, risk).write();
  }

  private void write() {
    page.heading("What can go wrong, and where to mark it on the bark");
    List<FailureRisk> remote = new ArrayList<>();
    for (FailureRisk failure : risk.failures()) {
      if (isRemote(failure)) {
        remote.add(failure);
      } else {
        entry(failure);
      }
    }
    if (!remote.isEmpty()) {
      page.inner(remote(remote));
    }
    noPose();
    page.inner(
        "\"Could be\" is the bad end of what nobody knows of this species and tree: in one of"
            + " twenty such cases it is worse. Drawn "
            + risk.samples()
            + " times, seed "
            + risk.seed()
            + ".");
  }

  private boolean isRemote(FailureRisk failure) {
    boolean kinkOrCrack = failure.mode() == FailureMode.KINK || failure.mode() == FailureMode.CRACK;
    // the best guess may lie above the interval: nearly certain in one state out of a hundred
    return Math.max(failure.probability().p(), failure.probability().high()) < Odds.LEAST
        && !(kinkOrCrack && failure.place().isPresent());
  }

  private String remote(List<FailureRisk> failures) {
    String words =
        failures.stream()
            .map(failure -> FailureWords.what(failure.mode()))
            .collect(Collectors.joining(", "));
    return capital(words) + ": " + (failures.size() > 1 ? "each " : "") + Odds.words(0) + ".";
  }

  private void entry(FailureRisk failure) {
    page.inner(
        capital(FailureWords.what(failure.mode())) + ": " + Odds.words(failure.probability()));
    failure.place().ifPresent(place -> page.further(mark(place)));
    if (failure.place().isPresent()) {
      page.further(margin(failure));
    }
  }

  private static String mark(FailurePlace place) {
    long degrees = Math.floorMod(Math.round(Math.toDegrees(place.round())), 360L);
    return "mark " + FailureWords.marked(place) + " (" + degrees + " degrees round it)";
  }

  private static String margin(FailureRisk failure) {
    return switch (failure.mode()) {
      case KINK ->
          "squeezed by "
              + Shown.percent(failure.demand())
              + "; wrinkles at "
              + RangeWords.percent(failure.limit());
      case CRACK ->
          "stretched by "
              + Shown.percent(failure.demand())
              + "; cracks at "
              + RangeWords.percent(failure.limit());
      case SPLIT, SHEAR, TEAR ->
          "works at " + RangeWords.percent(used(failure), " of what it bears");
    };
  }

  /** The demand as a part of the limit, which is least where the limit is highest. */
  private static Range used(FailureRisk failure) {
    Range limit = failure.limit();
    return new Range(
        failure.demand() / limit.high(),
        failure.demand() / limit.middle(),
        failure.demand() / limit.low());
  }

  private void noPose() {
    if (risk.noPose() > 0) {
      page.inner(
          "No pose held at all in "
              + Odds.words(risk.noPose())
              + " of the draws: the limb would snap over or give way. They count as cracked.");
    }
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
