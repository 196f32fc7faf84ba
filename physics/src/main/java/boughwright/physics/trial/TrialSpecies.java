// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.species.Species;
import boughwright.modeller.species.SpeciesTable;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.TreeWood;
import java.util.Optional;

/** Whose wood values a tree is tried with. */
public final class TrialSpecies {
  private TrialSpecies() {}

  /** What a tree's wood is computed with, or what stands in for it. */
  public static Species of(Tree tree) {
    SpeciesTable table = SpeciesTable.bundled();
    return tree.wood() instanceof TreeWood.OfSpecies named
        ? table.woodFor(named.key())
        : table.generic();
  }

  /** The species whose limits count for a tree; none for wood of one's own. */
  public static Optional<Species> limitsOf(Tree tree) {
    return tree.wood() instanceof TreeWood.OfSpecies ? Optional.of(of(tree)) : Optional.empty();
  }
}
