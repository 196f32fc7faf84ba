// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Thicknesses that wire and cord are sold in: common practice, no source. Copper is sold by
 * millimetres and by the even numbers of the American wire gauge.
 */
public final class Gauges {
  /** Thickest and thinnest American wire gauge: four noughts, and 40. */
  public static final int THICKEST_AWG = -3;

  public static final int THINNEST_AWG = 40;

  /** A thickness this close to a sold one is that one, as wire is drawn and measured [1]. */
  private static final double SAME = 0.015;

  /** Below this part of the thinnest, or above the other part of the thickest, is not sold [1]. */
  private static final double FAR_BELOW = 0.6;

  private static final double FAR_ABOVE = 1.4;

  private static final Map<Material, List<Double>> SOLD = new EnumMap<>(Material.class);

  static {
    put(Material.ALUMINIUM, 1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6, 8);
    put(Material.COPPER_ANNEALED, 0.8, 0.9, 1, 1.2, 1.3, 1.6, 2, 2.6, 3.2, 4, 5);
    put(Material.STEEL_SOFT, 0.8, 1, 1.2, 1.4, 1.6, 1.8, 2, 2.5, 3, 4, 5);
    put(Material.STAINLESS, 0.5, 0.6, 0.8, 1, 1.2, 1.5, 2, 2.5, 3, 4, 5);
    put(Material.CORD, 1, 1.5, 2, 2.5, 3, 4, 5, 6, 8);
  }

  private Gauges() {}

  private static void put(Material material, double... millimetres) {
    SOLD.put(material, Arrays.stream(millimetres).mapToObj(mm -> mm / 1000).toList());
  }

  /** The thicknesses sold of a material, the thinnest first [m]. */
  public static List<Double> sold(Material material) {
    return SOLD.get(material);
  }

  /** The sold thickness nearest to another [m]. */
  public static double nearest(Material material, double gauge) {
    return sold(material).stream()
        .min(Comparator.comparingDouble(one -> Math.abs(one - gauge)))
        .orElseThrow();
  }

  /** Whether a material is sold in a thickness. */
  public static boolean isSold(Material material, double gauge) {
    return isSame(nearest(material, gauge), gauge)
        || material == Material.COPPER_ANNEALED && isEvenAwg(gauge);
  }

  /** Whether nothing of a material is sold that comes near a thickness. */
  public static boolean isFarFromSold(Material material, double gauge) {
    List<Double> sold = sold(material);
    return !(gauge >= FAR_BELOW * sold.get(0) && gauge <= FAR_ABOVE * sold.get(sold.size() - 1));
  }

  private static boolean isEvenAwg(double gauge) {
    for (int number = 4; number <= 20; number += 2) {
      if (isSame(fromAwg(number), gauge)) {
        return true;
      }
    }
    return false;
  }

  private static boolean isSame(double sold, double gauge) {
    return Math.abs(gauge - sold) <= SAME * sold;
  }

  /**
   * The diameter of a wire by the American wire gauge, 0.127 mm times 92 to the power (36 - number)
   * / 39 (ASTM B258) [m].
   *
   * @param number the gauge; 0 is one nought, -3 four noughts
   * @throws IllegalArgumentException if the gauge does not exist
   */
  public static double fromAwg(int number) {
    if (number < THICKEST_AWG || number > THINNEST_AWG) {
      throw new IllegalArgumentException(
          "gauges go from " + THICKEST_AWG + " to " + THINNEST_AWG + ", not " + number);
    }
    return 0.127e-3 * Math.pow(92, (36 - number) / 39.0);
  }
}
