// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import java.util.Locale;
import org.hipparchus.ode.nonstiff.AdaptiveStepsizeIntegrator;
import org.hipparchus.ode.nonstiff.ClassicalRungeKuttaIntegrator;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.hipparchus.ode.nonstiff.ExplicitRungeKuttaIntegrator;
import org.hipparchus.ode.nonstiff.GraggBulirschStoerIntegrator;
import org.hipparchus.ode.nonstiff.HighamHall54Integrator;
import org.hipparchus.ode.nonstiff.LutherIntegrator;

/**
 * A way to shoot: integrator, its tolerance or its number of steps, and the tolerance of the root.
 *
 * @param method integrator
 * @param tuning tolerance of an integrator that chooses its steps, else their number
 * @param root where the secant method ends, as a part of the unknown's scale
 */
public record PeerChoice(Method method, double tuning, double root) {
  /** The integrators tried. */
  public enum Method {
    DP853,
    DP54,
    HIGHAM_HALL,
    GRAGG_BULIRSCH_STOER,
    FIXED_DP853,
    FIXED_DP54,
    FIXED_RK4,
    FIXED_LUTHER;

    boolean isFixed() {
      return name().startsWith("FIXED");
    }
  }

  private static final double LONGEST = 10;
  private static final double SHORTEST = 1e-9;

  public boolean isFixed() {
    return method.isFixed();
  }

  /** Error of the tip as a fraction of the length. */
  public double error(BendCase bend) {
    return bend.error(on(bend).solve());
  }

  PlanarShooting on(BendCase bend) {
    return method.isFixed()
        ? PlanarShooting.fixed(bend, stepper(), (int) tuning, root)
        : PlanarShooting.adaptive(bend, integrator(), root);
  }

  private AdaptiveStepsizeIntegrator integrator() {
    return switch (method) {
      case DP853 -> new DormandPrince853Integrator(SHORTEST, LONGEST, tuning, tuning);
      case DP54 -> new DormandPrince54Integrator(SHORTEST, LONGEST, tuning, tuning);
      case HIGHAM_HALL -> new HighamHall54Integrator(SHORTEST, LONGEST, tuning, tuning);
      default -> new GraggBulirschStoerIntegrator(SHORTEST, LONGEST, tuning, tuning);
    };
  }

  private ExplicitRungeKuttaIntegrator stepper() {
    return switch (method) {
      case FIXED_DP853 -> new DormandPrince853Integrator(SHORTEST, LONGEST, 1, 1);
      case FIXED_DP54 -> new DormandPrince54Integrator(SHORTEST, LONGEST, 1, 1);
      case FIXED_RK4 -> new ClassicalRungeKuttaIntegrator(1);
      default -> new LutherIntegrator(1);
    };
  }

  /** For a JMH parameter. */
  public String text() {
    return String.format(Locale.ROOT, "%s;%.3g;%.3g", method, tuning, root);
  }

  static PeerChoice parse(String text) {
    String[] parts = text.split(";");
    return new PeerChoice(
        Method.valueOf(parts[0]), Double.parseDouble(parts[1]), Double.parseDouble(parts[2]));
  }
}
