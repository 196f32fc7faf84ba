// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.tree.Condition;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * When the bend is to be made, and what the tree has been through by then.
 *
 * @param on the day; empty when the person did not say
 * @param condition what the tree has been through
 * @param frost whether the wood is frozen, or freezes before the line is off again
 */
public record Occasion(Optional<LocalDate> on, Condition condition, boolean frost) {
  /** Nothing is known of the day and the tree. */
  public static final Occasion UNKNOWN = new Occasion(Optional.empty(), Condition.UNKNOWN, false);

  public Occasion {
    Objects.requireNonNull(on, "on");
    Objects.requireNonNull(condition, "condition");
  }
}
