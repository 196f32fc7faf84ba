// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import java.util.Objects;

/**
 * A time in which a bend is held, and what passes meanwhile.
 *
 * @param seconds how long [s]
 * @param creep how live wood creeps
 * @param ring new wood laid on all round, free of stress in the bent pose, one side [m]
 * @param ringStiffness modulus of the new wood over that of the old [1]
 */
public record Spell(double seconds, Creep creep, double ring, double ringStiffness) {
  /** No time at all. */
  public static final Spell NONE = new Spell(0, Creep.NONE, 0, 1);

  public Spell {
    Objects.requireNonNull(creep, "creep");
    if (!(seconds >= 0 && ring >= 0 && ringStiffness > 0)
        || Double.isInfinite(seconds + ring + ringStiffness)) {
      throw new IllegalArgumentException(
          "no spell of " + seconds + " s, ring " + ring + " m, stiffness " + ringStiffness);
    }
  }

  /** Time without growth. */
  public static Spell of(double seconds, Creep creep) {
    return new Spell(seconds, creep, 0, 1);
  }

  /** The same spell where nothing grows. */
  public Spell withoutRing() {
    return new Spell(seconds, creep, 0, ringStiffness);
  }

  /** True if it leaves no trace beyond what flows at once. */
  public boolean isNothing() {
    return ring == 0 && (seconds == 0 || creep.isNone());
  }
}
