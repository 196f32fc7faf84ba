// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.ground;

import boughwright.modeller.geometry.Point3;
import java.util.Objects;
import java.util.Optional;

/**
 * Where the mass of the tree stands at a planting angle.
 *
 * @param above wood above the roots, with its bark, foliage left out
 * @param tree the same with what is left of the roots
 * @param whole tree, soil and container; empty if nobody weighed them
 * @param margin distance of the centre of mass from the nearest edge of the floor, of the whole if
 *     it is known, else of the tree; beyond the edge less than 0 [m]; empty without a container
 * @param tips angle by which the container can be tilted until it tips over that edge [rad]; with
 *     the margin
 */
public record Balance(
    Body above, Body tree, Optional<Body> whole, Optional<Double> margin, Optional<Double> tips) {

  /**
   * A body with a weight.
   *
   * @param mass mass, more than 0 [kg]
   * @param centre centre of mass [m, viewer's frame]
   */
  public record Body(double mass, Point3 centre) {
    public Body {
      if (!(mass > 0) || Double.isInfinite(mass)) {
        throw new IllegalArgumentException("mass is " + mass);
      }
      Objects.requireNonNull(centre, "centre");
    }

    /** Both together. */
    Body with(Body other) {
      double sum = mass + other.mass;
      return new Body(sum, centre.toward(other.centre, other.mass / sum));
    }
  }

  public Balance {
    Objects.requireNonNull(above, "above");
    Objects.requireNonNull(tree, "tree");
    Objects.requireNonNull(whole, "whole");
    if (margin.isPresent() != tips.isPresent()) {
      throw new IllegalArgumentException("margin " + margin + ", tips at " + tips);
    }
  }
}
