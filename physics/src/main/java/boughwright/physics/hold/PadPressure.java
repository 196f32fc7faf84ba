// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.hold;

import java.util.OptionalDouble;

/** What a pad does to the bark under it, and whether it stays where it is. */
public final class PadPressure {
  /**
   * Pressure that living bark and the cambium under it bear for months, and from which they are
   * taken to be crushed [Pa]. Assumption; the range is all that is said of it.
   */
  static final double BEARS = 0.5e6;

  static final double CRUSHES = 1.0e6;

  /** Part of the crushing stress across the grain that is used [1]. Assumption. */
  static final double OF_CRUSHING = 0.5;

  /** Friction of a pad of rubber or cloth on bark, low and high [1]. Assumption. */
  static final double FRICTION_LOW = 0.3;

  static final double FRICTION_HIGH = 0.6;

  private PadPressure() {}

  /**
   * Pressure a pull makes under its pad, F / (w D) [Pa].
   *
   * @param pull pull of the line [N]
   * @param length length of the pad along the branch [m]
   * @param diameter diameter of the branch over bark [m]
   */
  public static double of(double pull, double length, double diameter) {
    return pull / (length * diameter);
  }

  /**
   * What may be used [Pa].
   *
   * @param compressionPerp crushing stress of the wood across the grain, if it is known [Pa]
   */
  public static double bears(OptionalDouble compressionPerp) {
    return Math.min(BEARS, OF_CRUSHING * compressionPerp.orElse(Double.POSITIVE_INFINITY));
  }

  /** From where bark or wood are taken to be crushed [Pa]. */
  public static double crushes(OptionalDouble compressionPerp) {
    return Math.min(CRUSHES, compressionPerp.orElse(Double.POSITIVE_INFINITY));
  }

  /** Length of pad that keeps the pressure at what may be used [m]. */
  public static double lengthNeeded(double pull, double diameter, OptionalDouble compressionPerp) {
    return pull / (bears(compressionPerp) * diameter);
  }

  /** Whether a pad stays, may slide, or slides. */
  public enum Grip {
    STAYS,
    MAY_SLIDE,
    SLIDES
  }

  /**
   * Whether a pad slides: the pull along the branch against friction from the pull across it.
   *
   * @param offSquare angle by which the line is off square to the branch, 0 to a right angle [rad]
   */
  public static Grip grip(double offSquare) {
    double slope = Math.tan(offSquare);
    if (slope <= FRICTION_LOW) {
      return Grip.STAYS;
    }
    return slope <= FRICTION_HIGH ? Grip.MAY_SLIDE : Grip.SLIDES;
  }
}
