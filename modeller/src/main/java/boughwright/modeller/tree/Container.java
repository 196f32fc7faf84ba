// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What the tree stands in: a box with a level rim.
 *
 * @param size inner sizes
 * @param centreX its middle, to the right of the trunk base [m]
 * @param centreY its middle, behind the trunk base [m]
 * @param turn how far its length is turned from the x axis, clockwise seen from above [rad]
 * @param rim height of the rim above the soil line at the trunk; negative where the soil is heaped
 *     [m]
 * @param mass tree, soil and container together; empty where nobody weighed it [kg]
 * @param tiedIn whether the root mass is tied to the container
 * @param extras fields of the file that this version does not know
 */
public record Container(
    Size size,
    double centreX,
    double centreY,
    double turn,
    double rim,
    OptionalDouble mass,
    boolean tiedIn,
    Map<String, Object> extras) {

  /**
   * Inner sizes.
   *
   * @param length length, more than 0 [m]
   * @param width width, more than 0 [m]
   * @param depth depth, more than 0 [m]
   */
  public record Size(double length, double width, double depth) {
    public Size {
      if (!(length > 0 && width > 0 && depth > 0) || Double.isInfinite(length + width + depth)) {
        throw new IllegalArgumentException("a container has a length, a width and a depth");
      }
    }
  }

  public Container {
    Objects.requireNonNull(size, "size");
    Objects.requireNonNull(mass, "mass");
    if (!Double.isFinite(centreX + centreY + turn + rim)) {
      throw new IllegalArgumentException("a container has a place");
    }
    if (mass.isPresent() && !(mass.getAsDouble() > 0)) {
      throw new IllegalArgumentException("a container weighs something");
    }
    extras = Extras.copyOf(extras);
  }
}
