// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.ground;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * In how many repottings the roots allow a tilt, and how far each one goes.
 *
 * @param tilts angle of the tilt after each repotting, the last one as wanted [rad]; empty if no
 *     number of repottings does it, for no root would be left
 * @param follow the root that is hardest to bend where it would have to follow so as not to be
 *     lost; empty if none is lost
 */
public record TiltSteps(List<Double> tilts, Optional<Follow> follow) {
  /** Bending strain that a root is asked to bear at once [1]: common practice, no source. */
  public static final double STRAIN = 0.01;

  /** More than so many steps of that strain no root follows [1]. Our choice. */
  public static final int MOST_BENDS = 5;

  /** Thickest wood that fingers bend [m]: common practice, no source; brittle woods far less. */
  public static final double FINGERS = 25e-3;

  /**
   * A root bent evenly so that its end stays as deep as measured.
   *
   * @param root the root
   * @param angle angle it is bent by [rad]
   * @param strain bending strain at its thick end: radius over bark times angle over length [1]
   */
  public record Follow(Root root, double angle, double strain) {
    public Follow {
      Objects.requireNonNull(root, "root");
      if (!(angle >= 0 && strain >= 0)) {
        throw new IllegalArgumentException("bent by " + angle + ", strain " + strain);
      }
    }

    /** Repottings, if each adds no more than the usual strain. */
    public int steps() {
      return Math.max(1, (int) Math.ceil(strain / STRAIN));
    }

    /** True if wood does not bear it, however slowly. */
    public boolean hopeless() {
      return steps() > MOST_BENDS;
    }

    /** True if it is too thick for fingers. */
    public boolean tooThick() {
      return root.caliper() > FINGERS;
    }
  }

  public TiltSteps {
    tilts = List.copyOf(tilts);
    Objects.requireNonNull(follow, "follow");
  }

  /** True if one repotting does it. */
  public boolean atOnce() {
    return tilts.size() == 1;
  }
}
