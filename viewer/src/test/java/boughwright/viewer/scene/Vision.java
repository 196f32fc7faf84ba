// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import java.util.stream.IntStream;

/**
 * Colour vision, simulated in linear sRGB: Machado, Oliveira, Fernandes (2009), "A
 * Physiologically-based Model for Simulation of Color Vision Deficiency", IEEE Transactions on
 * Visualization and Computer Graphics 15(6), https://doi.org/10.1109/TVCG.2009.113, matrices of
 * severity 1.0.
 */
public enum Vision {
  NORMAL(new double[][] {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}),
  PROTANOPIA(
      new double[][] {
        {0.152286, 1.052583, -0.204868},
        {0.114503, 0.786281, 0.099216},
        {-0.003882, -0.048116, 1.051998}
      }),
  DEUTERANOPIA(
      new double[][] {
        {0.367322, 0.860646, -0.227968},
        {0.280085, 0.672501, 0.047413},
        {-0.011820, 0.042940, 0.968881}
      }),
  TRITANOPIA(
      new double[][] {
        {1.255528, -0.076749, -0.178779},
        {-0.078411, 0.930809, 0.147602},
        {0.004733, 0.691367, 0.303900}
      });

  /**
   * Colour difference (CIE 1976) of four just noticeable ones of about 2.3 each (Mahy, Van Eycken,
   * Oosterlinck 1994, "Evaluation of uniform color spaces developed after the adoption of CIELAB
   * and CIELUV", Color Research and Application 19(2); from memory).
   */
  public static final double PLAIN = 4 * 2.3;

  private final double[][] matrix;

  Vision(double[][] matrix) {
    this.matrix = matrix;
  }

  public Lab sees(Colour colour) {
    double[] light = {linear(colour.red()), linear(colour.green()), linear(colour.blue())};
    double[] seen =
        IntStream.range(0, 3)
            .mapToDouble(
                row ->
                    encoded(
                        matrix[row][0] * light[0]
                            + matrix[row][1] * light[1]
                            + matrix[row][2] * light[2]))
            .toArray();
    return new Colour(seen[0], seen[1], seen[2]).lab();
  }

  private static double linear(double part) {
    return part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
  }

  private static double encoded(double light) {
    double clipped = Math.min(1, Math.max(0, light));
    return clipped <= 0.0031308
        ? 12.92 * clipped
        : Math.min(1, 1.055 * Math.pow(clipped, 1 / 2.4) - 0.055);
  }
}
