// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

/**
 * Stiffness of green wood by temperature: the change from about 23 °C in percent is 13.12 - 0.1793
 * T above freezing and 22.04 - 0.4578 T below, T in degrees Fahrenheit (Forest Products Laboratory
 * 2021, Wood Handbook FPL-GTR-282, Table 5-16, green).
 */
public final class WarmDay {
  private static final double FREEZING = 0;

  /** The formulas hold from -29 to 66 °C at most; from memory. */
  private static final double COLDEST = -29;

  private static final double HOTTEST = 66;

  private WarmDay() {}

  /**
   * Modulus at a temperature over the one of the tables [1].
   *
   * @param celsius temperature of the wood [°C]
   * @throws IllegalArgumentException outside -29 to 66 °C
   */
  public static double stiffness(double celsius) {
    if (!(celsius >= COLDEST && celsius <= HOTTEST)) {
      throw new IllegalArgumentException("no wood is bent at " + celsius + " degrees Celsius");
    }
    double fahrenheit = celsius * 9 / 5 + 32;
    double percent =
        celsius >= FREEZING ? 13.12 - 0.1793 * fahrenheit : 22.04 - 0.4578 * fahrenheit;
    return 1 + percent / 100;
  }

  /** True where wood is frozen, or nearly, and must not be bent. */
  public static boolean isTooCold(double celsius) {
    return celsius < 2;
  }
}
