// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

import boughwright.modeller.tree.Extras;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * A line that pulls a branch toward an anchor; it only pulls, never pushes.
 *
 * @param id name within the plan
 * @param at where it is tied to the tree
 * @param padRound where its pad sits round the segment at rest, clockwise looking from the
 *     segment's start to its end, from the upper side [rad]; empty for a line that acts on the axis
 * @param anchor what it is tied to
 * @param hold what is held fixed
 * @param tackle what it is made up of
 * @param extras fields of the file that this version does not know
 */
public record GuyLine(
    String id,
    Spot at,
    OptionalDouble padRound,
    Anchor anchor,
    Hold hold,
    Tackle tackle,
    Map<String, Object> extras) {
  public GuyLine {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(at, "at");
    Objects.requireNonNull(padRound, "padRound");
    Objects.requireNonNull(anchor, "anchor");
    Objects.requireNonNull(hold, "hold");
    Objects.requireNonNull(tackle, "tackle");
    extras = Extras.copyOf(extras);
  }

  /** A line of which nothing more is said. */
  public GuyLine(
      String id,
      Spot at,
      OptionalDouble padRound,
      Anchor anchor,
      Hold hold,
      Map<String, Object> extras) {
    this(id, at, padRound, anchor, hold, Tackle.UNSAID, extras);
  }

  /** The same line tied and held otherwise. */
  public GuyLine with(Spot place, Anchor tiedTo, Hold held) {
    return new GuyLine(id, place, padRound, tiedTo, held, tackle, extras);
  }

  /** The same line tied straight to its place. */
  public GuyLine withoutLever() {
    Tackle bare =
        new Tackle(tackle.strand(), tackle.tightener(), tackle.padLength(), 0, tackle.anchorKind());
    return new GuyLine(id, at, padRound, anchor, hold, bare, extras);
  }
}
