// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.tree.Hemisphere;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What frost and rising sap speak for or against.
 *
 * @param season when bark slips on this kind of tree
 * @param occasion the day and the tree
 * @param hard whether the bend goes beyond the working range in which the wood springs back
 */
record SeasonRules(SapSeason season, Occasion occasion, boolean hard) {

  /** All findings, those of rest and recovery among them. */
  List<SeasonFinding> findings() {
    List<SeasonFinding> out = new ArrayList<>();
    if (occasion.frost()) {
      out.add(
          new SeasonFinding(
              Verdict.Level.NO,
              "The wood is frozen, and frozen wood is not bent: it is 7 to 16 % stiffer between 0"
                  + " and -10 °C (Wood Handbook FPL-GTR-282, Table 5-16); that it snaps is common"
                  + " practice, no source.",
              "Wait until it has thawed right through."));
    }
    out.add(sap());
    out.addAll(new RestRules(occasion, hard).findings());
    return List.copyOf(out);
  }

  private SeasonFinding sap() {
    Optional<Hemisphere> hemisphere = occasion.condition().hemisphere();
    if (occasion.on().isEmpty()) {
      return SeasonFinding.note(
          "The day of the bend is not given, so the season is not judged: bark slips on "
              + season.kind()
              + " from "
              + hemisphere.map(season::span).orElseGet(this::bothSpans)
              + " (common practice, no source); keep out of these months.");
    }
    LocalDate day = occasion.on().get();
    return hemisphere.map(half -> sap(day, half)).orElseGet(() -> sapAnywhere(day));
  }

  private SeasonFinding sap(LocalDate day, Hemisphere half) {
    if (!season.isOn(day, half)) {
      return SeasonFinding.note(
          "Bark holds on "
              + day
              + ": on "
              + season.kind()
              + " it slips from "
              + season.span(half)
              + " (common practice, no source).");
    }
    return new SeasonFinding(
        hard ? Verdict.Level.WITH_PROTECTION : Verdict.Level.IN_STAGES,
        "Sap is rising and bark slips: on "
            + season.kind()
            + " from "
            + season.span(half)
            + " (common practice, no source; growers of fruit trees bend in spring all the same).",
        "Wait until "
            + season.over(day, half)
            + ", when growth has hardened and bark holds again (common practice, no source).");
  }

  private SeasonFinding sapAnywhere(LocalDate day) {
    boolean anywhere = season.isOn(day, Hemisphere.NORTH) || season.isOn(day, Hemisphere.SOUTH);
    return SeasonFinding.note(
        anywhere
            ? "The hemisphere is not given, so the season is not judged: bark slips on "
                + season.kind()
                + " from "
                + bothSpans()
                + " (common practice, no source), and "
                + day
                + " falls into one of these."
            : "Bark holds on " + day + " in either hemisphere (common practice, no source).");
  }

  private String bothSpans() {
    return season.span(Hemisphere.NORTH)
        + " in the north, "
        + season.span(Hemisphere.SOUTH)
        + " in the south";
  }
}
