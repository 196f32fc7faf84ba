// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.validation;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.ClassicalRungeKuttaIntegrator;
import org.hipparchus.ode.sampling.ODEFixedStepHandler;
import org.hipparchus.ode.sampling.StepNormalizer;

/**
 * A level branch, clamped at its start, under a force at its tip: an ordinary differential equation
 * from the tip to the clamp, solved by Hipparchus and shot for the angle at the tip. Shares nothing
 * with the program.
 *
 * @param law how the section bends
 * @param moe modulus [Pa]
 * @param yield strain at which fibres begin to flow [1]
 * @param length from clamp to tip [m]
 * @param startRadius radius at the clamp [m]
 * @param endRadius radius at the tip [m]
 */
record BentBranch(
    FibreLaw law, double moe, double yield, double length, double startRadius, double endRadius) {
  private static final int STEPS = 80;

  /** Curvature times radius over yield beyond which the section is taken to have given way. */
  private static final double GONE = 190;

  /**
   * What came of it.
   *
   * @param worst the largest tension strain over the limit met on the way [1]
   * @param tipX where the tip comes to, away from the clamp [m]
   * @param tipZ the same, up [m]
   */
  record Bent(double worst, double tipX, double tipZ) {}

  /** A force on the tip, away from the clamp and up [N]. */
  record Force(double x, double z) {}

  /**
   * Bends it.
   *
   * @param limit tension strain at which the wood cracks, of the diameter [m]
   */
  Bent under(Force force, DoubleUnaryOperator limit) {
    double steepest = Math.atan2(-force.z, force.x);
    Shot straight = shoot(force, steepest, limit);
    if (straight.angle < 0) {
      return new Bent(Double.POSITIVE_INFINITY, straight.x, straight.z);
    }
    BrentSolver solver = new BrentSolver(1e-9);
    double angle = solver.solve(200, a -> shoot(force, a, limit).angle, 0, steepest);
    return shoot(force, angle, limit).bent();
  }

  /** Angle at the clamp, and the tip as seen from there. */
  private record Shot(double angle, double x, double z, double worst) {
    Bent bent() {
      return new Bent(worst, x, z);
    }
  }

  private double radius(double fromTip) {
    return endRadius + (startRadius - endRadius) * fromTip / length;
  }

  private double curvature(double moment, double radius) {
    double part = moment / (moe * Math.PI * radius * radius * radius / 4 * yield);
    double scaled = Math.abs(part) < law.mostMoment() ? law.curvature(Math.abs(part)) : GONE;
    return Math.signum(moment) * scaled * yield / radius;
  }

  /** From the tip, at an angle below the level, to the clamp. */
  private Shot shoot(Force force, double tipAngle, DoubleUnaryOperator limit) {
    double[] worst = new double[1];
    ClassicalRungeKuttaIntegrator integrator = new ClassicalRungeKuttaIntegrator(length / STEPS);
    ODEFixedStepHandler look =
        new ODEFixedStepHandler() {
          @Override
          public void handleStep(ODEStateAndDerivative state, boolean last) {
            worst[0] = Math.max(worst[0], use(state, limit));
          }
        };
    integrator.addStepHandler(new StepNormalizer(length / STEPS, look));
    OrdinaryDifferentialEquation equation =
        new OrdinaryDifferentialEquation() {
          @Override
          public int getDimension() {
            return 4;
          }

          @Override
          public double[] computeDerivatives(double s, double[] u) {
            double cos = Math.cos(u[0]);
            double sin = Math.sin(u[0]);
            return new double[] {
              -curvature(u[1], radius(Math.min(length, Math.max(0, s)))),
              -(cos * force.z + sin * force.x),
              cos,
              -sin
            };
          }
        };
    ODEStateAndDerivative clamp =
        integrator.integrate(equation, new ODEState(0, new double[] {tipAngle, 0, 0, 0}), length);
    double[] end = clamp.getPrimaryState();
    return new Shot(end[0], end[2], end[3], Math.max(worst[0], use(clamp, limit)));
  }

  /** Tension strain of the outermost fibre over its limit. */
  private double use(ODEStateAndDerivative state, DoubleUnaryOperator limit) {
    double r = radius(Math.min(length, state.getTime()));
    double x = Math.abs(curvature(state.getPrimaryState()[1], r)) * r / yield;
    return yield * law.tension(x) / limit.applyAsDouble(2 * r);
  }

  /**
   * Bends it by a line from its tip to an anchor, tightened step by step; where the wood cracks
   * first, that is as far as it comes.
   *
   * @param anchor where the anchor is, away from the clamp and up [m]
   * @param shortening how much shorter the line becomes [m]
   */
  Bent tightened(double[] anchor, double shortening, DoubleUnaryOperator limit) {
    double wanted = Math.hypot(length - anchor[0], -anchor[1]) - shortening;
    double stiff = moe * Math.PI / 4 * Math.pow(endRadius, 4);
    double low = 0;
    double high = 0.3 * stiff * shortening / Math.pow(length, 3);
    Bent bent = pulled(anchor, high, limit);
    while (distance(bent, anchor) > wanted) {
      if (bent.worst >= 1) {
        return bent;
      }
      low = high;
      high *= 1.3;
      bent = pulled(anchor, high, limit);
    }
    double pull =
        new BrentSolver(1e-3 * high, 1e-6)
            .solve(200, t -> distance(pulled(anchor, t, limit), anchor) - wanted, low, high);
    return pulled(anchor, pull, limit);
  }

  private static double distance(Bent bent, double[] anchor) {
    return Math.hypot(bent.tipX - anchor[0], bent.tipZ - anchor[1]);
  }

  /** Under a pull that goes from wherever the tip comes to toward the anchor. */
  private Bent pulled(double[] anchor, double pull, DoubleUnaryOperator limit) {
    Bent bent = new Bent(0, length, 0);
    for (int i = 0; i < 30; i++) {
      double away = distance(bent, anchor);
      Force force =
          new Force(pull * (anchor[0] - bent.tipX) / away, pull * (anchor[1] - bent.tipZ) / away);
      Bent next = under(force, limit);
      double moved = Math.hypot(next.tipX - bent.tipX, next.tipZ - bent.tipZ);
      bent = next;
      if (moved < 1e-8) {
        break;
      }
    }
    return bent;
  }
}
