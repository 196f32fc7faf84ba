// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.physics.rod.Measured;
import boughwright.physics.rod.Table;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class WireBendingTest {
  /** What was asked for of closed formulas. */
  private static final double CLOSED = 1e-3;

  private static final Measured MEASURED = new Measured(WireBendingTest.class);

  static Stream<Table> wires() {
    return Table.of("g_wire_moment_curvature.csv");
  }

  @AfterAll
  static void report() {
    MEASURED.report();
  }

  /** Reference tables made for this project, by closed form and by quadrature. */
  @ParameterizedTest
  @MethodSource("wires")
  void momentAndSpringback_areThoseOfTheTable(Table row) {
    double moe = row.number("E_MPa") * Table.MPA;
    double yield = row.number("sigma_y_MPa") * Table.MPA;
    double curvature = row.number("kappa_1/mm") / Table.MM;
    Bent bent = new Bent(row.number("wire_diam_mm") * Table.MM, curvature);
    bent.check(
        "perfectly plastic",
        WireStress.perfectlyPlastic(moe, yield),
        new Left(row.number("M_EPP_Nmm"), row.number("kappa_after_elastic_springback_EPP")));
    bent.check(
        "bilinear",
        WireStress.bilinear(moe, yield, moe / 100),
        new Left(row.number("M_bilinear(Et=E/100)"), row.number("springback_bilinear")));
    bent.check(
        "Ludwik",
        WireStress.ludwik(moe, yield, 150e6, 0.5),
        new Left(
            row.number("M_Ludwik(sy+150*ep_total^0.5; ep=eps-eps_y)"),
            row.number("springback_Ludwik")));
    double closed = WireBending.perfectlyPlastic(moe, yield, bent.diameter, curvature);
    double printed = row.number("M_EPP_Nmm") * Table.MM;
    MEASURED.check("closed form", closed / printed - 1, CLOSED);
  }

  private record Left(double moment, double curvature) {}

  private record Bent(double diameter, double curvature) {
    void check(String name, WireStress law, Left printed) {
      WireBending wire = new WireBending(law, diameter);
      double moment = wire.moment(curvature);
      MEASURED.check(name + " moment", moment / (printed.moment * Table.MM) - 1, CLOSED);
      double after = printed.curvature / Table.MM;
      double difference = wire.afterSpringback(curvature) - after;
      MEASURED.check(name + " springback", difference / curvature, CLOSED);
    }
  }

  @Test
  void wireBentWithoutEnd_comesToStressTimesDiameterCubedOverSix() {
    double stress = 60e6;
    double diameter = 3e-3;
    WireBending wire = new WireBending(WireStress.perfectlyPlastic(69e9, stress), diameter);
    double far = wire.moment(1000 * wire.yieldCurvature());
    double sixth = stress * diameter * diameter * diameter / 6;
    assertThat(far).isCloseTo(sixth, within(1e-5 * sixth));
    assertThat(WireBending.fullyPlastic(stress, diameter)).isCloseTo(sixth, within(1e-15));
  }

  /**
   * A rectangular bar, 50 mm by 120 mm, E 200 GPa, yield stress 240 MPa, bent by 36.8 kN m: elastic
   * core 80 mm deep, radius of curvature 33.3 m; unloaded, 225 m (F. P. Beer and others, Mechanics
   * of Materials, the worked examples on elastic-perfectly-plastic bending and residual stress;
   * from memory). Printed to three digits.
   */
  @Test
  void elasticPlasticBar_springsBackAsInTheTextbook() {
    double threeDigits = 5e-3;
    WireBending bar = new WireBending(WireStress.perfectlyPlastic(200e9, 240e6), 0.06, y -> 0.05);
    double curvature = 1 / 33.3333;
    assertThat(bar.moment(curvature)).isCloseTo(36.8e3, within(threeDigits * 36.8e3));
    assertThat(1 / bar.afterSpringback(curvature)).isCloseTo(225, within(threeDigits * 225));
    assertThat(240e6 / 200e9 / curvature).isCloseTo(0.040, within(threeDigits * 0.04));
  }

  /** Stress K strain^n throughout gives K kappa^n times an integral of beta functions. */
  @Test
  void hollomonWire_farBeyondYield_followsThePowerLaw() {
    double k = 530e6;
    double n = 0.44;
    double r = 2e-3;
    WireBending wire = new WireBending(WireStress.hollomon(117e9, k, n), 2 * r);
    double curvature = 20;
    double halves = 0;
    int strips = 200000;
    for (int i = 0; i < strips; i++) {
      double y = r * (i + 0.5) / strips;
      halves += k * Math.pow(curvature * y, n) * y * 2 * Math.sqrt(r * r - y * y) * r / strips;
    }
    assertThat(wire.moment(curvature)).isCloseTo(2 * halves, within(1e-3 * 2 * halves));
    assertThat(wire.moment(-curvature)).isEqualTo(-wire.moment(curvature));
  }
}
