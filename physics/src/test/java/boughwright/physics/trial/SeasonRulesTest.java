// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.species.SpeciesTable;
import boughwright.modeller.tree.Condition;
import boughwright.modeller.tree.Hemisphere;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SeasonRulesTest {
  private static final Condition NORTH = condition(Hemisphere.NORTH, null, null, null);

  private static Condition condition(
      Hemisphere half, String repotted, String collected, String worked) {
    return new Condition(Optional.ofNullable(half), day(repotted), day(collected), day(worked));
  }

  private static Optional<LocalDate> day(String text) {
    return Optional.ofNullable(text).map(LocalDate::parse);
  }

  private static List<SeasonFinding> findings(
      SapSeason season, String on, Condition condition, boolean hard) {
    return new SeasonRules(season, new Occasion(day(on), condition, false), hard).findings();
  }

  private static Verdict.Level best(List<SeasonFinding> findings) {
    return findings.stream().map(SeasonFinding::best).max(Comparator.naturalOrder()).orElseThrow();
  }

  private static String words(List<SeasonFinding> findings) {
    return String.join(" ", findings.stream().map(SeasonFinding::words).toList());
  }

  @ParameterizedTest
  @CsvSource({
    "acer-palmatum, DECIDUOUS",
    "carpinus-betulus, DECIDUOUS",
    "larix-decidua, DECIDUOUS",
    "generic-hardwood, DECIDUOUS",
    "ulmus-parvifolia, RING_POROUS",
    "zelkova-serrata, RING_POROUS",
    "quercus-robur, RING_POROUS",
    "quercus-virginiana, EVERGREEN",
    "ficus, EVERGREEN",
    "juniperus-chinensis, CONIFER",
    "pinus-thunbergii, CONIFER",
    "generic-softwood, CONIFER",
    "unknown, UNKNOWN"
  })
  void woods_haveTheSeasonOfTheirKind(String key, SapSeason season) {
    assertThat(SapSeason.of(SpeciesTable.bundled().find(key).get(0))).isEqualTo(season);
  }

  @ParameterizedTest
  @CsvSource({
    "DECIDUOUS, NORTH, 2026-03-14, false",
    "DECIDUOUS, NORTH, 2026-03-15, true",
    "DECIDUOUS, NORTH, 2026-06-15, true",
    "DECIDUOUS, NORTH, 2026-06-16, false",
    "DECIDUOUS, NORTH, 2028-02-29, false",
    "RING_POROUS, NORTH, 2028-02-29, false",
    "RING_POROUS, NORTH, 2028-03-01, true",
    "DECIDUOUS, SOUTH, 2026-09-15, true",
    "DECIDUOUS, SOUTH, 2026-04-01, false",
    "DECIDUOUS, SOUTH, 2026-12-16, false",
    "CONIFER, NORTH, 2026-04-14, false",
    "CONIFER, NORTH, 2026-07-31, true",
    "CONIFER, SOUTH, 2026-10-14, false",
    "CONIFER, SOUTH, 2026-12-31, true",
    "CONIFER, SOUTH, 2027-01-31, true",
    "CONIFER, SOUTH, 2027-02-01, false"
  })
  void bark_slipsInItsMonths(SapSeason season, Hemisphere half, String day, boolean slips) {
    assertThat(season.isOn(LocalDate.parse(day), half)).isEqualTo(slips);
  }

  @ParameterizedTest
  @CsvSource({
    "DECIDUOUS, NORTH, 2026-04-01, 2026-06-16",
    "CONIFER, SOUTH, 2026-11-20, 2027-02-01",
    "CONIFER, SOUTH, 2027-01-20, 2027-02-01"
  })
  void waitingForBark_endsWhenItHolds(SapSeason season, Hemisphere half, String day, String over) {
    LocalDate until = season.over(LocalDate.parse(day), half);
    assertThat(until).isEqualTo(over);
    assertThat(season.isOn(until, half)).isFalse();
    assertThat(season.isOn(until.minusDays(1), half)).isTrue();
  }

  @ParameterizedTest
  @CsvSource({"true, WITH_PROTECTION", "false, IN_STAGES"})
  void risingSap_takesAHardBendFurtherDown(boolean hard, Verdict.Level level) {
    List<SeasonFinding> found = findings(SapSeason.DECIDUOUS, "2026-04-10", NORTH, hard);
    assertThat(best(found)).isEqualTo(level);
    assertThat(found.get(0).until()).contains("2026-06-16").contains("no source");
  }

  @Test
  void frozenWood_isRefused() {
    List<SeasonFinding> found =
        new SeasonRules(SapSeason.CONIFER, new Occasion(day("2026-01-10"), NORTH, true), false)
            .findings();
    assertThat(best(found)).isEqualTo(Verdict.Level.NO);
    assertThat(words(found)).contains("Table 5-16");
  }

  @ParameterizedTest
  @CsvSource({
    ", NORTH, 15 March to 15 June",
    ", SOUTH, 15 September to 15 December",
    ", , '15 March to 15 June in the north, 15 September to 15 December in the south'",
    "2026-04-10, , falls into one of these"
  })
  void unknownDayOrHemisphere_namesTheMonthsToAvoid(String on, Hemisphere half, String said) {
    List<SeasonFinding> found =
        findings(SapSeason.DECIDUOUS, on, condition(half, null, null, null), true);
    assertThat(words(found)).contains("not given").contains(said);
    assertThat(best(found)).isEqualTo(Verdict.Level.TAKES_IT);
  }

  @Test
  void dayThatSuitsBothHemispheres_needsNoneGiven() {
    List<SeasonFinding> found =
        findings(SapSeason.DECIDUOUS, "2026-07-20", Condition.UNKNOWN, true);
    assertThat(words(found)).contains("in either hemisphere");
  }

  @ParameterizedTest
  @CsvSource({
    "collected, 2025-07-21, true, NO",
    "collected, 2025-07-20, true, WITH_PROTECTION",
    "collected, 2024-07-21, false, IN_STAGES",
    "collected, 2024-07-20, true, TAKES_IT",
    "repotted, 2026-04-21, true, NO",
    "repotted, 2026-04-21, false, WITH_PROTECTION",
    "repotted, 2026-04-20, true, IN_STAGES",
    "repotted, 2025-07-20, true, TAKES_IT",
    "worked hard, 2026-04-21, true, NO",
    "worked hard, 2026-04-21, false, IN_STAGES",
    "worked hard, 2025-07-21, true, WITH_PROTECTION",
    "worked hard, 2025-07-21, false, TAKES_IT",
    "worked hard, 2025-07-20, true, TAKES_IT",
    "worked hard, 2026-07-21, true, TAKES_IT"
  })
  void tree_isGivenItsRest(String what, String since, boolean hard, Verdict.Level level) {
    String[] dates = new String[3];
    dates[Arrays.asList("repotted", "collected", "worked hard").indexOf(what)] = since;
    Condition condition = condition(Hemisphere.NORTH, dates[0], dates[1], dates[2]);
    assertThat(best(findings(SapSeason.DECIDUOUS, "2026-07-20", condition, hard))).isEqualTo(level);
  }

  @ParameterizedTest
  @CsvSource({"2025-02-27, NO", "2025-02-28, WITH_PROTECTION"})
  void yearAfterALeapDay_endsOnTheLastOfFebruary(String on, Verdict.Level level) {
    Condition condition = condition(Hemisphere.NORTH, null, "2024-02-29", null);
    assertThat(best(findings(SapSeason.DECIDUOUS, on, condition, true))).isEqualTo(level);
  }

  @Test
  void pastThatLiesAhead_isSaidAndNotCounted() {
    Condition condition = condition(Hemisphere.NORTH, "2026-08-01", null, null);
    List<SeasonFinding> found = findings(SapSeason.DECIDUOUS, "2026-07-20", condition, true);
    assertThat(words(found)).contains("2026-08-01").contains("not counted");
  }

  @Test
  void pastWithoutADay_saysFromWhenABendIsDue() {
    Condition condition = condition(Hemisphere.NORTH, "2026-01-31", null, null);
    List<SeasonFinding> found = findings(SapSeason.DECIDUOUS, null, condition, true);
    assertThat(words(found)).contains("no hard bend before 2027-01-31");
    assertThat(words(found)).contains("Not said: when it was last collected, worked hard");
  }
}
