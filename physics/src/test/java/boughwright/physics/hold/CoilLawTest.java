// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.physics.rod.Measured;
import boughwright.physics.rod.SectionLine;
import boughwright.physics.rod.SectionResponse;
import boughwright.physics.rod.Table;
import boughwright.physics.wood.SegmentWood;
import boughwright.physics.wood.WoodLine;
import boughwright.physics.wood.WoodSection;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CoilLawTest {
  /** What was aimed at for numeric ones. */
  private static final double NUMERIC = 2e-3;

  private static final double MOE = 69e9;
  private static final double YIELD = 40e6;
  private static final double WIRE = 4e-3;
  private static final double BEND_AT_YIELD = YIELD / (MOE * WIRE / 2);
  private static final Measured MEASURED = new Measured(CoilLawTest.class);

  static Stream<Table> holds() {
    return Table.of("g_branch_wire_hold.csv");
  }

  @AfterAll
  static void report() {
    MEASURED.report();
  }

  private static CoilLaw straight(double moe, double yield, double wire, double count) {
    double first = yield / (moe * wire / 2);
    CoilElements elements =
        CoilElements.of(
            x -> count * WireBending.perfectlyPlastic(moe, yield, wire, x), first, 100 * first);
    return CoilLaw.fresh(elements, 0);
  }

  /** Straight parallel wires, elastic and perfectly plastic, on an elastic branch. */
  @ParameterizedTest
  @MethodSource("holds")
  void branchWithWires_bentAndLetGo_comesToRestAsInTheTable(Table row) {
    double radius = row.number("branch_r_mm") * Table.MM;
    SegmentWood wood =
        new SegmentWood(
            row.number("branch_E_MPa") * Table.MPA, 1e8, Double.POSITIVE_INFINITY, "table");
    WoodSection branch =
        WoodLine.round(wood, new SectionLine.RadiusTaper(radius, radius, 1)).at(0.5);
    CoilLaw wires =
        straight(
            row.number("wire_E") * Table.MPA,
            row.number("wire_sigma_y") * Table.MPA,
            row.number("wire_diam_mm") * Table.MM,
            row.number("n_wires(straight, parallel, EPP)"));
    double rest = row.number("branch_kappa0_1/mm") / Table.MM;
    double forced = row.number("kappa_forced_1/mm") / Table.MM - rest;
    CoiledSection section = new CoiledSection(branch, List.of(wires));
    SectionResponse response = new SectionResponse();
    section.respond(forced, 0, 0, response);
    double needed = row.number("moment_needed_to_force_Nmm") * Table.MM;
    MEASURED.check("moment to force", response.m1 / needed - 1, NUMERIC);
    CoiledSection held = (CoiledSection) section.bentTo(forced, 0);
    double left = held.strainUnder(0, 0, 0)[0];
    double printed = row.number("kappa_final_exact(Masing)") / Table.MM - rest;
    MEASURED.check("curvature at rest", left / printed - 1, NUMERIC);
    SectionResponse wire = new SectionResponse();
    held.coils().get(0).add(left, 0, 0, wire);
    double atRest = row.number("wire_moment_at_rest_Nmm") * Table.MM;
    MEASURED.check("moment of the wire at rest", wire.m1 / atRest - 1, NUMERIC);
  }

  /** Masing: the way back is the way out at twice its size, from wherever it turns. */
  @Test
  void unloading_isTheFirstLineTwiceAsLarge() {
    CoilLaw fresh = straight(MOE, YIELD, WIRE, 1);
    double out = 6 * BEND_AT_YIELD;
    CoilLaw bent = fresh.after(out, 0);
    for (double back = 0.2; back < 12; back += 0.4) {
      double down = back * BEND_AT_YIELD;
      double half = moment(fresh, down / 2, 0).m1;
      double expected = moment(fresh, out, 0).m1 - 2 * half;
      double found = moment(bent, out - down, 0).m1;
      assertThat(found).isCloseTo(expected, within(1e-9 * moment(fresh, out, 0).m1));
    }
  }

  private static CoilElements elements() {
    return CoilElements.of(x -> x, 1, 2);
  }

  private static SectionResponse moment(CoilLaw law, double e1, double e2) {
    SectionResponse response = new SectionResponse();
    law.add(e1, e2, 0, response);
    return response;
  }

  /** Central differences of the energy and of the moments, after a history in two planes. */
  @Test
  void moments_areSlopesOfTheEnergyAndTheTangentTheirs() {
    CoilLaw law =
        straight(MOE, YIELD, WIRE, 2)
            .after(5 * BEND_AT_YIELD, 0)
            .after(2 * BEND_AT_YIELD, 4 * BEND_AT_YIELD);
    double step = 1e-6 * BEND_AT_YIELD;
    double x = -1.1 * BEND_AT_YIELD;
    double y = 2.3 * BEND_AT_YIELD;
    SectionResponse here = moment(law, x, y);
    SectionResponse up = moment(law, x + step, y);
    SectionResponse down = moment(law, x - step, y);
    SectionResponse right = moment(law, x, y + step);
    SectionResponse left = moment(law, x, y - step);
    double stiff = law.stiffness();
    double rounding = 1e-5 * stiff;
    double power = 1e-4 * Math.abs(here.m1);
    assertThat((up.energy - down.energy) / (2 * step)).isCloseTo(here.m1, within(power));
    assertThat((right.energy - left.energy) / (2 * step)).isCloseTo(here.m2, within(power));
    assertThat((up.m1 - down.m1) / (2 * step)).isCloseTo(here.k11, within(rounding));
    assertThat((right.m1 - left.m1) / (2 * step)).isCloseTo(here.k12, within(rounding));
    assertThat((up.m2 - down.m2) / (2 * step)).isCloseTo(here.k12, within(rounding));
    assertThat((right.m2 - left.m2) / (2 * step)).isCloseTo(here.k22, within(rounding));
    assertThat(here.k11 * here.k22).isGreaterThan(here.k12 * here.k12);
  }

  @Test
  void answer_turnsWithTheDirectionOfBending() {
    CoilLaw law = straight(MOE, YIELD, WIRE, 1);
    double size = 3 * BEND_AT_YIELD;
    double first = moment(law, size, 0).m1;
    for (double turn = 0.3; turn < 6; turn += 0.7) {
      SectionResponse r = moment(law, size * Math.cos(turn), size * Math.sin(turn));
      assertThat(Math.hypot(r.m1, r.m2)).isCloseTo(first, within(1e-12 * first));
      assertThat(Math.atan2(r.m2, r.m1))
          .isCloseTo(Math.atan2(Math.sin(turn), Math.cos(turn)), within(1e-9));
    }
  }

  @Test
  void coilWoundOnABentBranch_hasNoMomentThere() {
    CoilLaw law = straight(MOE, YIELD, WIRE, 1).woundAt(0.2, -0.1, 0.05);
    assertThat(moment(law, 0.2, -0.1).m1).isZero();
    assertThat(moment(law, 0.3, -0.1).m1).isPositive();
    assertThat(CoilLaw.fresh(elements(), 2).woundAt(0, 0, 0.05).torsion()).isEqualTo(2);
    SectionResponse twisted = new SectionResponse();
    CoilLaw.fresh(elements(), 2).woundAt(0, 0, 0.05).add(0, 0, 0.25, twisted);
    assertThat(twisted.m3).isCloseTo(0.4, within(1e-12));
  }
}
