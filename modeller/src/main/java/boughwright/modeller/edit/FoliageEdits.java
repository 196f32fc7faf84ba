// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import static boughwright.modeller.edit.Draft.edit;

import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.Leaves;
import boughwright.modeller.tree.Pad;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Changes of what a tree wears in leaf. */
public final class FoliageEdits {
  private static final Named<Pad> PADS = new Named<>("pad", Pad::id);

  private FoliageEdits() {}

  private interface Change {
    void on(List<Pad> pads) throws InputException;
  }

  private static Edit pads(String name, Change change) {
    return edit(
        name,
        draft -> {
          List<Pad> all = new ArrayList<>(draft.pads);
          change.on(all);
          for (Pad pad : all) {
            draft.get(pad.segment());
          }
          draft.pads = all;
        });
  }

  /** A free name for a pad. */
  public static String nextId(Document document) {
    return NextId.numbered("f", PADS.ids(document.tree().foliage().pads()));
  }

  /** Adds a pad. */
  public static Edit add(Pad pad) {
    return pads("Add pad " + pad.id(), all -> PADS.add(all, pad));
  }

  /** Adds several pads at once. */
  public static Edit addAll(List<Pad> pads) {
    return pads(
        "Add " + pads.size() + (pads.size() == 1 ? " pad" : " pads"),
        all -> {
          for (Pad pad : pads) {
            PADS.add(all, pad);
          }
        });
  }

  /** Puts another pad in the place of one; it may have another name and be elsewhere. */
  public static Edit change(String id, Pad pad) {
    return pads("Change pad " + id, all -> PADS.replace(all, id, pad));
  }

  /** Takes a pad out. */
  public static Edit delete(String id) {
    return pads("Delete pad " + id, all -> PADS.remove(all, id));
  }

  /** Says whether the tree stands bare in winter; empty for not said. */
  public static Edit leaves(Optional<Leaves> leaves) {
    return new Edit(
        "Set when it is in leaf",
        document -> {
          var foliage = document.tree().foliage().withLeaves(leaves);
          return document.withTree(document.tree().withFoliage(foliage));
        });
  }
}
