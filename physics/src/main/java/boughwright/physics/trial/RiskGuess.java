// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

/**
 * What a pose risks, guessed from its margins.
 *
 * @param breaking probability of any crack, split, shear or tear [1]
 * @param kink probability of a kink [1]
 */
public record RiskGuess(double breaking, double kink) {
  /** Nothing is near its limit. */
  public static final RiskGuess NONE = new RiskGuess(0, 0);

  public RiskGuess {
    if (!(breaking >= 0 && breaking <= 1 && kink >= 0 && kink <= 1)) {
      throw new IllegalArgumentException("not probabilities: " + breaking + ", " + kink);
    }
  }
}
