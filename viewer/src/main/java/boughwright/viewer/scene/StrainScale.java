// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import java.util.ArrayList;
import java.util.List;

/**
 * Colours for signed strain at the bark: dark blue where the wood is squeezed, the colour of bark
 * where it is at rest, bright amber where it is stretched.
 *
 * <p>Our own ramp: from the bark tone two straight lines in CIE L*a*b* to each side, by way of a
 * clear blue and a clear orange, whose lightness falls all along on one side and rises on the
 * other, so that it also reads in grey and with any colour vision.
 *
 * @param limit strain at both ends of the scale, more than 0 [1]
 */
public record StrainScale(double limit) {
  private static final Lab[] SQUEEZED = {new Lab(40, 8, -46), new Lab(22, 18, -38)};
  private static final Lab[] STRETCHED = {new Lab(62, 28, 50), new Lab(80, 10, 78)};
  private static final double[] STEPS = {1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10};

  /** Cracks and cuts strain a place more than this; its neighbours must still read [1]. */
  private static final double MOST = 0.03;

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
   * The scale for a picture: as for the peak, but never beyond 3 %, which no wood outlives whole.
   */
  public static StrainScale forPicture(double peak) {
    return forPeak(Math.min(MOST, peak));
  }

  /** Whether a strain beyond the limit may be shown with the colour of the limit. */
  public boolean isOpen() {
    return limit >= MOST;
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
    Lab[] side = strain < 0 ? SQUEEZED : STRETCHED;
    return Colour.of(
        share <= 0.5
            ? bark.lab().toward(side[0], 2 * share)
            : side[0].toward(side[1], 2 * share - 1));
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
