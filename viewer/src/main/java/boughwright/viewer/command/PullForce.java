// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.units.ForceUnit;
import java.util.OptionalDouble;

/**
 * A pull as it was given.
 *
 * @param option the option, with its unit at the end of its name
 * @param hung whether it was a hung weight, which pulls straight down and is known from a kitchen
 *     scale
 * @param unit what the number counts
 * @param typed the number
 */
record PullForce(String option, boolean hung, ForceUnit unit, double typed) {
  /** One standard deviation of a weight from a kitchen scale [1]. Common practice, no source. */
  private static final double HUNG_ERROR = 0.01;

  double newtons() {
    return unit.toNewtons(typed);
  }

  /** One standard deviation of the force where the person gives none [1]. */
  OptionalDouble error() {
    return hung ? OptionalDouble.of(HUNG_ERROR) : OptionalDouble.empty();
  }

  /** The force as it was given, with its unit. */
  String words() {
    return Shown.plain(typed) + (unit == ForceUnit.NEWTON ? " N" : " kg");
  }
}
