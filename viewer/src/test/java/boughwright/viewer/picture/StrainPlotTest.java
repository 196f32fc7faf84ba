// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.physics.trial.Range;
import boughwright.viewer.scene.LimbStrain;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.function.IntPredicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StrainPlotTest {
  private static final PictureSize SIZE = new PictureSize(1800, 1200);
  private static final Rect ROOM = new Rect(200, 200, 600, 500);

  private static LimbStrain limb(List<LimbStrain.Limits> limits) {
    return new LimbStrain(
        "b1",
        true,
        List.of(
            new LimbStrain.Fibres(0, 0.010, 0.012),
            new LimbStrain.Fibres(0.1, 0.006, 0.007),
            new LimbStrain.Fibres(0.2, 0, 0)),
        limits,
        List.of());
  }

  private static LimbStrain.Limits limits(double at) {
    return new LimbStrain.Limits(
        at, new Range(0.012, 0.016, 0.02), new Range(0.013, 0.02, 0.03), 0.003);
  }

  private static BufferedImage drawn(LimbStrain limb) {
    try (Page page = new Page(SIZE)) {
      new StrainPlot(page, limb, ROOM).draw();
      return page.image();
    }
  }

  private static int count(BufferedImage image, Rect part, IntPredicate test) {
    int count = 0;
    for (int y = (int) part.y(); y < part.bottom(); y++) {
      for (int x = (int) part.x(); x < part.right(); x++) {
        count += test.test(image.getRGB(x, y) & 0xFFFFFF) ? 1 : 0;
      }
    }
    return count;
  }

  private static IntPredicate is(Color colour) {
    return rgb -> rgb == (colour.getRGB() & 0xFFFFFF);
  }

  @Test
  void stretchedSide_liesAboveTheSqueezedOne() {
    BufferedImage image = drawn(limb(List.of(limits(0), limits(0.2))));
    Rect upper = new Rect(ROOM.x(), ROOM.y(), ROOM.width(), ROOM.height() / 4);
    Rect lower = new Rect(ROOM.x(), ROOM.y() + 320, ROOM.width(), ROOM.height() - 320);
    Rect whole = new Rect(0, 0, SIZE.width(), SIZE.height());
    assertThat(count(image, whole, is(Ink.STRETCHED))).isGreaterThan(300);
    assertThat(count(image, whole, is(Ink.SQUEEZED))).isGreaterThan(300);
    assertThat(count(image, lower, is(Ink.STRETCHED))).isZero();
    assertThat(count(image, upper, is(Ink.SQUEEZED))).isZero();
  }

  @Test
  void everything_staysInsideItsRoom() {
    BufferedImage image = drawn(limb(List.of(limits(0), limits(0.2))));
    IntPredicate ink = is(Ink.PAPER).negate();
    Rect whole = new Rect(0, 0, SIZE.width(), SIZE.height());
    assertThat(count(image, ROOM, ink)).isEqualTo(count(image, whole, ink)).isPositive();
  }

  @Test
  void woodWithoutLimits_isDrawnWithoutBands() {
    BufferedImage image = drawn(limb(List.of()));
    assertThat(count(image, ROOM, is(Ink.STRETCHED))).isGreaterThan(300);
  }

  @ParameterizedTest
  @CsvSource({"-1.3, 1.1, 7, 0.5, 5", "-6.5, 3.4, 12, 1, 10", "0, 226, 7, 50, 5"})
  void ticks_areRound_andNoMoreThanFit(double low, double high, int most, double step, int count) {
    PlotScale scale = new PlotScale(low, high, 100, 0);
    assertThat(scale.step(most)).isCloseTo(step, within(1e-12));
    assertThat(scale.ticks(most))
        .hasSize(count)
        .allSatisfy(tick -> assertThat(tick).isBetween(low, high));
    assertThat(scale.at(low)).isCloseTo(100, within(1e-9));
    assertThat(scale.at(high)).isCloseTo(0, within(1e-9));
  }
}
