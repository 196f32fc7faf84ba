// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

import boughwright.modeller.tree.Extras;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Something done to a stretch of one segment to make it bend, before it is bent.
 *
 * @param kind what is done
 * @param segment where
 * @param from start of the stretch, a fraction of the segment's length [1]
 * @param to end of the stretch, more than from [1]
 * @param round middle of a slot or cut round the segment, as a pad's; empty for a wrap or a hollow
 *     [rad]
 * @param width width of a slot across, or of a relief cut along the segment [m]
 * @param depth depth of a slot or cut into the wood; diameter of a hollow [m]
 * @param count relief cuts spread evenly over the stretch, else 1 [1]
 * @param extras fields of the file that this version does not know
 */
public record Aid(
    Kind kind,
    String segment,
    double from,
    double to,
    OptionalDouble round,
    OptionalDouble width,
    OptionalDouble depth,
    int count,
    Map<String, Object> extras) {

  /** What can be done. */
  public enum Kind {
    /** Raffia or tape, wound tightly. */
    WRAP,
    /** A slot sawn or routed along the segment. */
    SLOT,
    /** The middle drilled or routed out. */
    HOLLOW,
    /** Cuts across the inside of the bend, which close. */
    RELIEF_CUT
  }

  public Aid {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(segment, "segment");
    Objects.requireNonNull(round, "round");
    Objects.requireNonNull(width, "width");
    Objects.requireNonNull(depth, "depth");
    if (!(from >= 0 && from < to && to <= 1) || count < 1) {
      throw new IllegalArgumentException("an aid has a stretch of its segment and a count");
    }
    boolean cut = kind == Kind.SLOT || kind == Kind.RELIEF_CUT;
    require(cut, round, "round");
    require(cut, width, "width");
    require(kind != Kind.WRAP, depth, "depth");
    extras = Extras.copyOf(extras);
  }

  private static void require(boolean needed, OptionalDouble value, String name) {
    if (needed != value.isPresent()) {
      throw new IllegalArgumentException(name + (needed ? " is missing" : " has no meaning"));
    }
  }
}
