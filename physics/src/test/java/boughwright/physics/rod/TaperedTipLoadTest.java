// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Tapered cantilevers under a dead load at the tip: table c of the test resources. Its follower
 * rows are left out: lines and weights do not follow the tip, and a following force has no
 * potential, so the solver does not offer one.
 */
class TaperedTipLoadTest {
  private static final Measured MEASURED = new Measured(TaperedTipLoadTest.class);

  @AfterAll
  static void report() {
    MEASURED.report();
  }

  static Stream<Table> deadRows() {
    return Table.of("c_tapered_tipload.csv").filter(row -> row.text(2).equals("dead"));
  }

  @ParameterizedTest
  @MethodSource("deadRows")
  void taperedRod_underTipLoad_isWhereTheTablePutsIt(Table row) {
    double taper = row.number(0);
    double load = row.number(1);
    RodCase.Wood wood = RodCase.Wood.ofRatio(1, 1 - taper, 4 / Math.PI, 0.8);
    RodCase rods =
        RodCase.single(
            Rods.rootFrame(0, 0),
            RodCase.Limb.trunk(1, wood, Vector3.ZERO),
            List.of(new RodCase.Pull(RodCase.Place.on(0, 1), new Vector3(0, 0, -load))),
            List.of());
    RodSolution solution = rods.solve();
    assertThat(solution.status().holds()).isTrue();

    RodSection tip = solution.pose().section(0, 1);
    Point3 expected = new Point3(row.number(3), 0, row.number(4));
    MEASURED.check("position / L", tip.position().distance(expected), Accuracy.POSITION);
    double angle = row.number(5);
    Vector3 tangent = tip.frame().turn(new Vector3(0, 0, 1));
    MEASURED.check(
        "direction",
        tangent.minus(new Vector3(Math.cos(angle), 0, Math.sin(angle))).norm(),
        Accuracy.DIRECTION);
    double baseMoment = solution.pose().section(0, 0).bendingMoment();
    MEASURED.check("base moment", baseMoment / row.number(6) - 1, Accuracy.MOMENT);

    double[] guess = {0, 0, -load, 0, row.number(6), 0};
    ShootingPose truth = new ShootingTree(rods).polish(guess);
    assertThat(truth.at(0, 1).position().distance(expected)).isLessThan(Accuracy.PRINTED);
    Peak peak = Peak.of(rods, solution.pose(), 0);
    MEASURED.check("strain", peak.strain() / row.number(7) - 1, Accuracy.STRAIN);
    MEASURED.check(
        "true strain at the place, short of the largest",
        1 - truth.fibreStrain(0, peak.s()) / row.number(7),
        Accuracy.STRAIN);
  }
}
