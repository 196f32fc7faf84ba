// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

import boughwright.modeller.tree.AnchorKind;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a guy-line is made up of, as far as the person said.
 *
 * @param strand what the line is made of; empty for a line that does not stretch or break
 * @param tightener what shortens it
 * @param padLength length of its pad along the branch [m]
 * @param lever how far a stiff lever, lashed along the segment, holds the line beyond its place on
 *     the segment, in the segment's direction at rest; 0 for none [m]
 * @param anchorKind what a fixed anchor is; empty where nobody said, or tied to the tree
 */
public record Tackle(
    Optional<Strand> strand,
    Optional<Tightener> tightener,
    OptionalDouble padLength,
    double lever,
    Optional<AnchorKind> anchorKind) {
  /** Nothing is said. */
  public static final Tackle UNSAID =
      new Tackle(Optional.empty(), Optional.empty(), OptionalDouble.empty(), 0, Optional.empty());

  public Tackle {
    Objects.requireNonNull(strand, "strand");
    Objects.requireNonNull(tightener, "tightener");
    Objects.requireNonNull(padLength, "padLength");
    if (padLength.isPresent() && !(padLength.getAsDouble() > 0)) {
      throw new IllegalArgumentException("a pad has a length");
    }
    if (!(lever >= 0) || Double.isInfinite(lever)) {
      throw new IllegalArgumentException("a lever is 0 or longer, not " + lever);
    }
    Objects.requireNonNull(anchorKind, "anchorKind");
  }
}
