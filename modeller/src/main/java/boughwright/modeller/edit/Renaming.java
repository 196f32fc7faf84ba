// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import boughwright.modeller.plan.Aid;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.problem.InputException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Gives segments other names wherever they are spoken of; two may change names. */
final class Renaming {
  private Renaming() {}

  /**
   * Renames segments at once.
   *
   * @param names new name by old name
   */
  static void rename(Draft draft, Map<String, String> names) throws InputException {
    draft.rename(names);
    new Relocated(new Names(names)).apply(draft);
    draft.overrides =
        draft.overrides.stream()
            .map(
                one ->
                    names.containsKey(one.pattern())
                        ? Woods.named(names.get(one.pattern()), Optional.of(one))
                        : one)
            .toList();
    Woods.drop(draft, names.keySet());
    Map<String, String> from = new LinkedHashMap<>();
    names.forEach((old, now) -> from.put(now, old));
    Woods.keep(draft, from);
  }

  private record Names(Map<String, String> names) implements Relocation {
    private String now(String old) {
      return names.getOrDefault(old, old);
    }

    @Override
    public Optional<Spot> spot(Spot spot) {
      return Optional.of(new Spot(now(spot.segment()), spot.along(), spot.extras()));
    }

    @Override
    public Optional<String> segment(String id) {
      return Optional.of(now(id));
    }

    @Override
    public List<Aid> aid(Aid aid) {
      return List.of(Relocation.on(now(aid.segment()), aid));
    }
  }
}
