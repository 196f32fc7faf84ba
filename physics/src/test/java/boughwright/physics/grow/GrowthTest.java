// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.grow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.tree.Growing;
import boughwright.modeller.tree.Hemisphere;
import boughwright.modeller.tree.Setting;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class GrowthTest {
  private static final double DAY = 86_400;

  private static GrowthCalendar from(String day, Hemisphere half, GrowingSeason season) {
    return new GrowthCalendar(Optional.of(LocalDate.parse(day)), Optional.of(half), season);
  }

  private static double share(GrowthCalendar calendar, String until) {
    LocalDate start = calendar.start().orElseThrow();
    return calendar.laidBy(ChronoUnit.DAYS.between(start, LocalDate.parse(until)) * DAY);
  }

  @ParameterizedTest
  @EnumSource(Hemisphere.class)
  void everyYear_laysOneRing_whateverDayItIsCountedFrom(Hemisphere half) {
    for (GrowingSeason season : GrowingSeason.values()) {
      for (String day : List.of("2026-01-01", "2026-06-20", "2026-10-30", "2027-02-28")) {
        GrowthCalendar calendar = from(day, half, season);
        String later = LocalDate.parse(day).plusYears(3).toString();
        assertThat(share(calendar, later)).as(season + " " + day).isCloseTo(3, within(0.01));
      }
    }
  }

  /** Begin of May to end of August (iForest 9:375, 2016), fastest in June (Rossi et al. 2006). */
  @Test
  void conifers_restInWinter_andGrowFastestAboutTheSolstice() {
    GrowthCalendar north = from("2026-09-01", Hemisphere.NORTH, GrowingSeason.CONIFER);
    assertThat(share(north, "2027-04-30")).isZero();
    assertThat(north.growsAt(60 * DAY)).isFalse();
    double june = share(north, "2027-07-01") - share(north, "2027-06-01");
    double may = share(north, "2027-06-01") - share(north, "2027-05-01");
    double august = share(north, "2027-08-31") - share(north, "2027-08-01");
    assertThat(june).isGreaterThan(2 * may).isGreaterThan(2 * august);
    assertThat(may + august).isPositive();
  }

  @ParameterizedTest
  @CsvSource({
    "2026-12-21, NORTH, DECIDUOUS, false",
    "2026-12-21, SOUTH, DECIDUOUS, true",
    "2026-04-01, NORTH, DECIDUOUS, false",
    "2026-04-01, NORTH, RING_POROUS, true",
    "2026-06-21, SOUTH, CONIFER, false"
  })
  void season_isThatOfItsHalfOfTheEarth(
      String day, Hemisphere half, GrowingSeason season, boolean grows) {
    assertThat(from(day, half, season).growsAt(0)).isEqualTo(grows);
  }

  @Test
  void withoutADay_growthIsSpreadOverTheYear() {
    GrowthCalendar calendar =
        new GrowthCalendar(Optional.empty(), Optional.empty(), GrowingSeason.DECIDUOUS);
    assertThat(calendar.isSeasonal()).isFalse();
    assertThat(calendar.laidBy(GrowthCalendar.YEAR / 4)).isCloseTo(0.25, within(1e-12));
    assertThat(GrowingSeason.DECIDUOUS.span(Hemisphere.SOUTH)).isEqualTo("15 October to 10 March");
  }

  @ParameterizedTest
  @CsvSource({"GROUND, 2, 8", "BOX, 0.5, 2", "POT, 0.1, 0.5"})
  void ring_isWhatGrowersSeeThere(Growing.Where where, double low, double high) {
    YearlyRing ring = ring(Optional.of(where), OptionalDouble.empty());
    assertThat(ring.low()).isCloseTo(low * 1e-3, within(1e-9));
    assertThat(ring.high()).isCloseTo(high * 1e-3, within(1e-9));
    assertThat(ring.basis()).contains("no source");
  }

  @Test
  void ringMeasured_countsBeforeWhereItGrows() {
    YearlyRing ring = ring(Optional.of(Growing.Where.GROUND), OptionalDouble.of(0.4e-3));
    assertThat(ring.middle()).isEqualTo(0.4e-3);
    assertThat(ring.basis()).contains("0.40 mm").contains("measured");
    assertThat(YearlyRing.of(Setting.UNSAID).basis()).contains("nobody said");
    assertThatThrownBy(() -> new YearlyRing(2, 1, 3, "")).hasMessageContaining("no rings");
  }

  private static YearlyRing ring(Optional<Growing.Where> where, OptionalDouble ring) {
    return YearlyRing.of(
        new Setting(Optional.empty(), new Growing(where, ring, Map.of()), List.of()));
  }

  /** 0.1 to 0.2 mm of give against an even ring of 1 mm a year: 36 to 73 days. */
  @Test
  void bite_comesWhenGrowthHasUsedUpWhatGives() {
    GrowthCalendar even =
        new GrowthCalendar(Optional.empty(), Optional.empty(), GrowingSeason.DECIDUOUS);
    WireBite bite = WireBite.of(new YearlyRing(1e-3, 1e-3, 1e-3, "test"), even, 0);
    assertThat(bite.earliest().orElseThrow() / DAY).isCloseTo(36.5, within(1.0));
    assertThat(bite.likely().orElseThrow() / DAY).isCloseTo(54.8, within(1.0));
    assertThat(bite.latest().orElseThrow() / DAY).isCloseTo(73.1, within(1.0));
    assertThat(bite.look().orElseThrow()).isLessThan(bite.earliest().orElseThrow());
    WireBite loose = WireBite.of(new YearlyRing(0, 1e-3, 1e-3, "test"), even, 0.3e-3);
    assertThat(loose.likely().orElseThrow()).isGreaterThan(2 * bite.likely().orElseThrow());
    assertThat(loose.latest()).isEmpty();
  }

  @Test
  void wirePutOnInAutumn_bitesOnlyInSpring() {
    GrowthCalendar calendar = from("2026-10-01", Hemisphere.NORTH, GrowingSeason.DECIDUOUS);
    WireBite bite =
        WireBite.of(ring(Optional.of(Growing.Where.GROUND), OptionalDouble.empty()), calendar, 0);
    assertThat(bite.earliest().orElseThrow() / DAY).isBetween(197.0, 230.0);
  }
}
