// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.ground;

/**
 * How the start of a root lies to the soil line; above it more than 0.
 *
 * @param axis height of its middle [m]
 * @param upper height of its upper side [m]
 * @param under height of its underside [m]
 */
public record Level(double axis, double upper, double under) {
  /** What is seen of the start of a root. */
  public enum State {
    /** Its upper side is under the soil. */
    BURIED,
    /** The soil line runs across it. */
    SHOWING,
    /** Its underside is above the soil: there is air beneath. */
    CLEAR
  }

  public Level {
    if (!(under <= axis && axis <= upper)) {
      throw new IllegalArgumentException("levels are " + under + ", " + axis + ", " + upper);
    }
  }

  public State state() {
    if (upper < 0) {
      return State.BURIED;
    }
    return under > 0 ? State.CLEAR : State.SHOWING;
  }

  /** How deep its upper side is under the soil; 0 if it is not [m]. */
  public double buriedBy() {
    return Math.max(0, -upper);
  }

  /** How much air is beneath; 0 if there is none [m]. */
  public double clearBy() {
    return Math.max(0, under);
  }
}
