// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

/**
 * A colour in CIE L*a*b*, white point D65.
 *
 * @param lightness L*, 0 to 100
 * @param a toward red when positive
 * @param b toward yellow when positive
 */
public record Lab(double lightness, double a, double b) {

  /** The colour a fraction of the way toward {@code other}: 0 is this one, 1 the other. */
  public Lab toward(Lab other, double fraction) {
    return new Lab(
        lightness + fraction * (other.lightness - lightness),
        a + fraction * (other.a - a),
        b + fraction * (other.b - b));
  }

  /** The colour difference of 1976: the distance in L*a*b*. */
  public double difference(Lab other) {
    return Math.sqrt(
        Math.pow(lightness - other.lightness, 2)
            + Math.pow(a - other.a, 2)
            + Math.pow(b - other.b, 2));
  }
}
