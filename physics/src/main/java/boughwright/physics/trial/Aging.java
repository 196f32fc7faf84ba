// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.physics.wood.Creep;
import boughwright.physics.wood.Spell;
import java.util.Objects;

/**
 * What is taken for true of wood in time.
 *
 * @param creep how it creeps
 * @param ringStiffness modulus of new wood over that of the old [1]
 */
public record Aging(Creep creep, double ringStiffness) {
  /** The middle law of live branches, new wood a little softer than the old. */
  public static final Aging MIDDLE = new Aging(Creep.MIDDLE, 0.85);

  /**
   * Modulus of new wood over that of the old, 0.7 to 1.0 (assumption: young rings are softer); the
   * stiffer, the better it holds.
   */
  public static final Aging LOW = new Aging(Creep.LOW, 0.7);

  public static final Aging HIGH = new Aging(Creep.HIGH, 1);

  public Aging {
    Objects.requireNonNull(creep, "creep");
    if (!(ringStiffness > 0) || Double.isInfinite(ringStiffness)) {
      throw new IllegalArgumentException("new wood has a stiffness, not " + ringStiffness);
    }
  }

  /** A spell of so long, in which a ring grows [s], [m]. */
  Spell spell(double seconds, double ring) {
    return new Spell(seconds, creep, ring, ringStiffness);
  }
}
