// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import static boughwright.modeller.edit.Draft.edit;

import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.Wound;
import java.util.ArrayList;
import java.util.List;

/** Changes of the wounds. */
public final class WoundEdits {
  private static final Named<Wound> WOUNDS = new Named<>("wound", Wound::id);

  private WoundEdits() {}

  /** A free name for a wound. */
  public static String nextId(Document document) {
    return NextId.numbered("w", WOUNDS.ids(document.tree().wounds()));
  }

  private interface Change {
    void on(List<Wound> wounds) throws InputException;
  }

  private static Edit wounds(String name, Change change) {
    return edit(
        name,
        draft -> {
          List<Wound> all = new ArrayList<>(draft.wounds);
          change.on(all);
          for (Wound wound : all) {
            draft.get(wound.segment());
          }
          draft.wounds = all;
        });
  }

  /** Adds a wound. */
  public static Edit add(Wound wound) {
    return wounds("Add wound " + wound.id(), all -> WOUNDS.add(all, wound));
  }

  /** Puts another wound in the place of one; it may have another name and be elsewhere. */
  public static Edit change(String id, Wound wound) {
    return wounds("Change wound " + id, all -> WOUNDS.replace(all, id, wound));
  }

  /** Takes a wound out. */
  public static Edit delete(String id) {
    return wounds("Delete wound " + id, all -> WOUNDS.remove(all, id));
  }
}
