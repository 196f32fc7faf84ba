// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import static boughwright.modeller.edit.Draft.edit;

import boughwright.modeller.plan.Document;
import boughwright.modeller.tree.Wound;
import java.util.ArrayList;
import java.util.List;

/** Changes of the wounds. */
public final class WoundEdits {
  private static final String WHAT = "wound";

  private WoundEdits() {}

  /** A free name for a wound. */
  public static String nextId(Document document) {
    return NextId.numbered("w", document.tree().wounds().stream().map(Wound::id).toList());
  }

  /** Adds a wound. */
  public static Edit add(Wound wound) {
    return edit(
        "Add wound " + wound.id(),
        draft -> {
          draft.get(wound.segment());
          List<Wound> all = new ArrayList<>(draft.wounds);
          Named.requireFree(WHAT, wound.id(), all.stream().map(Wound::id).toList());
          all.add(wound);
          draft.wounds = all;
        });
  }

  /** Puts another wound in the place of one; it may have another name and be elsewhere. */
  public static Edit change(String id, Wound wound) {
    return edit(
        "Change wound " + id,
        draft -> {
          draft.get(wound.segment());
          List<Wound> all = new ArrayList<>(draft.wounds);
          Named.replace(WHAT, all, Wound::id, new Named.Swap<>(id, wound));
          draft.wounds = all;
        });
  }

  /** Takes a wound out. */
  public static Edit delete(String id) {
    return edit(
        "Delete wound " + id,
        draft -> {
          List<Wound> all = new ArrayList<>(draft.wounds);
          all.remove(Named.at(WHAT, all, Wound::id, id));
          draft.wounds = all;
        });
  }
}
