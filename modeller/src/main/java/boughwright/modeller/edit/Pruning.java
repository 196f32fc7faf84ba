// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import boughwright.modeller.plan.Aid;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.problem.InputException;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Takes branches out of a draft with everything that refers to them. */
final class Pruning {
  private Pruning() {}

  static void prune(Draft draft, List<String> ids) throws InputException {
    Set<String> gone = new HashSet<>();
    for (String id : ids) {
      SegmentDraft base = draft.get(id);
      if (base.parent.isEmpty()) {
        throw Refusal.of(
            base.subject(),
            "base-deleted",
            "it is the trunk base, and the whole tree stands on it",
            "Change its sizes instead, or start a new tree");
      }
      draft.branch(base).forEach(segment -> gone.add(segment.id));
    }
    draft.remove(gone);
    new Relocated(new Without(gone)).apply(draft);
    Woods.drop(draft, gone);
  }

  private record Without(Set<String> gone) implements Relocation {
    @Override
    public Optional<Spot> spot(Spot spot) {
      return gone.contains(spot.segment()) ? Optional.empty() : Optional.of(spot);
    }

    @Override
    public Optional<String> segment(String id) {
      return gone.contains(id) ? Optional.empty() : Optional.of(id);
    }

    @Override
    public List<Aid> aid(Aid aid) {
      return gone.contains(aid.segment()) ? List.of() : List.of(aid);
    }
  }
}
