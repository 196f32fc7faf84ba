// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import boughwright.modeller.plan.Spot;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One thing that can be done about a fault.
 *
 * @param action what
 * @param cuts where it cuts; empty where nothing is cut
 * @param aftermath what the cuts leave; empty where nothing is cut
 * @param place where a graft is needed, the bend starts, or the trunk that is to thicken is
 *     measured; empty for other actions
 * @param until the caliper the trunk is to reach there before the branch goes [m]; only for a
 *     sacrifice
 */
public record Remedy(
    Action action,
    List<Spot> cuts,
    Optional<Aftermath> aftermath,
    Optional<Where> place,
    OptionalDouble until) {
  /** What can be done. */
  public enum Action {
    KEEP,
    SHORTEN,
    REMOVE,
    /** Kept only until the trunk below it is thick enough, then removed. */
    SACRIFICE,
    /** A branch is needed here that does not grow by itself. */
    GRAFT,
    BEND
  }

  public Remedy {
    Objects.requireNonNull(action, "action");
    cuts = List.copyOf(cuts);
    Objects.requireNonNull(aftermath, "aftermath");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(until, "until");
    if (cuts.isEmpty() == aftermath.isPresent()
        || until.isPresent() != (action == Action.SACRIFICE)) {
      throw new IllegalArgumentException(action + " with " + cuts + " until " + until);
    }
  }

  static Remedy keep() {
    return new Remedy(
        Action.KEEP, List.of(), Optional.empty(), Optional.empty(), OptionalDouble.empty());
  }

  static Remedy at(Action action, Where place) {
    return new Remedy(
        action, List.of(), Optional.empty(), Optional.of(place), OptionalDouble.empty());
  }

  static Remedy cutting(Action action, Aftermath aftermath) {
    return new Remedy(
        action,
        aftermath.cuts().stream().map(cut -> cut.face().cut()).toList(),
        Optional.of(aftermath),
        Optional.empty(),
        OptionalDouble.empty());
  }

  static Remedy sacrifice(Aftermath aftermath, double until, Where measured) {
    return new Remedy(
        Action.SACRIFICE,
        aftermath.cuts().stream().map(cut -> cut.face().cut()).toList(),
        Optional.of(aftermath),
        Optional.of(measured),
        OptionalDouble.of(until));
  }
}
