// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.geometry.Point3;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What can be done for a target.
 *
 * @param choices at most five, the nearest first; empty exactly where it is unreachable
 * @param startMiss how far the target is before anything is tied [m]
 * @param limbLength length of the wood that is bent, along its path to the end [m]
 * @param refused pairs of a place and an anchor that are no choice, by reason
 * @param missingAnchor an anchor that is not there and would bring the target much nearer
 * @param noCoil why no coil is a choice, where one was asked for
 * @param unreachable why there is no choice
 */
public record Reached(
    List<Choice> choices,
    double startMiss,
    double limbLength,
    Map<Reason, Integer> refused,
    Optional<MissingAnchor> missingAnchor,
    Optional<Unreachable> noCoil,
    Optional<Unreachable> unreachable) {

  /**
   * An anchor to be made.
   *
   * @param place where the line would hold
   * @param at a point that would do [m, tree frame]
   * @param miss how far the target would be left, whatever the risk [m]
   */
  public record MissingAnchor(TiePlace place, Point3 at, double miss) {}

  public Reached {
    choices = List.copyOf(choices);
    refused = Map.copyOf(refused);
    Objects.requireNonNull(missingAnchor, "missingAnchor");
    if (choices.isEmpty() != unreachable.isPresent()) {
      throw new IllegalArgumentException("there is a choice, or a reason why not");
    }
  }

  /** The same, and why no coil is a choice. */
  Reached withoutCoil(Unreachable why) {
    return new Reached(
        choices, startMiss, limbLength, refused, missingAnchor, Optional.of(why), unreachable);
  }

  static Reached not(Unreachable why, double startMiss, double limbLength) {
    return new Reached(
        List.of(),
        startMiss,
        limbLength,
        Map.of(),
        Optional.empty(),
        Optional.empty(),
        Optional.of(why));
  }
}
