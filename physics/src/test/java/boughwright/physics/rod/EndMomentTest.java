// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.geometry.Vector3;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A moment at the tip rolls a straight uniform rod into a circle (theta = M L / EI, elementary);
 * tapered and curved rods in closed form, tables b of the test resources.
 */
class EndMomentTest {
  private static final Measured MEASURED = new Measured(EndMomentTest.class);

  @AfterAll
  static void report() {
    MEASURED.report();
  }

  static Stream<Table> uniform() {
    return Table.of("b_endmoment_uniform.csv");
  }

  static Stream<Table> tapered() {
    return Table.of("b_endmoment_tapered_curved.csv");
  }

  /** A moment about -y lifts the tip of a rod along x. */
  private static RodSolution solve(double taper, double curvature, double moment) {
    RodLoads loads =
        new RodLoads(
            List.of(),
            List.of(new RodLoads.DeadMoment(RodPlace.onAxis(0, 1), new Vector3(0, -moment, 0))),
            List.of(),
            List.of());
    return RodSolver.solve(
        Rods.unit(taper, new Vector3(-curvature, 0, 0)), loads, RodOptions.DEFAULT);
  }

  private static void checkTip(RodSolution solution, double x, double z, double angle) {
    assertThat(solution.status().holds()).isTrue();
    RodSection tip = solution.pose().section(0, 1);
    MEASURED.check(
        "position / L",
        Math.hypot(tip.position().x() - x, tip.position().z() - z),
        Accuracy.POSITION);
    Vector3 tangent = tip.frame().turn(new Vector3(0, 0, 1));
    Vector3 expected = new Vector3(Math.cos(angle), 0, Math.sin(angle));
    MEASURED.check("direction", tangent.minus(expected).norm(), Accuracy.DIRECTION);
  }

  @ParameterizedTest
  @MethodSource("uniform")
  void uniformRod_underEndMoment_rollsIntoAnArc(Table row) {
    double moment = row.number(0);
    RodSolution solution = solve(0, 0, moment);
    checkTip(solution, row.number(1), row.number(2), moment);
    for (double s = 0; s <= 1; s += 0.125) {
      MEASURED.check(
          "strain", solution.pose().section(0, s).addedCurvature() / moment - 1, Accuracy.STRAIN);
    }
  }

  @ParameterizedTest
  @MethodSource("tapered")
  void taperedCurvedRod_underEndMoment_isWhereTheTablePutsIt(Table row) {
    double taper = row.number(0);
    double moment = row.number(1);
    RodSolution solution = solve(taper, row.number(2), moment);
    checkTip(solution, row.number(3), row.number(4), row.number(5));
    double atTip = (1 - taper) * solution.pose().section(0, 1).addedCurvature();
    MEASURED.check("strain", atTip / row.number(6) - 1, Accuracy.STRAIN);
    double radiusThere = 1 - taper / 2;
    double halfway = radiusThere * solution.pose().section(0, 0.5).addedCurvature();
    MEASURED.check("strain", halfway / moment * Math.pow(radiusThere, 3) - 1, Accuracy.STRAIN);
  }
}
