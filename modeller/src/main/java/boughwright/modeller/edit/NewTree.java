// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.Features;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.TreeDraft;
import boughwright.modeller.tree.TreeWood;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The tree a person starts to sketch from. */
public final class NewTree {
  /** A trunk to be changed by whoever measures it: a stout young tree's; assumption [m]. */
  private static final double LENGTH = 0.1;

  private static final double CALIPER_START = 0.03;
  private static final double CALIPER_END = 0.025;

  private NewTree() {}

  /**
   * A document with one upright trunk segment, {@code t1}, from the trunk base on.
   *
   * @param name what the person calls the tree
   * @param species a name or key of the species table, or another name
   * @throws InputException if a name is blank or cannot be kept
   */
  public static Document document(String name, String species) throws InputException {
    Segment trunk =
        new Segment(
            "t1",
            Optional.empty(),
            1,
            Optional.empty(),
            Kind.TRUNK,
            Optional.of(Point3.ORIGIN),
            new Point3(0, 0, LENGTH),
            CALIPER_START,
            CALIPER_END,
            OptionalDouble.empty(),
            Optional.empty(),
            Features.NONE,
            Map.of());
    Tree tree =
        new TreeDraft(
                TreeEdits.checkedName("the name", name),
                new TreeWood.OfSpecies(TreeEdits.checkedName("the species", species)),
                List.of(trunk))
            .build();
    return new Document(tree, List.of(), Map.of());
  }
}
