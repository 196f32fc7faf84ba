// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.WoodOverride;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Keeps what is known about the wood with the wood, whatever the segments are called now. */
final class Woods {
  private Woods() {}

  /**
   * Gives segments the wood of segments as they were.
   *
   * @param from old id of each new id
   */
  static void keep(Draft draft, Map<String, String> from) {
    Tree before = draft.before.tree();
    from.forEach(
        (now, old) -> {
          Optional<WoodOverride> wanted = before.overrideFor(old);
          Optional<WoodOverride> found = before.withOverrides(draft.overrides).overrideFor(now);
          if (!content(wanted).equals(content(found))) {
            put(draft, named(now, wanted));
          }
        });
  }

  /** Takes out what is said of segments that are gone. */
  static void drop(Draft draft, Set<String> gone) {
    draft.overrides =
        draft.overrides.stream()
            .filter(
                one ->
                    gone.stream().noneMatch(one::matches)
                        || draft.ids().stream().anyMatch(one::matches))
            .toList();
  }

  private static void put(Draft draft, WoodOverride one) {
    List<WoodOverride> all = new ArrayList<>(draft.overrides);
    all.removeIf(other -> other.pattern().equals(one.pattern()));
    all.add(one);
    draft.overrides = List.copyOf(all);
  }

  /** An override for one segment; one that says nothing stands for the species' values. */
  static WoodOverride named(String id, Optional<WoodOverride> from) {
    return from.map(
            one ->
                new WoodOverride(
                    id,
                    one.moe(),
                    one.moeSpread(),
                    one.shearModulus(),
                    one.response(),
                    one.source(),
                    one.extras()))
        .orElse(
            new WoodOverride(
                id,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                Map.of()));
  }

  private static WoodOverride content(Optional<WoodOverride> override) {
    return named("", override);
  }
}
