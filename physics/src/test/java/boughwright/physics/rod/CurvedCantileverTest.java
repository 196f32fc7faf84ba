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
 * The curved cantilever of Bathe and Bolourchi 1979, https://doi.org/10.1002/nme.1620140703: an arc
 * of 45 degrees and radius 100 in the level plane, a vertical force at its tip, E = 1e7, G = 5e6,
 * unit square section; lengths and forces as published. Table e of the test resources.
 */
class CurvedCantileverTest {
  private static final Measured MEASURED = new Measured(CurvedCantileverTest.class);
  private static final double RADIUS = 100;
  private static final double LENGTH = RADIUS * Math.PI / 4;

  /**
   * Shear and stretch, which the solver leaves out, move the tip by this part of the length at most
   * (the table's own rows with and without them).
   */
  private static final double SHEAR_AND_STRETCH = 1.2e-4;

  /** Early elements; published tips differ by up to this part of the length from each other. */
  private static final double PUBLISHED = 0.015;

  @AfterAll
  static void report() {
    MEASURED.report();
  }

  static Stream<Table> rows() {
    return Table.of("e_curved_cantilever_3d.csv");
  }

  private static RodCase rods(double force, double torsionConstant) {
    double bending = 1e7 / 12;
    RodCase.Wood wood =
        RodCase.Wood.ofRatio(1, 1, bending * 4 / Math.PI, 5e6 * torsionConstant / bending);
    return RodCase.single(
        Rods.rootFrame(0, 0),
        RodCase.Limb.trunk(LENGTH, wood, new Vector3(0, 1 / RADIUS, 0)),
        List.of(new RodCase.Pull(RodCase.Place.on(0, LENGTH), new Vector3(0, 0, force))),
        List.of());
  }

  @ParameterizedTest
  @MethodSource("rows")
  void curvedCantilever_underTipForce_isWhereTheTablePutsIt(Table row) {
    boolean stiff = row.text("model").startsWith("inextensible");
    RodCase rods = rods(row.number(0), row.number(2));
    RodSolution solution = rods.solve();
    assertThat(solution.status().holds()).isTrue();
    Point3 expected = new Point3(row.number("tip_x"), row.number("tip_y"), row.number("tip_z"));
    double away = solution.pose().section(0, LENGTH).position().distance(expected) / LENGTH;
    if (stiff) {
      MEASURED.check("position / L", away, Accuracy.POSITION);
    } else {
      MEASURED.check("position / L, against rows with shear and stretch", away, SHEAR_AND_STRETCH);
    }
    double moment = solution.pose().section(0, 0).moment().norm();
    MEASURED.check("base moment", moment / row.number("base_moment") - 1, Accuracy.MOMENT);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void worstStrainOfTheCurvedCantilever_isFoundWhereItIs(Table row) {
    RodCase rods = rods(row.number(0), row.number(2));
    ShootingPose truth = new ShootingTree(rods).solve(6);
    Peak peak = Peak.of(rods, rods.solve().pose(), 0);
    double largest = 0;
    for (int i = 0; i <= 500; i++) {
      largest = Math.max(largest, truth.fibreStrain(0, LENGTH * i / 500));
    }
    MEASURED.check("strain", peak.strain() / largest - 1, Accuracy.STRAIN);
    MEASURED.check(
        "true strain at the place, short of the largest",
        1 - truth.fibreStrain(0, peak.s()) / largest,
        Accuracy.STRAIN);
  }

  @Test
  void fortyFiveDegreeBend_atFullForce_isWhereBatheAndBolourchiPublishedIt() {
    Point3 published = new Point3(15.9, 47.2, 53.4); // from memory, their axes: y along, x aside
    Point3 tip = rods(600, 1.0 / 6).solve().pose().section(0, LENGTH).position();
    double away = new Point3(tip.y(), tip.x(), tip.z()).distance(published) / LENGTH;
    MEASURED.check("position / L, published", away, PUBLISHED);
  }
}
