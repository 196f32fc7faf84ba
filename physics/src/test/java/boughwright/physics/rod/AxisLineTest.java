// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A straight rod pulled toward its own base by a line along its axis buckles, and once buckled
 * snaps over under a force across: tables i of the test resources. With the anchor at the base the
 * critical tension is Euler's pi^2 EI / L^2, since the line always passes through the base.
 */
class AxisLineTest {
  private static final Measured MEASURED = new Measured(AxisLineTest.class);

  /** Critical tension and fold load, relative. */
  private static final double CRITICAL = 1e-3;

  private static final double FOLD = 1e-2;

  /** The part of second order that extrapolation by the root leaves, 4e-3 of the load. */
  private static final double FOLD_POSITION = 4e-3;

  /** The table is of a rod held in its plane: here by a section that much stiffer across. */
  private static final double FLAT = 10;

  @AfterAll
  static void report() {
    MEASURED.report();
  }

  static Stream<Table> rows() {
    return Table.of("i_line_buckling.csv");
  }

  private static RodLoads pull(double anchor, double tension, double across) {
    RodPlace tip = RodPlace.onAxis(0, 1);
    RodLine line =
        new RodLine(
            tip, new RodLine.FixedEnd(new Point3(-anchor, 0, 0)), new RodLine.Constant(tension));
    return new RodLoads(
        List.of(new RodLoads.DeadForce(tip, new Vector3(0, 0, across))),
        List.of(),
        List.of(),
        List.of(line));
  }

  private static RodStatus status(double taper, double anchor, double tension) {
    return RodSolver.solve(
            Rods.unit(taper, Vector3.ZERO), pull(anchor, tension, 0), RodOptions.DEFAULT)
        .status();
  }

  /** Halves the interval between a tension that holds and one that does not. */
  private static double critical(double taper, double anchor, double expected) {
    double holds = 0.5 * expected;
    double fails = 2 * expected;
    while (fails - holds > 1e-5 * expected) {
      double middle = 0.5 * (holds + fails);
      if (status(taper, anchor, middle).holds()) {
        holds = middle;
      } else {
        fails = middle;
      }
    }
    return holds;
  }

  @ParameterizedTest
  @MethodSource("rows")
  void straightRodOnAnAxisLine_losesStabilityAtTheCriticalTension(Table row) {
    double expected = row.number(2);
    double found = critical(row.number(1), row.number(0), expected);
    MEASURED.check("critical tension", found / expected - 1, CRITICAL);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void straightRodBeyondTheCriticalTension_isReportedUnstableBothWays(Table row) {
    RodStatus status = status(row.number(1), row.number(0), 1.3 * row.number(2));
    assertThat(status.holds()).isFalse();
    assertThat(status.stable()).isFalse();
    // a round rod falls to either of two sides square to each other
    assertThat(status.unstableModes()).isEqualTo(2);
    assertThat(status.reason()).isNotEmpty();
    // it was brought on from nothing, so it stops where it loses stability
    MEASURED.check("critical tension, where loading stopped", 1.3 * status.part() - 1, CRITICAL);
  }

  private static Table snapRow() {
    return Table.of("i_line_snap.csv").findFirst().orElseThrow();
  }

  /** Pushed aside, then drawn in, then the push taken off or turned round. */
  private static RodSolution pushedAside(double aside, double tension, double across) {
    LinearSection section = new LinearSection(1, aside, 0.8);
    List<RodLoads> stages =
        List.of(pull(0, 0, 1), pull(0, tension, 1), pull(0, tension, 0), pull(0, tension, across));
    return RodSolver.solve(
        Rods.single(Rods.rootFrame(0, 0), 1, Vector3.ZERO, s -> section),
        stages,
        RodOptions.DEFAULT);
  }

  @Test
  void buckledRod_withoutForceAcross_isWhereTheTablePutsIt() {
    Table row = snapRow();
    RodSolution solution = pushedAside(FLAT, row.number(2), 0);
    assertThat(solution.status().holds()).as(solution.status().toString()).isTrue();
    RodSection tip = solution.pose().section(0, 1);
    Point3 expected = new Point3(row.number(3), 0, row.number(4));
    MEASURED.check("buckled position / L", tip.position().distance(expected), Accuracy.POSITION);
    double angle = row.number(5);
    Vector3 tangent = tip.frame().turn(new Vector3(0, 0, 1));
    MEASURED.check(
        "buckled direction",
        tangent.minus(new Vector3(Math.cos(angle), 0, Math.sin(angle))).norm(),
        Accuracy.DIRECTION);
  }

  /** Near a fold the pose goes with the root of the load: from 1 and 4 parts off it to 0. */
  @Test
  void buckledRod_aLittleAboveTheFold_stillHoldsAndTendsToTheTabulatedFold() {
    double near = tipHeightAboveTheFold(1e-3);
    double farther = tipHeightAboveTheFold(4e-3);
    assertThat(near).isBetween(snapRow().number(8), farther);
    MEASURED.check("fold position / L", 2 * near - farther - snapRow().number(8), FOLD_POSITION);
  }

  private static double tipHeightAboveTheFold(double margin) {
    Table row = snapRow();
    RodSolution solution = pushedAside(FLAT, row.number(2), row.number(6) * (1 - margin));
    assertThat(solution.status().holds()).as(solution.status().toString()).isTrue();
    return solution.pose().section(0, 1).position().z();
  }

  @Test
  void buckledRod_pastTheFold_isReportedToSnap() {
    Table row = snapRow();
    double fold = row.number(6);
    RodSolution solution = pushedAside(FLAT, row.number(2), 1.5 * fold);
    assertThat(solution.status().holds()).isFalse();
    assertThat(solution.status().stage()).isEqualTo(3);
    assertThat(solution.status().reason()).isNotEmpty();
    MEASURED.check("fold", 1.5 * solution.status().part() - 1, FOLD);
    // the pose shown is the last that held, on the side it was pushed to
    assertThat(solution.pose().section(0, 1).position().z()).isGreaterThan(row.number(8) - 1e-3);
  }

  /**
   * A round rod may leave the plane. Buckled to one side it lies as well to any other (the line
   * goes through its clamp), so the least force against it lets it swing round.
   */
  @Test
  void buckledRoundRod_underTheLeastForceAgainstIt_swingsRound() {
    Table row = snapRow();
    RodStatus status = pushedAside(1, row.number(2), 0.5 * row.number(6)).status();
    assertThat(status.holds()).isFalse();
    assertThat(status.stage()).isEqualTo(3);
    assertThat(status.part()).isLessThan(FOLD);
    assertThat(status.unstableModes()).isEqualTo(1);
  }
}
