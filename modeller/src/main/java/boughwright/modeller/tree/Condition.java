// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import java.time.LocalDate;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What the tree has been through, which decides what it can be asked to bear.
 *
 * @param hemisphere where it grows; empty when the person did not say
 * @param repottedOn last repotting
 * @param collectedOn when it was dug from the ground
 * @param workedOn last hard work: a heavy cut or a heavy bend
 * @param extras fields of the file that this version does not know
 */
public record Condition(
    Optional<Hemisphere> hemisphere,
    Optional<LocalDate> repottedOn,
    Optional<LocalDate> collectedOn,
    Optional<LocalDate> workedOn,
    Map<String, Object> extras) {
  /** Nothing is known. */
  public static final Condition UNKNOWN =
      new Condition(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

  public Condition {
    Objects.requireNonNull(hemisphere, "hemisphere");
    Objects.requireNonNull(repottedOn, "repottedOn");
    Objects.requireNonNull(collectedOn, "collectedOn");
    Objects.requireNonNull(workedOn, "workedOn");
    extras = Extras.copyOf(extras);
  }

  /** A condition of which nothing more is said. */
  public Condition(
      Optional<Hemisphere> hemisphere,
      Optional<LocalDate> repottedOn,
      Optional<LocalDate> collectedOn,
      Optional<LocalDate> workedOn) {
    this(hemisphere, repottedOn, collectedOn, workedOn, Map.of());
  }
}
