// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import boughwright.physics.rod.Measured;
import boughwright.physics.wood.Relaxation.Mode;
import boughwright.physics.wood.Relaxation.Retarded;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RelaxationTest {
  private static final Measured MEASURED = new Measured(RelaxationTest.class);

  /** Root finding and the integrator's tolerance. */
  private static final double EXACT = 1e-9;

  /** What two modes a decade leave of a smooth law, of the first stress. */
  private static final double FITTED = 1e-3;

  @AfterAll
  static void report() {
    MEASURED.report();
  }

  /** One Kelvin element: time t / (1 + a), weight a / (1 + a) (any textbook; from memory). */
  @Test
  void oneElement_isTheStandardSolid() {
    List<Mode> modes = Relaxation.ofRetardation(List.of(new Retarded(0.5, 30))).modes();
    assertThat(modes).hasSize(1);
    assertThat(modes.get(0).time()).isCloseTo(20, within(EXACT * 20));
    assertThat(modes.get(0).weight()).isCloseTo(1.0 / 3, within(EXACT));
  }

  /** The chain itself, held at a strain of 1 and integrated. */
  @ParameterizedTest
  @ValueSource(doubles = {0.3, 2, 40, 900})
  void chain_relaxesAsItsOwnEquations(double end) {
    double[] amount = {0.08, 0.3, 0.15, 1.2};
    double[] time = {0.7, 5, 90, 150};
    List<Retarded> chain =
        List.of(
            new Retarded(amount[2], time[2]),
            new Retarded(amount[0], time[0]),
            new Retarded(amount[3], time[3]),
            new Retarded(amount[1], time[1]));
    OrdinaryDifferentialEquation kelvin =
        new OrdinaryDifferentialEquation() {
          @Override
          public int getDimension() {
            return 4;
          }

          @Override
          public double[] computeDerivatives(double t, double[] y) {
            double stress = 1 - y[0] - y[1] - y[2] - y[3];
            double[] rate = new double[4];
            for (int k = 0; k < 4; k++) {
              rate[k] = (amount[k] * stress - y[k]) / time[k];
            }
            return rate;
          }
        };
    double[] y =
        new DormandPrince853Integrator(1e-9, 1000, 1e-12, 1e-12)
            .integrate(kelvin, new ODEState(0, new double[4]), end)
            .getPrimaryState();
    double left = 1 - y[0] - y[1] - y[2] - y[3];
    Relaxation law = Relaxation.ofRetardation(chain);
    MEASURED.check("chain of four", law.left(end) - left, EXACT);
    assertThat(law.equilibrium()).isCloseTo(1 / (1 + 0.08 + 0.3 + 0.15 + 1.2), within(EXACT));
  }

  @Test
  void fittedPowerAndLog_areTheLawsThemselves() {
    compare("power", t -> Math.pow(1 + 24 * t, -0.06));
    compare("log", t -> 1 - 0.05 * Math.log(1 + 24 * t));
  }

  private static void compare(String kind, DoubleUnaryOperator law) {
    Relaxation fitted = Relaxation.fitted(law, 1e-4, 1e3);
    for (double t = 1e-3; t < 500; t *= 1.7) {
      MEASURED.check("fit, " + kind, fitted.left(t) - law.applyAsDouble(t), FITTED);
    }
  }

  /**
   * Of the lumber law 0.129 t^0.25 (t in days; AWC, NDS commentary: long-term deflection of
   * unseasoned lumber twice the first), fitted to creep. Creep J and relaxation G of one material
   * fulfil G(t) + integral of G(t - s) J'(s) ds = 1 (Tschoegl 1989; from memory). With s = t u^4,
   * J' ds = 0.129 t^0.25 du.
   */
  @Test
  void fittedCreep_andItsRelaxation_areOfOneMaterial() {
    Relaxation law = Relaxation.fittedToCreep(t -> 0.129 * Math.pow(t, 0.25), 1e-7, 1e5);
    GaussIntegrator gauss = new GaussIntegratorFactory().legendre(200, 0, 1);
    for (double t : new double[] {0.04, 1, 7, 30, 365}) {
      double rest =
          gauss.integrate(u -> law.left(t * (1 - u * u * u * u)) * 0.129 * Math.pow(t, 0.25));
      MEASURED.check("creep of lumber", law.left(t) + rest - 1, 2 * FITTED);
    }
  }

  /** What the prior of live branches says, in the figures the documents print. */
  @Test
  void liveBranches_comeToWhatWasSeenOfThem() {
    assertThat(Creep.MIDDLE.recoverable().equilibrium()).isCloseTo(1 / 1.4, within(1e-9));
    assertThat(Creep.MIDDLE.left(86_400)).isBetween(0.70, 0.80);
    assertThat(Creep.MIDDLE.left(1e12)).isBetween(0.64, 0.70);
    for (double t : new double[] {3600, 86_400, 1e7}) {
      assertThat(Creep.LOW.left(t)).isGreaterThan(Creep.MIDDLE.left(t));
      assertThat(Creep.HIGH.left(t)).isLessThan(Creep.MIDDLE.left(t));
    }
    double until = Creep.MIDDLE.until(0.75);
    assertThat(Creep.MIDDLE.left(until)).isCloseTo(0.75, within(0.01));
    assertThat(Creep.LOW.until(0.1)).isInfinite();
  }

  @Test
  void lawsThatCannotBe_areRefused() {
    assertThatThrownBy(() -> new Relaxation(List.of(new Mode(0.7, 1), new Mode(0.7, 2))))
        .hasMessageContaining("more than the whole");
    assertThatThrownBy(() -> new Mode(0.5, -1)).hasMessageContaining("no mode");
    assertThatThrownBy(() -> new Retarded(0, 1)).hasMessageContaining("no element");
    assertThatThrownBy(() -> Relaxation.fitted(t -> 1, 3, 2)).hasMessageContaining("range");
    assertThatThrownBy(() -> new Creep(Relaxation.NONE, -1, 1)).hasMessageContaining("sets");
    assertThatThrownBy(() -> new Spell(-1, Creep.NONE, 0, 1)).hasMessageContaining("spell");
  }
}
