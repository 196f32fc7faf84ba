// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.tree.Condition;
import boughwright.modeller.tree.Hemisphere;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The day of a bend and what a person said of the tree then, besides what its file says.
 *
 * @param on the day
 * @param hemisphere where it grows, if said
 * @param repotted last repotting, if said
 * @param collected when it was dug, if said
 * @param worked last hard work, if said
 * @param frost whether it is frozen
 * @param celsius temperature of the wood, if said [°C]
 */
public record Said(
    LocalDate on,
    Optional<Hemisphere> hemisphere,
    Optional<LocalDate> repotted,
    Optional<LocalDate> collected,
    Optional<LocalDate> worked,
    boolean frost,
    OptionalDouble celsius) {
  public Said {
    Objects.requireNonNull(on, "on");
    Objects.requireNonNull(hemisphere, "hemisphere");
    Objects.requireNonNull(repotted, "repotted");
    Objects.requireNonNull(collected, "collected");
    Objects.requireNonNull(worked, "worked");
    Objects.requireNonNull(celsius, "celsius");
  }

  /** A day, and nothing more. */
  public static Said only(LocalDate on) {
    return new Said(
        on,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        false,
        OptionalDouble.empty());
  }

  /** What is said here before what the file says. */
  public Condition over(Condition file) {
    return new Condition(
        hemisphere.or(file::hemisphere),
        repotted.or(file::repottedOn),
        collected.or(file::collectedOn),
        worked.or(file::workedOn));
  }

  /** The occasion of a bend of a tree of which the file says so much. */
  public Occasion occasion(Condition file) {
    return new Occasion(Optional.of(on), over(file), frost);
  }
}
