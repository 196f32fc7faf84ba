// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * What the tree has been through, which decides what it can be asked to bear.
 *
 * @param hemisphere where it grows; empty when the person did not say
 * @param repottedOn last repotting
 * @param collectedOn when it was dug from the ground
 * @param workedOn last hard work: a heavy cut or a heavy bend
 */
public record Condition(
    Optional<Hemisphere> hemisphere,
    Optional<LocalDate> repottedOn,
    Optional<LocalDate> collectedOn,
    Optional<LocalDate> workedOn) {
  /** Nothing is known. */
  public static final Condition UNKNOWN =
      new Condition(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

  public Condition {
    Objects.requireNonNull(hemisphere, "hemisphere");
    Objects.requireNonNull(repottedOn, "repottedOn");
    Objects.requireNonNull(collectedOn, "collectedOn");
    Objects.requireNonNull(workedOn, "workedOn");
  }
}
