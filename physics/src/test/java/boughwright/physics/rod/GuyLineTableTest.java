// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Branches drawn by a guy-line, by tension, by length and with a line that stretches, in a plane
 * and in space: tables d of the test resources.
 */
class GuyLineTableTest {
  private static final Measured MEASURED = new Measured(GuyLineTableTest.class);

  @AfterAll
  static void report() {
    MEASURED.report();
  }

  static Stream<Table> cases() {
    return Table.of("d_line_cases.csv");
  }

  static Stream<Table> profiles() {
    return Table.of("d_line_profiles.csv");
  }

  static Stream<Table> curves() {
    return Table.of("d_tension_vs_length_curves.csv");
  }

  @ParameterizedTest
  @MethodSource("cases")
  void branchOnALine_isWhereTheTablePutsIt(Table row) {
    RodCase rods = GuyLines.of(row);
    RodSolution solution = rods.solve();
    assertThat(solution.status().holds()).as(solution.status().toString()).isTrue();
    double length = rods.limbs().get(0).length();
    RodSection tip = solution.pose().section(0, length);
    RodSolution.LineState line = solution.lines().get(0);
    MEASURED.check(
        "position / L", tip.position().distance(row.point("tip_x")) / length, Accuracy.POSITION);
    MEASURED.check(
        "position / L", line.at().distance(row.point("att_x")) / length, Accuracy.POSITION);
    MEASURED.check("tension", line.tension() / row.number("tension_N") - 1, Accuracy.TENSION);
    MEASURED.check(
        "position / L",
        line.length() / length - row.number("line_len") * Table.MM / length,
        Accuracy.POSITION);
    Vector3 tangent = tip.frame().turn(new Vector3(0, 0, 1));
    MEASURED.check(
        "direction", tangent.minus(row.vector("tip_tangent_x")).norm(), Accuracy.DIRECTION);
    double moment = solution.pose().section(0, 0).moment().norm();
    MEASURED.check(
        "base moment", moment / (row.number("base_moment_Nmm") * Table.MM) - 1, Accuracy.MOMENT);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void worstStrainOfABranchOnALine_isFoundWhereItIs(Table row) {
    RodCase rods = GuyLines.of(row);
    RodSolution solution = rods.solve();
    ShootingPose truth = new ShootingTree(rods).polish(GuyLines.guess(row));
    double length = rods.limbs().get(0).length();
    assertThat(truth.at(0, length).position().distance(row.point("tip_x")) / length)
        .isLessThan(Accuracy.PRINTED);
    Peak peak = Peak.of(rods, solution.pose(), 0);
    double expected = row.number("max_bending_fibre_strain");
    MEASURED.check("strain", peak.strain() / expected - 1, Accuracy.STRAIN);
    MEASURED.check(
        "true strain at the place, short of the largest",
        1 - truth.fibreStrain(0, peak.s()) / expected,
        Accuracy.STRAIN);
  }

  @ParameterizedTest
  @MethodSource("profiles")
  void sectionsAlongABranchOnALine_areAsInTheProfile(Table row) {
    Table whole =
        cases()
            .filter(c -> c.text("id").equals(row.text("id")))
            .filter(c -> c.text("mode").equals(row.text("mode")))
            .findFirst()
            .orElseThrow();
    RodCase rods = GuyLines.of(whole);
    double length = rods.limbs().get(0).length();
    double s = Math.min(row.number("s") * Table.MM, length);
    RodSection section = rods.section(rods.solve().pose(), 0, s);
    double peak = whole.number("max_bending_fibre_strain");
    double radius = rods.limbs().get(0).wood().radius(s / length);
    MEASURED.check(
        "position / L", section.position().distance(row.point("x")) / length, Accuracy.POSITION);
    MEASURED.check(
        "strain",
        (radius * section.addedCurvature() - row.number("max_fibre_strain")) / peak,
        Accuracy.STRAIN);
    MEASURED.check(
        "strain",
        radius * (section.strain().z() - row.number("twist_elastic") / Table.MM) / peak,
        Accuracy.STRAIN);
    double tension = whole.number("tension_N");
    MEASURED.check(
        "axial force / tension",
        (section.force().z() - row.number("axial_force_N")) / tension,
        Accuracy.TENSION);
  }

  /** Case names carry inclination in degrees, place on the rod and anchor, all in rod lengths. */
  @ParameterizedTest
  @MethodSource("curves")
  void tensionOfAShortenedLine_followsTheCurve(Table row) {
    String name = row.text("case");
    double inclination = Math.toRadians(Table.after("inc", name));
    double at = Table.after("_s", name);
    Point3 anchor = new Point3(Table.after("A(", name), 0, Table.after(", ", name));
    double straight =
        new Point3(at * Math.cos(inclination), 0, at * Math.sin(inclination)).distance(anchor);
    Rotation frame = Rods.rootFrame(inclination, 0);
    RodLine line =
        new RodLine(
            RodPlace.onAxis(0, at),
            new RodLine.FixedEnd(anchor),
            new RodLine.Length(row.number("len/l0") * straight, 0));
    RodSolution solution =
        RodSolver.solve(
            Rods.single(frame, 1, Vector3.ZERO, Rods.tapered(0)),
            RodLoads.ofLines(line),
            RodOptions.DEFAULT);
    assertThat(solution.status().holds()).as(solution.status().toString()).isTrue();
    RodSolution.LineState found = solution.lines().get(0);
    MEASURED.check("tension", found.tension() / row.number("T*L^2/EI") - 1, Accuracy.TENSION);
    Point3 place = new Point3(row.number("att_x/L"), 0, row.number("att_z/L"));
    MEASURED.check("position / L", found.at().distance(place), Accuracy.POSITION);
  }
}
