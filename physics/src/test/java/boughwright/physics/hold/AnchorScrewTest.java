// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AnchorScrewTest {
  private static final double POUND = 4.4482216152605;
  private static final double INCH = 0.0254;

  /** The printed loads are cut to whole pounds per inch: up to one of 86. */
  private static final double PRINTED = 0.012;

  /**
   * Loads for use of wood screws, 2850 G² D in pounds per inch of thread: the first is a worked
   * example (engineeringtoolbox.com, Wood screws, withdrawal force; seen), the others are from the
   * table of the National Design Specification for Wood Construction (from memory). The load that
   * draws a screw out is 15700 G² D, 5.5 times as much.
   */
  @ParameterizedTest
  @CsvSource({"0.45, 0.190, 109", "0.50, 0.190, 135", "0.43, 0.164, 86"})
  void drawnOut_isTheTableOfScrews_timesTheirSafety(double gravity, double inches, double pounds) {
    double load = AnchorScrew.drawnOut(gravity, inches * INCH, INCH);
    double printed = 15700.0 / 2850 * pounds * POUND;
    assertThat(load).isCloseTo(printed, within(PRINTED * printed));
  }

  @ParameterizedTest
  @CsvSource({"50, 0.004", "200, 0.005"})
  void threadNeeded_holdsFiveAndAHalfTimesThePull_inWetWood(double pull, double shank) {
    double thread = AnchorScrew.threadNeeded(pull, shank);
    assertThat(0.7 * AnchorScrew.drawnOut(0.4, shank, thread))
        .isCloseTo(5.5 * pull, within(1e-9 * pull));
  }
}
