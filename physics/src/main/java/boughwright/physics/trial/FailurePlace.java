// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Where on the bark something would fail, so that a person can mark it.
 *
 * @param segment segment id
 * @param along fraction of the segment's length from its start [1]
 * @param fromUnion distance from where the limb starts to bend; empty on the limb of the trunk base
 *     [m]
 * @param round where round the segment at rest, clockwise looking from its start to its end, from
 *     its upper side, 0 to 2 pi [rad]
 * @param side {@code top}, {@code underside}, {@code left} or {@code right}, seen from the front
 */
public record FailurePlace(
    String segment, double along, OptionalDouble fromUnion, double round, String side) {
  public FailurePlace {
    Objects.requireNonNull(segment, "segment");
    Objects.requireNonNull(fromUnion, "fromUnion");
    Objects.requireNonNull(side, "side");
  }
}
