// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What a tree wears in leaf.
 *
 * @param leaves whether it stands bare in winter; empty where nobody said
 * @param pads its pads in file order
 * @param extras fields of the file that this version does not know
 */
public record Foliage(Optional<Leaves> leaves, List<Pad> pads, Map<String, Object> extras) {
  /** Nothing is said. */
  public static final Foliage UNSAID = new Foliage(Optional.empty(), List.of(), Map.of());

  public Foliage {
    Objects.requireNonNull(leaves, "leaves");
    pads = List.copyOf(pads);
    extras = Extras.copyOf(extras);
  }

  /** The same foliage with other pads. */
  public Foliage withPads(List<Pad> others) {
    return new Foliage(leaves, others, extras);
  }

  /** The same foliage, of a tree that stands bare in winter or does not. */
  public Foliage withLeaves(Optional<Leaves> other) {
    return new Foliage(other, pads, extras);
  }
}
