// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.stage;

import boughwright.modeller.tree.Hemisphere;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * What a person asks of a course.
 *
 * @param start the day of the first pull; empty when nobody said
 * @param hemisphere where the tree grows; empty when nobody said
 * @param risk most that the odds of breaking may come to at any stage [1]
 * @param target part of the bend that must stay when everything is taken off [1]
 * @param repots whether the tree is repotted, or turned to its planting angle, before the lines are
 *     off
 */
public record CourseOptions(
    Optional<LocalDate> start,
    Optional<Hemisphere> hemisphere,
    double risk,
    double target,
    boolean repots) {
  /** What the verdicts allow a bend in stages (docs/user/verdicts.md) [1]. */
  public static final double USUAL_RISK = 1 / 15.0;

  /** Common practice asks for four fifths; no source [1]. */
  public static final double USUAL_TARGET = 0.8;

  /** Nothing is said. */
  public static final CourseOptions USUAL =
      new CourseOptions(Optional.empty(), Optional.empty(), USUAL_RISK, USUAL_TARGET, false);

  public CourseOptions {
    Objects.requireNonNull(start, "start");
    Objects.requireNonNull(hemisphere, "hemisphere");
    if (!(risk > 0 && risk <= 1 && target > 0 && target < 1)) {
      throw new IllegalArgumentException("risk " + risk + " and part kept " + target + ": 0 to 1");
    }
  }

  /** From a day on, in one half of the earth. */
  public CourseOptions from(LocalDate day, Optional<Hemisphere> half) {
    return new CourseOptions(Optional.of(day), half, risk, target, repots);
  }

  public CourseOptions withRisk(double asked) {
    return new CourseOptions(start, hemisphere, asked, target, repots);
  }

  public CourseOptions repotting() {
    return new CourseOptions(start, hemisphere, risk, target, true);
  }
}
