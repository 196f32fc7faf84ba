// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.hold;

/** How a metal answers being stretched from fresh; the same when it is squeezed. */
public interface WireStress {
  /**
   * Stress at a strain of 0 or more [Pa].
   *
   * @param strain strain [1]
   */
  double at(double strain);

  /** Modulus of elasticity [Pa]. */
  double moe();

  /** Strain at which it begins to flow [1]. */
  double yieldStrain();

  /**
   * Flows at a stress that stays.
   *
   * @param moe modulus of elasticity [Pa]
   * @param yield yield stress [Pa]
   */
  static WireStress perfectlyPlastic(double moe, double yield) {
    return hardening(moe, yield, over -> 0);
  }

  /**
   * Flows along a second straight line.
   *
   * @param slope its slope against the whole strain [Pa]
   */
  static WireStress bilinear(double moe, double yield, double slope) {
    return hardening(moe, yield, over -> slope * over);
  }

  /**
   * Ludwik's law: yield stress + K times the strain beyond the yield strain, to the power n.
   *
   * @param k its K [Pa]
   * @param n its exponent [1]
   */
  static WireStress ludwik(double moe, double yield, double k, double n) {
    return hardening(moe, yield, over -> k * Math.pow(over, n));
  }

  /**
   * Hollomon's law: K times strain to the power n, elastic up to where the two meet.
   *
   * @param k its K [Pa]
   * @param n its exponent [1]
   */
  static WireStress hollomon(double moe, double k, double n) {
    double yieldStrain = Math.pow(k / moe, 1 / (1 - n));
    double yield = moe * yieldStrain;
    return hardening(moe, yield, over -> k * Math.pow(yieldStrain + over, n) - yield);
  }

  private static WireStress hardening(double moe, double yield, Hardening more) {
    return new WireStress() {
      @Override
      public double at(double strain) {
        double over = strain - yieldStrain();
        return over <= 0 ? moe * strain : yield + more.beyond(over);
      }

      @Override
      public double moe() {
        return moe;
      }

      @Override
      public double yieldStrain() {
        return yield / moe;
      }
    };
  }

  /** Stress above the yield stress, from the strain beyond the yield strain. */
  @FunctionalInterface
  interface Hardening {
    double beyond(double over);
  }
}
