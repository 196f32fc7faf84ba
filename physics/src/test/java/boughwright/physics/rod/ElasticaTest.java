// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.special.elliptic.legendre.LegendreEllipticIntegral;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A straight uniform cantilever under a transverse dead load at its tip, against elliptic integrals
 * computed by Hipparchus.
 *
 * <p>Bisshopp and Drucker 1945, https://doi.org/10.1090/qam/13360; Mattiasson 1981 (from memory).
 */
class ElasticaTest {
  /** The accuracy asked of the tip, as a fraction of the length. */
  private static final double TIP = 1e-5;

  private static final Measured MEASURED = new Measured(ElasticaTest.class);

  @AfterAll
  static void report() {
    MEASURED.report();
  }

  /** With p = sin of the modular angle: alpha = (K(p) - F(p, phi))^2, sin phi = 1 / (p sqrt 2). */
  private record Exact(double drop, double reach, double tipAngle) {
    static Exact of(double alpha) {
      double p =
          new BracketingNthOrderBrentSolver(1e-15, 5)
              .solve(500, q -> loadFor(q) - alpha, Math.sqrt(0.5) + 1e-12, 1 - 1e-12);
      double phi = Math.asin(1 / (p * Math.sqrt(2)));
      double k = Math.sqrt(alpha);
      double m = p * p;
      double e = LegendreEllipticIntegral.bigE(m) - LegendreEllipticIntegral.bigE(phi, m);
      double drop = 1 - 2 * e / k;
      double tipAngle = Math.asin(2 * m - 1);
      return new Exact(drop, Math.sqrt(2 * Math.sin(tipAngle)) / k, tipAngle);
    }

    static double loadFor(double p) {
      double phi = Math.asin(1 / (p * Math.sqrt(2)));
      double f = LegendreEllipticIntegral.bigK(p * p) - LegendreEllipticIntegral.bigF(phi, p * p);
      return f * f;
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.5, 1, 2, 3, 5, 7.5, 10})
  void tip_underTransverseLoad_isWhereEllipticIntegralsPutIt(double alpha) {
    RodSolution solution =
        RodSolver.solve(
            Rods.unit(0, Vector3.ZERO), Rods.tipForce(0, 0, -alpha), RodOptions.DEFAULT);
    Exact exact = Exact.of(alpha);
    RodSection tip = solution.pose().section(0, 1);
    assertThat(solution.status().holds()).isTrue();
    Point3 expected = new Point3(exact.reach(), 0, -exact.drop());
    MEASURED.check("position / L", tip.position().distance(expected), TIP);
    double down = tip.frame().turn(new Vector3(0, 0, 1)).z();
    MEASURED.check("direction", down + Math.sin(exact.tipAngle()), TIP);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/mechanics/a_elastica_tipload.csv", numLinesToSkip = 1)
  void ellipticIntegrals_agreeWithTheReferenceTable(
      double alpha, double shortening, double drop, double tipAngle) {
    Exact exact = Exact.of(alpha);
    assertThat(exact.drop()).isCloseTo(drop, within(1e-9));
    assertThat(1 - exact.reach()).isCloseTo(shortening, within(1e-9));
    assertThat(exact.tipAngle()).isCloseTo(tipAngle, within(1e-9));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/mechanics/a_elastica_oblique.csv", numLinesToSkip = 1)
  void tip_underObliqueLoad_isWhereTheReferenceTablePutsIt(
      double alpha, double degrees, double x, double z) {
    double angle = Math.toRadians(degrees);
    RodSolution solution =
        RodSolver.solve(
            Rods.unit(0, Vector3.ZERO),
            Rods.tipForce(alpha * Math.cos(angle), 0, -alpha * Math.sin(angle)),
            RodOptions.DEFAULT);
    assertThat(solution.status().holds()).isTrue();
    Point3 tip = solution.pose().section(0, 1).position();
    MEASURED.check("oblique, position / L", tip.distance(new Point3(x, 0, z)), TIP);
  }

  @ParameterizedTest
  @EnumSource(RodOptions.Route.class)
  void bothRoutes_findTheSamePose(RodOptions.Route route) {
    RodSolution solution =
        RodSolver.solve(
            Rods.unit(0, Vector3.ZERO),
            Rods.tipForce(0, 0, -10),
            RodOptions.DEFAULT.withRoute(route));
    assertThat(solution.status().holds()).isTrue();
    assertThat(solution.pose().section(0, 1).position().z())
        .isCloseTo(-Exact.of(10).drop(), within(TIP));
  }
}
