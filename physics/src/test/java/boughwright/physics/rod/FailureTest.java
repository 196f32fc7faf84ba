// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What cannot hold is said not to hold, with the place and a reason, and in good time. */
class FailureTest {
  private static final RodPlace TIP = RodPlace.onAxis(0, 1);

  /** Far above what any of these takes; only a hang is caught. */
  private static final Duration HANG = Duration.ofSeconds(20);

  private static RodSolution solve(RodLoads loads) {
    return Assertions.assertTimeoutPreemptively(
        HANG, () -> RodSolver.solve(Rods.unit(0, Vector3.ZERO), loads, RodOptions.DEFAULT));
  }

  private static RodLoads line(Point3 anchor, RodLine.Hold hold) {
    return RodLoads.ofLines(new RodLine(TIP, new RodLine.FixedEnd(anchor), hold));
  }

  private static void checkRefused(RodSolution solution) {
    RodStatus status = solution.status();
    assertThat(status.holds()).as(status.toString()).isFalse();
    assertThat(status.reason()).isNotBlank();
    assertThat(status.part()).isBetween(0.0, 1.0 - 1e-9);
    assertThat(status.span()).isZero();
    assertThat(status.s()).isBetween(0.0, 1.0);
    assertThat(solution.error().position()).isInfinite();
    // the pose given is the last that held: still a rod of its length
    assertThat(solution.pose().section(0, 1).position().distance(Point3.ORIGIN))
        .isLessThanOrEqualTo(1 + 1e-9);
  }

  /** A straight rod cannot shorten: a line on its axis has nothing to bend it by. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 0.25, 1})
  void axisLineByLength_onAStraightRod_isRefused(double behind) {
    RodSolution solution =
        solve(line(new Point3(-behind, 0, 0), new RodLine.Length(0.95 * (1 + behind), 0)));
    checkRefused(solution);
    assertThat(solution.status().part()).isLessThan(0.01);
    assertThat(solution.status().reason()).contains("nothing gives way to a line");
  }

  /** The anchor is farther from the base than rod and line together. */
  @Test
  void lineShorterThanAnyReach_isRefusedWhereTheRodIsStraight() {
    double length = 0.9;
    RodSolution solution = solve(line(new Point3(1.2, 0, 1.6), new RodLine.Length(length, 0)));
    checkRefused(solution);
    // at best the line is 2 - 1 = 1 long, the rod straight toward the anchor
    double start = new Point3(1, 0, 0).distance(new Point3(1.2, 0, 1.6));
    double reached = start + solution.status().part() * (length - start);
    assertThat(reached).isGreaterThan(1);
  }

  @ParameterizedTest
  @CsvSource({"0.9, 0, -0.3", "0.9, 0.2, -0.3", "0.5, 0, -0.5", "0.97, 0, -0.1"})
  void lineDrawnUntilItsEndsMeet_isRefused(double x, double y, double z) {
    RodSolution solution = solve(line(new Point3(x, y, z), new RodLine.Constant(1000)));
    checkRefused(solution);
    assertThat(solution.status().reason()).contains("ends have come together");
    assertThat(solution.lines().get(0).length()).isLessThan(0.01);
  }

  @Test
  void tieDrawnUntilItsEndsMeet_isRefused() {
    RodLoads loads =
        RodLoads.ofLines(
            new RodLine(
                RodPlace.onAxis(0, 1),
                new RodLine.MovingEnd(new RodPlace(0, 0.9, new Vector3(0.01, 0, 0))),
                new RodLine.Constant(1e5)));
    RodSolution solution = solve(loads);
    checkRefused(solution);
    assertThat(solution.status().reason()).contains("ends have come together");
  }

  @Test
  void columnUnderTooLargeAWeight_isRefused() {
    RodModel column = Rods.single(Rods.rootFrame(Math.PI / 2, 0), 1, Vector3.ZERO, Rods.tapered(0));
    // Euler: pi^2 EI / (4 L^2)
    double critical = Math.PI * Math.PI / 4;
    RodSolution holds =
        RodSolver.solve(column, Rods.tipForce(0, 0, -0.999 * critical), RodOptions.DEFAULT);
    RodSolution falls =
        RodSolver.solve(column, Rods.tipForce(0, 0, -1.001 * critical), RodOptions.DEFAULT);
    assertThat(holds.status().holds()).isTrue();
    checkRefused(falls);
    assertThat(falls.status().unstableModes()).isEqualTo(2);
    double reached = falls.status().part() * 1.001;
    assertThat(reached).isBetween(0.999, 1.001);
    // what passes through the pose shown is what it still bore
    double borne = falls.pose().section(0, 0).force().norm();
    assertThat(borne).isCloseTo(reached * critical, within(1e-9));
  }

  @Test
  void placesThatAreNot_areProgrammingMistakes() {
    RodLoads beyond =
        RodLoads.ofForces(new RodLoads.DeadForce(RodPlace.onAxis(0, 1.1), Vector3.ZERO));
    RodLoads elsewhere =
        RodLoads.ofForces(new RodLoads.DeadForce(RodPlace.onAxis(1, 0.5), Vector3.ZERO));
    for (RodLoads loads : List.of(beyond, elsewhere)) {
      assertThatThrownBy(() -> solve(loads))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("no such place");
    }
  }
}
