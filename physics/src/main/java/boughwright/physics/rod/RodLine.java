// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import boughwright.modeller.geometry.Point3;
import java.util.Objects;

/**
 * A line that pulls two points together and never pushes.
 *
 * @param at where it holds the rods
 * @param other its other end
 * @param hold what is given
 */
public record RodLine(RodPlace at, End other, Hold hold) {
  /** The other end of a line. */
  public sealed interface End {}

  /**
   * An end that does not move.
   *
   * @param point where [m]
   */
  public record FixedEnd(Point3 point) implements End {}

  /**
   * An end tied to the rods.
   *
   * @param place where
   */
  public record MovingEnd(RodPlace place) implements End {}

  /** What is given of a line. */
  public sealed interface Hold {}

  /**
   * A tension that stays.
   *
   * @param tension pull [N]
   */
  public record Constant(double tension) implements Hold {
    public Constant {
      if (!(tension >= 0) || Double.isInfinite(tension)) {
        throw new IllegalArgumentException("tension is " + tension + " N, 0 or more");
      }
    }
  }

  /**
   * A length; the line hangs loose while its ends are closer than that.
   *
   * @param length unstretched length [m]
   * @param compliance stretch per tension, 0 for a line that does not stretch [m/N]
   */
  public record Length(double length, double compliance) implements Hold {
    public Length {
      if (!(length > 0) || !(compliance >= 0) || Double.isInfinite(length + compliance)) {
        throw new IllegalArgumentException("length " + length + ", compliance " + compliance);
      }
    }
  }

  public RodLine {
    Objects.requireNonNull(at, "at");
    Objects.requireNonNull(other, "other");
    Objects.requireNonNull(hold, "hold");
  }
}
