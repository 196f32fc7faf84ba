// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

/** What is held fixed in a guy-line. */
public sealed interface Hold {

  /**
   * A tension that stays whatever the branch does.
   *
   * @param newtons tension, more than 0 [N]
   */
  record Tension(double newtons) implements Hold {
    public Tension {
      require(newtons, "tension");
    }
  }

  /**
   * The tightened length from pad to anchor.
   *
   * @param metres length, more than 0 [m]
   */
  record Length(double metres) implements Hold {
    public Length {
      require(metres, "length");
    }
  }

  /**
   * The length taken out of the straight distance between the line's two points in the measured
   * pose.
   *
   * @param metres shortening, more than 0 [m]
   */
  record Shortening(double metres) implements Hold {
    public Shortening {
      require(metres, "shortening");
    }
  }

  private static void require(double value, String name) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(name + " is " + value + ", a positive number is expected");
    }
  }
}
