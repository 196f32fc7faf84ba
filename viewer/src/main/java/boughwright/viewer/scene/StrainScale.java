// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import java.util.ArrayList;
import java.util.List;

/**
 * Colours for signed strain at the bark: dark blue where the wood is squeezed, the colour of bark
 * where it is at rest, bright amber where it is stretched.
 *
 * <p>Our own ramp: straight lines in CIE L*a*b* from the bark tone to two ends whose lightness
 * falls on one side and rises on the other, so that it also reads in grey and with any colour
 * vision. The hues of the ends are near the blue and the orange of the set by Okabe and Ito (2008,
 * "Color Universal Design").
 *
 * @param limit strain at both ends of the scale, more than 0 [1]
 */
public record StrainScale(double limit) {
  private static final Lab SQUEEZED = new Lab(30, 12, -54);
  private static final Lab REST = Palette.BARK.lab();
  private static final Lab STRETCHED = new Lab(76, 30, 78);
  private static final double[] STEPS = {1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10};

  public StrainScale {
    if (!(limit > 0) || Double.isInfinite(limit)) {
      throw new IllegalArgumentException("limit is " + limit + ", a positive number is expected");
    }
  }

  /** The scale with the smallest round limit that a peak fits into; 0.1 % is the smallest. */
  public static StrainScale forPeak(double peak) {
    double least = Math.max(peak, 1e-3);
    double power = Math.pow(10, Math.floor(Math.log10(least)));
    for (double step : STEPS) {
      if (step * power >= least * (1 - 1e-9)) {
        return new StrainScale(step * power);
      }
    }
    return new StrainScale(10 * power);
  }

  /**
   * The colour of a strain; beyond the limit it stays that of the limit.
   *
   * @param strain positive where the wood is stretched [1]
   */
  public Colour colour(double strain) {
    return over(Palette.BARK, strain);
  }

  /** The colour of a strain on bark of another tone, which shows where the wood is at rest. */
  public Colour over(Colour bark, double strain) {
    double share = Math.min(1, Math.abs(strain) / limit);
    Lab rest = bark == Palette.BARK ? REST : bark.lab();
    return Colour.of(rest.toward(strain < 0 ? SQUEEZED : STRETCHED, share));
  }

  /** Strains to print beside the scale, from most squeezed to most stretched [1]. */
  public List<Double> ticks() {
    List<Double> ticks = new ArrayList<>();
    for (int i = -2; i <= 2; i++) {
      ticks.add(limit * i / 2);
    }
    return ticks;
  }
}
