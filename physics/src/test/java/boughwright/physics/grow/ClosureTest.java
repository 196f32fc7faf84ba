// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.grow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.tree.Growing;
import boughwright.modeller.tree.Hemisphere;
import boughwright.modeller.tree.Setting;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ClosureTest {
  private static final double MM = 1e-3;

  private static YearlyRing where(Growing.Where where) {
    return YearlyRing.of(
        setting(new Growing(Optional.of(where), OptionalDouble.empty(), Map.of())));
  }

  private static YearlyRing measured(double mm) {
    return YearlyRing.of(
        setting(new Growing(Optional.empty(), OptionalDouble.of(mm * MM), Map.of())));
  }

  private static Setting setting(Growing growing) {
    return new Setting(Optional.empty(), growing, List.of());
  }

  private static Years closing(double mm, YearlyRing ring) {
    return WoundClosure.of(mm * MM, ring, CutTime.BEFORE_MIDSUMMER).years();
  }

  /**
   * Widths that closed in one season on field trees of modest, moderate and substantial growth
   * (Neely 1979, Journal of Arboriculture 5(6):135-140, abstract); annual wounds under 12 mm likely
   * closed in a year (Neely 1988, 14(6):148-152).
   */
  @ParameterizedTest
  @ValueSource(doubles = {9.5, 12.7, 17.5, 12})
  void inTheGround_publishedWidthsCloseInASeason_withinTheBand(double mm) {
    Years years = closing(mm, where(Growing.Where.GROUND));
    assertThat(years.low()).isLessThan(1);
    assertThat(years.high()).isGreaterThan(1);
    assertThat(years.likely()).isBetween(0.6, 1.7);
  }

  /** The best guesses lie on both sides of the season that was seen (Neely 1979). */
  @Test
  void inTheGround_theMiddleOfThePublishedWidthsTakesAboutASeason() {
    YearlyRing ground = where(Growing.Where.GROUND);
    assertThat(closing(9.5, ground).likely()).isLessThan(1);
    assertThat(closing(17.5, ground).likely()).isGreaterThan(1);
    assertThat(closing(12.7, ground).likely()).isCloseTo(1, within(0.25));
  }

  /** Callus outgrows the ring: more than 1 to 1 in ten species (Neely 1988, 14(10):250-254). */
  @Test
  void callus_neverComesSlowerThanTheSlowestRing() {
    Years years = closing(20, measured(2));
    double byTheSlowestRing = 10 / (0.7 * 2);
    assertThat(years.high()).isLessThan(byTheSlowestRing);
    assertThat(years.likely()).isLessThan(10 / 2.0);
  }

  /** By hand: 1.3 x 0.5 mm a side a year is 1.3 mm of width a year. */
  @ParameterizedTest
  @CsvSource({"1.3, 1", "2.6, 2", "13, 10"})
  void aPottedTree_closesSoManyMillimetresAYear(double mm, double years) {
    assertThat(closing(mm, measured(0.5)).likely()).isCloseTo(years, within(1e-9));
  }

  /** By drawing: nine in ten times lie in the band where ring and callus are lognormal. */
  @Test
  void theBand_holdsAboutNineInTenOfDrawnTrees() {
    YearlyRing pot = where(Growing.Where.POT);
    Years years = closing(6, pot);
    Random random = new Random(5);
    int inside = 0;
    for (int n = 0; n < 20_000; n++) {
      double ring = drawn(random, 0.1, Math.sqrt(0.1 * 0.5), 0.5);
      double callus = drawn(random, 1.0, 1.3, 2.0);
      double time = 3 / (ring * callus);
      inside += time >= years.low() && time <= years.high() ? 1 : 0;
    }
    assertThat(inside / 20_000.0).isCloseTo(0.9, within(0.02));
  }

  private static double drawn(Random random, double low, double middle, double high) {
    double z = random.nextGaussian() / 1.645;
    return middle * Math.pow(z < 0 ? middle / low : high / middle, z);
  }

  @Test
  void wide_isLate_andNarrowIsNot() {
    YearlyRing box = where(Growing.Where.BOX);
    assertThat(WoundClosure.of(30 * MM, box, CutTime.UNSAID).isLate()).isTrue();
    assertThat(WoundClosure.of(4 * MM, box, CutTime.UNSAID).isLate()).isFalse();
    assertThat(WoundClosure.of(4 * MM, box, CutTime.UNSAID).mayBeLate()).isTrue();
    assertThat(WoundClosure.of(1 * MM, box, CutTime.UNSAID).mayBeLate()).isFalse();
  }

  @Test
  void treeThatDoesNotGrow_neverCloses() {
    assertThat(closing(5, measured(0)).low()).isInfinite();
    assertThat(closing(5, new YearlyRing(0, 0, 1e-3, "seen")).low()).isCloseTo(1.25, within(1e-9));
    assertThat(closing(5, new YearlyRing(0, 1e-3, 1e-3, "seen")).high()).isInfinite();
    assertThat(closing(0, measured(0))).isEqualTo(Years.NONE);
  }

  @ParameterizedTest
  @CsvSource({
    "2026-03-01, NORTH, BEFORE_MIDSUMMER",
    "2026-06-20, NORTH, BEFORE_MIDSUMMER",
    "2026-08-01, NORTH, AFTER_MIDSUMMER",
    "2026-12-25, NORTH, BEFORE_MIDSUMMER",
    "2026-08-01, SOUTH, BEFORE_MIDSUMMER",
    "2026-02-01, SOUTH, AFTER_MIDSUMMER"
  })
  void afterMidsummer_callusWaits(String day, Hemisphere half, CutTime time) {
    CutTime found = CutTime.of(Optional.of(LocalDate.parse(day)), Optional.of(half));
    assertThat(found).isEqualTo(time);
    double later =
        WoundClosure.of(0.01, measured(1), found).years().likely()
            - closing(10, measured(1)).likely();
    assertThat(later).isCloseTo(time == CutTime.AFTER_MIDSUMMER ? 0.4 : 0, within(1e-9));
  }

  @Test
  void whenNobodySaid_onlyTheLateEndWaits() {
    assertThat(CutTime.of(Optional.empty(), Optional.of(Hemisphere.NORTH)))
        .isEqualTo(CutTime.UNSAID);
    Years said = closing(10, measured(1));
    Years unsaid = WoundClosure.of(0.01, measured(1), CutTime.UNSAID).years();
    assertThat(unsaid.likely()).isEqualTo(said.likely());
    assertThat(unsaid.high()).isGreaterThan(said.high());
  }

  /** By hand: 20 mm to 30 mm is 5 mm of wood on each side. */
  @Test
  void thickening_isHalfTheDifferenceByTheRing() {
    Years years = Thickening.between(20 * MM, 30 * MM, measured(1));
    assertThat(years.likely()).isCloseTo(5, within(1e-9));
    assertThat(years.low()).isCloseTo(5 / 1.3, within(1e-9));
    assertThat(years.high()).isCloseTo(5 / 0.7, within(1e-9));
    assertThat(Thickening.between(30 * MM, 20 * MM, measured(1))).isEqualTo(Years.NONE);
    assertThat(Thickening.between(20 * MM, 30 * MM, measured(0)).low()).isInfinite();
  }

  /**
   * Little by little: what the wood below lays on in cross-section, the shoot lays on too
   * (Pressler's law), until the shoot has its part.
   */
  @ParameterizedTest
  @CsvSource({"10, 40, 0.6", "20, 50, 0.7", "0, 30, 0.6", "8, 12, 0.9"})
  void shoot_laysOnAsMuchWoodAsWhatIsBelow(double shoot, double below, double part) {
    double step = 1e-4;
    double years = 0;
    double thin = shoot * shoot;
    double thick = below;
    while (Math.sqrt(thin) < part * thick) {
      double next = thick + 2 * 1.5 * step;
      thin += next * next - thick * thick;
      thick = next;
      years += step;
    }
    Years found = Thickening.toPart(shoot * MM, below * MM, part, measured(1.5));
    assertThat(found.likely()).isCloseTo(years, within(2 * step));
  }

  @Test
  void shootThatHasItsPart_takesNoTime() {
    assertThat(Thickening.toPart(25 * MM, 40 * MM, 0.6, measured(1))).isEqualTo(Years.NONE);
    assertThat(Thickening.toPart(10 * MM, 40 * MM, 0.6, measured(0)).likely()).isInfinite();
  }

  @Test
  void whatIsNoCaliperOrPart_isRefused() {
    YearlyRing ring = measured(1);
    assertThatThrownBy(() -> Thickening.between(0, 1, ring))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Thickening.toPart(0.01, 0.02, 1, ring))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> WoundClosure.of(-1, ring, CutTime.UNSAID))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Years(2, 1, 3)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void later_isWhatBothTake() {
    assertThat(Years.later(new Years(1, 4, 6), new Years(2, 3, 9))).isEqualTo(new Years(2, 4, 9));
  }
}
